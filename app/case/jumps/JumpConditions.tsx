import { ARMS, JUMP_KINDS, JUMP_METHODS, type JumpTest } from '../../../shared/model/jump.ts';
import { ARMS_WORDS, JUMP_KIND_WORDS, JUMP_METHOD_WORDS } from '../../../shared/report/words.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { DateField } from '../../parts/DateField.tsx';
import { LongTextField } from '../../parts/LongTextField.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { YesNoField } from '../../parts/YesNoField.tsx';
import { today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { useFields } from '../useFields.ts';

/** What all trials of the test share. Two heights may be compared only if these agree. */
export function JumpConditions({ test }: { test: JumpTest }) {
  const { file } = useCase();
  const field = useFields('jumpTest', test);
  const heldOn = field('heldOn');
  const hasTrials = file.jumpTrials.some((trial) => trial.testId === test.id);
  const locked = hasTrials ? 'Fixed now that trials stand under it; start another test for another method.' : undefined;
  return (
    <div className="form">
      <DateField
        label="Held on"
        {...heldOn}
        latest={today()}
        onChange={(day) => {
          if (day !== null) heldOn.onChange(day);
        }}
      />
      <ChoiceField
        label="Kind of jump"
        look="list"
        choices={JUMP_KINDS.map((value) => ({ value, label: JUMP_KIND_WORDS[value] }))}
        {...field('kind')}
      />
      {hasTrials ? (
        <div className="field">
          <span className="field-label">Method</span>
          <p>{JUMP_METHOD_WORDS[test.method]}</p>
          <div className="field-notes">
            <p className="field-hint">{locked}</p>
          </div>
        </div>
      ) : (
        <ChoiceField
          label="Method"
          look="list"
          choices={JUMP_METHODS.map((value) => ({ value, label: JUMP_METHOD_WORDS[value] }))}
          {...field('method')}
        />
      )}
      <ChoiceField
        label="Arms"
        choices={ARMS.map((value) => ({ value, label: ARMS_WORDS[value] }))}
        empty="Not noted"
        {...field('arms')}
      />
      <YesNoField label="Shoes worn" empty="Not noted" {...field('shoes')} />
      <TextField label="Warm-up" hint="What was done before the first jump." {...field('warmUp')} />
      <TextField label="Device" hint="Mat, plate, beam or camera, by what it is." {...field('device')} />
      {test.method === 'flight-time' && (
        <NumberField
          label="Frame rate of the video"
          unit="Hz"
          possible={[0, 100_000]}
          isAbove
          hint="Frames the camera truly recorded in a second; it sets the uncertainty of each time. Empty for a beam."
          {...field('frameRateHz')}
        />
      )}
      {test.method === 'contact-mat' && (
        <NumberField
          label="Samples a second of the mat"
          unit="Hz"
          possible={[0, 100_000]}
          isAbove
          hint="From its maker; it sets the uncertainty of each time. A mat switches at a load of its own, and a landing on bent legs reads high: compare heights from one mat with that mat only."
          {...field('frameRateHz')}
        />
      )}
      {test.method === 'jump-and-reach' && (
        <NumberField
          label="Standing reach"
          unit="m"
          entry={['cm', 'm', 'ft and in']}
          possible={[0, 4]}
          isAbove
          neededFor="the height"
          hint="Flat-footed, same shoes, same arm."
          {...field('standingReachM')}
        />
      )}
      {test.kind === 'drop' && (
        <NumberField
          label="Drop height"
          unit="m"
          entry={['cm', 'm']}
          possible={[0, 3]}
          isAbove
          {...field('dropHeightM')}
        />
      )}
      <LongTextField label="Note" {...field('note')} />
    </div>
  );
}
