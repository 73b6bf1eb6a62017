import { useRef, useState } from 'react';
import { stopReason } from '../../shared/assess/stopWords.ts';
import type { Battery, BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import { sessionOfRun } from '../../shared/exchange/runFile.ts';
import { counted, formatDate } from '../../shared/format/number.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { GRADES } from '../../shared/model/screening.ts';
import { GRADE_WORDS, SIDE_WORDS } from '../../shared/report/words.ts';
import { reportDoor, useMakeReportMutation } from '../api.ts';
import { newId } from '../case/newRecord.ts';
import { resultOf } from '../case/screening/results.ts';
import { Button } from '../parts/Button.tsx';
import { hrefOf, type RunKey } from '../workbench/route.ts';
import { RunningHead } from '../workbench/RunningHead.tsx';
import { athleteName } from './athleteName.ts';
import { sidesOf } from './RunCell.tsx';
import { MergeDoor } from './MergeDoor.tsx';
import { runStops } from './runStops.ts';
import { SquadStrip } from './SquadStrip.tsx';

interface Member {
  readonly file: CaseFile;
  readonly sessionId: string;
}

/** A squad after its run: every athlete visible in every test. No total, no order of merit. */
export function SquadPage({ run, battery, files }: { run: RunKey; battery: Battery; files: readonly CaseFile[] }) {
  const [caseId, setCaseId] = useState<string | null>(null);
  const members = files.map((file): Member => {
    const session = sessionOfRun(file, run);
    return { file, sessionId: session?.id ?? '' };
  });
  const stopped = members.flatMap(({ file, sessionId }) => {
    const stops = runStops(file, sessionId);
    return stops.length === 0 ? [] : [{ file, stops }];
  });
  return (
    <>
      <RunningHead />
      <main id="sheet" className="shelf squad" tabIndex={-1}>
        <h1>Squad, {formatDate(run.heldOn)}</h1>
        <p className="run-lead">
          {battery.label}, {counted(files.length, 'athlete')}. Each test stands for itself: there is no total and no
          ranking. <a href={hrefOf({ screen: 'run', run, isSquad: false })}>Back to the run</a>
        </p>
        {stopped.length > 0 && (
          <section aria-labelledby="squad-stops" className="run-stops">
            <h2 id="squad-stops">Stop and be seen: {counted(stopped.length, 'athlete')}</h2>
            <ul>
              {stopped.map(({ file, stops }) => (
                <li key={file.case.id}>
                  <a href={hrefOf({ screen: 'case', caseId: file.case.id, section: 'screening' })}>
                    {athleteName(file)}
                  </a>{' '}
                  {stops.map(({ words }) => stopReason(words)).join('; ')}
                </li>
              ))}
            </ul>
          </section>
        )}
        <AllReports files={files} />
        <MergeDoor run={run} battery={battery} />
        {battery.items.map((item) => (
          <section key={item.id} aria-labelledby={`squad-${item.id}`} className="squad-item">
            <h2 id={`squad-${item.id}`}>{item.label}</h2>
            {item.kind === 'measured' || item.kind === 'counted' ? (
              <Strips item={item} members={members} caseId={caseId} onChoose={setCaseId} />
            ) : (
              <Answers item={item} members={members} />
            )}
          </section>
        ))}
      </main>
    </>
  );
}

function Strips(props: {
  item: BatteryItem;
  members: readonly Member[];
  caseId: string | null;
  onChoose: (caseId: string | null) => void;
}) {
  const { item, members, caseId, onChoose } = props;
  const sides = sidesOf(item).map((side) => ({
    side,
    points: members.flatMap(({ file, sessionId }) => {
      const valueSi = resultOf(file.screeningResults, sessionId, item.id, side)?.valueSi ?? null;
      return valueSi === null ? [] : [{ caseId: file.case.id, name: athleteName(file), valueSi }];
    }),
  }));
  const all = sides.flatMap(({ points }) => points.map(({ valueSi }) => valueSi));
  if (all.length === 0) return <p className="quiet">Nobody has a value yet.</p>;
  return (
    <>
      {sides.map(({ side, points }) => (
        <SquadStrip
          key={side}
          item={item}
          sideWords={SIDE_WORDS[side]}
          points={points}
          extentSi={[Math.min(...all), Math.max(...all)]}
          missing={members.length - points.length}
          caseId={caseId}
          onChoose={onChoose}
        />
      ))}
    </>
  );
}

/** Who got which grade or answer, by name. */
function Answers({ item, members }: { item: BatteryItem; members: readonly Member[] }) {
  const answers = item.kind === 'graded' ? GRADES.map((grade) => GRADE_WORDS[grade]) : ['yes, it hurts', 'no'];
  const said = members.flatMap(({ file, sessionId }) =>
    sidesOf(item).map((side) => {
      const result = resultOf(file.screeningResults, sessionId, item.id, side);
      const grade = result?.grade ?? null;
      const isPositive = result?.isPositive ?? null;
      const words =
        grade !== null ? GRADE_WORDS[grade] : isPositive === null ? null : isPositive ? 'yes, it hurts' : 'no';
      return { name: athleteName(file), side, words };
    }),
  );
  const sides = sidesOf(item);
  if (said.every(({ words }) => words === null)) return <p className="quiet">Nobody has an answer yet.</p>;
  return (
    <table className="table squad-answers">
      <caption className="only-heard">{item.label}, by answer</caption>
      <thead>
        <tr>
          <th scope="col">Answer</th>
          {sides.map((side) => (
            <th key={side} scope="col">
              {side === 'none' ? 'Athletes' : SIDE_WORDS[side]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {[...answers, null].map((answer) => (
          <tr key={answer}>
            <th scope="row">{answer ?? <span className="quiet">not entered</span>}</th>
            {sides.map((side) => {
              const names = said.filter((one) => one.side === side && one.words === answer).map(({ name }) => name);
              return (
                <td key={side} className={answer === null ? 'quiet' : undefined}>
                  {names.length}
                  {names.length > 0 && `: ${names.join(', ')}`}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A report of each case, one after the other; what is made stays when the rest is cancelled. */
function AllReports({ files }: { files: readonly CaseFile[] }) {
  const [make] = useMakeReportMutation();
  const [progress, setProgress] = useState<{
    done: number;
    failed: readonly string[];
    state: 'running' | 'stopped' | 'finished';
  } | null>(null);
  const isCancelled = useRef(false);
  const jobId = useRef('');
  const run = async () => {
    isCancelled.current = false;
    const failed: string[] = [];
    let done = 0;
    for (const file of files) {
      if (isCancelled.current) break;
      setProgress({ done, failed: [...failed], state: 'running' });
      jobId.current = newId();
      const answer = await make({ caseId: file.case.id, kind: 'client', paper: 'a4', jobId: jobId.current });
      if (answer.error === undefined) done += 1;
      else if (!isCancelled.current)
        failed.push(`${athleteName(file)}: ${'message' in answer.error ? answer.error.message : 'not made'}`);
    }
    setProgress({ done, failed, state: isCancelled.current ? 'stopped' : 'finished' });
  };
  const isRunning = progress?.state === 'running';
  return (
    <div className="row-of-buttons">
      <Button disabled={isRunning} onClick={() => void run()}>
        Make a client report for each athlete
      </Button>
      {isRunning && (
        <Button
          onClick={() => {
            isCancelled.current = true;
            void reportDoor.cancel(jobId.current);
          }}
        >
          Stop, and keep those made
        </Button>
      )}
      {isRunning && <progress aria-label="Reports made" max={files.length} value={progress.done} />}
      {progress !== null && (
        <output>
          {progress.done} of {counted(files.length, 'report')} made
          {isRunning ? '…' : progress.state === 'stopped' ? ', then stopped.' : '.'} {progress.failed.join(' ')}
        </output>
      )}
    </div>
  );
}
