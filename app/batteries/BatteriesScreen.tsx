import { useEffect, useState } from 'react';
import type { Answer } from '../../shared/contract/channels.ts';
import { counted } from '../../shared/format/number.ts';
import { batteryProblems } from '../../shared/knowledge/screening/batteryProblems.ts';
import { copyBattery } from '../../shared/knowledge/screening/copyBattery.ts';
import { BATTERIES } from '../../shared/knowledge/screening/shipped.ts';
import type { BatteryBody } from '../../shared/model/battery.ts';
import {
  useBatteriesQuery,
  useEditBatteryMutation,
  useExportBatteryMutation,
  useImportBatteryMutation,
  useRedoBatteryMutation,
  useRemoveBatteryMutation,
  useSaveBatteryMutation,
  useUndoBatteryMutation,
} from '../api.ts';
import { newId } from '../case/newRecord.ts';
import { failureWords } from '../failureWords.ts';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { FileDoor } from '../parts/FileDoor.tsx';
import { saveBlob } from '../parts/saveBlob.ts';
import { hrefOf } from '../workbench/route.ts';
import { SharedHead } from '../workbench/SharedHead.tsx';
import { BatteryForm } from './BatteryForm.tsx';
import '../rules/rules.css';
import './batteries.css';

type Own = Answer<'battery.list'>['batteries'][number];

/** Batteries: those of the program, to be copied, and those of one's own. */
export function BatteriesScreen() {
  const { data, error } = useBatteriesQuery(undefined, { refetchOnMountOrArgChange: true });
  const [edit, edited] = useEditBatteryMutation();
  const [undo] = useUndoBatteryMutation();
  const [redo] = useRedoBatteryMutation();
  const [read, taken] = useImportBatteryMutation();
  const [openId, setOpenId] = useState<string | null>(null);
  /** What is typed is on screen at once and stored in the order made; undone, what is stored is shown again. */
  const [drafts, setDrafts] = useState<ReadonlyMap<string, BatteryBody>>(new Map());
  useEffect(() => {
    document.title = 'Batteries, Caseframe';
  }, []);
  const forget = () => setDrafts(new Map());
  const own = data?.batteries ?? [];
  const put = (draft: BatteryBody, isRetired = false) => {
    setDrafts(new Map(drafts).set(draft.id, draft));
    void edit({ id: draft.id, draft, isRetired });
  };
  const begin = (draft: BatteryBody) => {
    put(draft);
    setOpenId(draft.id);
  };
  const failure = error ?? edited.error ?? taken.error;

  return (
    <>
      <SharedHead steps={data} undo={() => undo()} redo={() => redo()} onDone={forget} />
      <main id="sheet" className="shelf rules-screen" tabIndex={-1}>
        <h1>Batteries</h1>
        <p className="quiet">
          Which tests are taken, in which order, and how. Every result keeps the version it was taken with, and is read
          by it whatever is changed afterwards.{' '}
          <a href={hrefOf({ screen: 'run', run: null, isSquad: false })}>To the intake runs</a>
        </p>
        {failure !== undefined && <p role="alert">{failureWords(failure)}</p>}
        <section aria-labelledby="shipped-batteries">
          <h2 id="shipped-batteries">Of the program</h2>
          <ul className="rule-list">
            {BATTERIES.map((battery) => (
              <li key={battery.id} className="battery-row">
                <span className="battery-name">
                  {battery.label} <span className="quiet">{counted(battery.items.length, 'item')}</span>
                </span>
                <Button onClick={() => begin(copyBattery(battery, newId(), `${battery.label}, my copy`))}>
                  Copy it and change the copy
                </Button>
              </li>
            ))}
          </ul>
        </section>
        <section aria-labelledby="own-batteries">
          <h2 id="own-batteries">Of your own</h2>
          {data !== undefined && own.length === 0 && (
            <EmptyState title="No battery of one’s own yet.">
              <p>Copy the one of the program above, or take in a file below. What is shipped is never changed.</p>
            </EmptyState>
          )}
          <ul className="rule-list">
            {own.map((battery) => {
              const body = drafts.get(battery.id) ?? battery.draft ?? battery.versions.at(-1);
              if (body === undefined) return null;
              return (
                <li key={battery.id}>
                  <button
                    type="button"
                    className="rule-open"
                    aria-expanded={battery.id === openId}
                    onClick={() => setOpenId(battery.id === openId ? null : battery.id)}
                  >
                    {body.label === '' ? 'battery without a name' : body.label}{' '}
                    <span className="quiet">{stateWords(battery)}</span>
                  </button>
                  {battery.id === openId && (
                    <>
                      <BatteryForm body={body} onChange={(next) => put(next, battery.isRetired)} />
                      <BatteryWays battery={battery} body={body} onDone={forget} />
                    </>
                  )}
                </li>
              );
            })}
          </ul>
          <FileDoor
            label="Take in a battery from a file"
            accept=".json"
            hint="Written here or on another laptop. It is checked like everything typed; with one fault in it nothing is taken in."
            isBusy={taken.isLoading}
            onFile={({ name, text }) => void read({ fileName: name, text })}
          />
          {taken.data !== undefined && (
            <output>
              {taken.data.label}, version {taken.data.version}:{' '}
              {taken.data.isNew ? 'taken in.' : 'here already, and unchanged.'}
            </output>
          )}
        </section>
      </main>
    </>
  );
}

function stateWords({ versions, draft, isRetired }: Own): string {
  const newest = versions.at(-1)?.version;
  return [
    newest === undefined ? 'not saved yet' : `version ${newest}`,
    draft !== null && newest !== undefined ? 'changed since' : '',
    isRetired ? 'retired' : '',
  ]
    .filter((words) => words !== '')
    .join(', ');
}

/** What can be done with a battery as a whole. */
function BatteryWays({ battery, body, onDone }: { battery: Own; body: BatteryBody; onDone: () => void }) {
  const [edit] = useEditBatteryMutation();
  const [save, saved] = useSaveBatteryMutation();
  const [remove, removed] = useRemoveBatteryMutation();
  const [write, written] = useExportBatteryMutation();
  const { id, draft, versions, uses, isRetired } = battery;
  const faults = batteryProblems(body).length;
  const canSave = draft !== null && faults === 0;
  const failure = saved.error ?? removed.error ?? written.error;
  const isUsed = uses.length > 0;
  return (
    <div className="battery-ways">
      <p className="row-of-buttons">
        <Button look={canSave ? 'main' : 'plain'} disabled={!canSave} onClick={() => void save({ id }).then(onDone)}>
          Save as a new version
        </Button>
        {versions.length > 0 && (
          <>
            <Button
              onClick={() =>
                void write({ id, version: null })
                  .unwrap()
                  .then(({ fileName, text }) => saveBlob(fileName, new Blob([text], { type: 'application/json' })))
                  .catch(() => undefined)
              }
            >
              Write version {versions.at(-1)?.version} to a file
            </Button>
            <Button look="quiet" onClick={() => void edit({ id, draft, isRetired: !isRetired })}>
              {isRetired ? 'Offer it again' : 'Retire it'}
            </Button>
          </>
        )}
        <Button look="quiet" disabled={isUsed} onClick={() => void remove({ id, version: null }).then(onDone)}>
          Remove this battery
        </Button>
      </p>
      <p className="quiet">
        {faults > 0 && `${counted(faults, 'thing')} to put right before it can be saved. `}
        {draft !== null && faults === 0 && 'Used from the next session on once it is saved. '}
        {isUsed
          ? `Used in ${uses.map(({ version, sessions }) => `${counted(sessions, 'session')} with version ${version}`).join(', ')}: it can be retired, not removed. `
          : ''}
        Saved versions are never changed.
      </p>
      {failure !== undefined && <p role="alert">{failureWords(failure)}</p>}
    </div>
  );
}
