import { ChoiceField } from '../parts/ChoiceField.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { useInfoQuery } from '../api.ts';
import { useAppDispatch, useAppSelector } from '../store.ts';
import { type Preferences, preferencesSlice, TEXT_SIZES, THEMES } from './preferences.ts';

const THEME_WORDS: Readonly<Record<Preferences['theme'], string>> = {
  system: 'As the system',
  light: 'Light',
  dark: 'Dark',
};

/** How the workbench looks on this machine, and which versions run. */
export function ViewDialog({ onClose }: { onClose: () => void }) {
  const { theme, textSize, singleKeys } = useAppSelector((state) => state.preferences);
  const dispatch = useAppDispatch();
  const change = (next: Partial<Preferences>) => dispatch(preferencesSlice.actions.changed(next));
  const { data: info } = useInfoQuery();
  return (
    <Dialog title="View" onClose={onClose}>
      <div className="stack">
        <ChoiceField
          label="Paper and ink"
          choices={THEMES.map((value) => ({ value, label: THEME_WORDS[value] }))}
          value={theme}
          onChange={(chosen) => change({ theme: chosen })}
        />
        <ChoiceField
          label="Size of text"
          choices={TEXT_SIZES.map((size) => ({ value: String(size), label: `${size} %` }))}
          value={String(textSize)}
          onChange={(chosen) => change({ textSize: TEXT_SIZES.find((size) => String(size) === chosen) ?? 100 })}
        />
        <ChoiceField
          label="Keys that work alone (/ and ?)"
          hint="Switch them off if speech input or a tremor sets them off by accident."
          choices={[
            { value: 'on', label: 'On' },
            { value: 'off', label: 'Off' },
          ]}
          value={singleKeys ? 'on' : 'off'}
          onChange={(chosen) => change({ singleKeys: chosen === 'on' })}
        />
        {info !== undefined && (
          <p className="quiet">
            Caseframe {info.appVersion}, kernel {info.kernelVersion}, rules {info.rulesVersion}. Cases are kept in{' '}
            {info.storeFolder}.
          </p>
        )}
      </div>
    </Dialog>
  );
}
