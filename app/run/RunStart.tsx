import { useState } from 'react';
import type { Answer } from '../../shared/contract/channels.ts';
import { counted, formatDate } from '../../shared/format/number.ts';
import { isOfRun } from '../../shared/exchange/runFile.ts';
import { shippedBattery } from '../../shared/knowledge/screening/shipped.ts';
import { editQueue, useRunsQuery, useShelfQuery } from '../api.ts';
import { today } from '../case/newRecord.ts';
import { useSaving } from '../case/useEdit.ts';
import { emptySession } from '../case/screening/results.ts';
import { useBatteries } from '../case/screening/useBatteries.ts';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { Button } from '../parts/Button.tsx';
import { ErrorBar } from '../parts/ErrorBar.tsx';
import { TextField } from '../parts/TextField.tsx';
import { go, hrefOf } from '../workbench/route.ts';
import { RunningHead } from '../workbench/RunningHead.tsx';
import { MOST_IN_RUN } from './mostInRun.ts';
import { RosterDoor } from './RosterDoor.tsx';

/** Find a run again, or choose who takes part in a new one. */
export function RunStart() {
  const { data } = useRunsQuery(undefined, { refetchOnMountOrArgChange: true });
  const runs = data?.runs ?? [];
  return (
    <>
      <RunningHead />
      <main id="sheet" className="shelf run-start" tabIndex={-1}>
        <h1>Intake run</h1>
        <p className="run-lead">
          A squad as rows, a battery as columns. Screening is not diagnosis; whoever has pain stops and is seen.{' '}
          <a href={hrefOf({ screen: 'batteries' })}>Batteries</a>
        </p>
        {runs.length > 0 && (
          <section aria-labelledby="run-again">
            <h2 id="run-again">Go on with a run</h2>
            <ul className="run-list">
              {runs.map(({ caseIds, batteryLabel, ...run }) => (
                <li key={`${run.heldOn} ${run.batteryId} ${run.batteryVersion}`}>
                  <a href={hrefOf({ screen: 'run', run, isSquad: false })}>
                    {batteryLabel ?? shippedBattery(run.batteryId, run.batteryVersion)?.label ?? run.batteryId},{' '}
                    {formatDate(run.heldOn)}
                  </a>{' '}
                  <span className="quiet">
                    {counted(caseIds.length, 'athlete')}
                    {batteryLabel !== null && `, version ${run.batteryVersion}`}
                  </span>
                </li>
              ))}
            </ul>
          </section>
        )}
        <NewRun runs={runs} />
      </main>
    </>
  );
}

type Runs = Answer<'run.list'>['runs'];

function NewRun({ runs }: { runs: Runs }) {
  const [search, setSearch] = useState('');
  const { data: shelf } = useShelfQuery({ search, archived: false, offset: 0, limit: MOST_IN_RUN });
  const cases = (shelf?.rows ?? [])
    .filter(({ purpose }) => purpose === 'intake')
    .toSorted((a, b) => a.number.localeCompare(b.number, 'en', { numeric: true }));
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [rater, setRater] = useState('');
  const [failure, setFailure] = useState<string | null>(null);
  const [isBeginning, setBeginning] = useState(false);
  const { waiting } = useSaving();
  const [heldOn] = useState(today);
  const batteries = useBatteries();
  const [batteryId, setBatteryId] = useState<string | null>(null);
  const chosenBattery = batteries.find(({ battery }) => battery.id === batteryId) ?? batteries[0];
  const run = {
    heldOn,
    batteryId: chosenBattery?.battery.id ?? '',
    batteryVersion: chosenBattery?.battery.version ?? '',
  };
  const begun = runs.find((one) => isOfRun(run, one));
  const isIn = (caseId: string) => begun?.caseIds.includes(caseId) === true;
  const added = [...chosen].filter((caseId) => !isIn(caseId));
  const isTooMany = added.length + (begun?.caseIds.length ?? 0) > MOST_IN_RUN;
  const hasMore = search !== '' || (shelf?.total ?? 0) > MOST_IN_RUN;

  const begin = async () => {
    if (chosenBattery === undefined) return;
    setFailure(null);
    setBeginning(true);
    for (const caseId of added) {
      const record = emptySession(caseId, chosenBattery, rater, heldOn);
      editQueue.push(caseId, [{ op: 'create', kind: 'screeningSession', record }]);
    }
    const isStored = await editQueue.settled();
    setBeginning(false);
    if (isStored) go({ screen: 'run', run, isSquad: false });
    else setFailure('Not everyone could be added yet. See the bar at the top, then try again.');
  };

  return (
    <section aria-labelledby="run-new">
      <h2 id="run-new">{begun === undefined ? 'Begin a run today' : 'Add athletes to today’s run'}</h2>
      <RosterDoor
        onTaken={(caseIds) => setChosen(new Set([...chosen, ...caseIds]))}
        onTakenBack={(caseIds) => setChosen((so) => new Set([...so].filter((one) => !caseIds.includes(one))))}
      />
      {(cases.length > 0 || search !== '') && (
        <fieldset className="run-choose">
          <legend>Athletes with an intake case</legend>
          {hasMore && (
            <TextField
              label="Find"
              hint={`The ${MOST_IN_RUN} cases touched last are shown; any words of a case find others. Who is chosen stays chosen.`}
              value={search}
              onChange={setSearch}
            />
          )}
          <p className="row-of-buttons">
            <Button look="quiet" onClick={() => setChosen(new Set([...chosen, ...cases.map(({ caseId }) => caseId)]))}>
              Choose all {cases.length}
            </Button>
            <Button look="quiet" onClick={() => setChosen(new Set())}>
              Choose none
            </Button>
          </p>
          <ul className="run-athletes">
            {cases.map(({ caseId, athleteName, number, cautions }) => (
              <li key={caseId}>
                <label className="choice">
                  <input
                    type="checkbox"
                    checked={isIn(caseId) || chosen.has(caseId)}
                    disabled={isIn(caseId)}
                    onChange={({ target }) => {
                      const next = new Set(chosen);
                      if (target.checked) next.add(caseId);
                      else next.delete(caseId);
                      setChosen(next);
                    }}
                  />
                  <span>
                    {athleteName === '' ? 'Athlete not named yet' : athleteName}{' '}
                    <span className="quiet case-number">{number}</span>
                    {isIn(caseId) && <span className="quiet">, in today’s run</span>}
                    {cautions.length > 0 && <strong className="run-caution"> {cautions[0]}</strong>}
                  </span>
                </label>
              </li>
            ))}
          </ul>
        </fieldset>
      )}
      <div className="run-begin">
        {batteries.length > 1 && (
          <ChoiceField
            look="list"
            label="Battery"
            hint="The version it is begun with stays with every result."
            value={run.batteryId}
            choices={batteries.map(({ battery, own }) => ({
              value: battery.id,
              label: own === null ? battery.label : `${battery.label}, version ${battery.version}`,
            }))}
            onChange={(id) => setBatteryId(id)}
          />
        )}
        <TextField
          label="Rater"
          hint="Who judges and measures; error figures hold for one rater."
          value={rater}
          onChange={setRater}
        />
        {failure !== null && <ErrorBar>{failure}</ErrorBar>}
        {isTooMany && <p role="alert">A run holds at most {MOST_IN_RUN} athletes. Choose fewer.</p>}
        {added.length === 0 ? (
          <p className="quiet">Choose who takes part; then the run begins here.</p>
        ) : (
          <p>
            <Button look="main" disabled={isTooMany || isBeginning} onClick={() => void begin()}>
              {begun === undefined ? 'Begin' : 'Go on'} with {counted(added.length, 'athlete')}
              {begun === undefined ? '' : ' more'}
            </Button>{' '}
            {isBeginning && <output>Adding them, {waiting} to go.</output>}
          </p>
        )}
      </div>
    </section>
  );
}
