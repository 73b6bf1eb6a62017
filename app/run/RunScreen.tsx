import { useEffect } from 'react';
import { isOfRun, sessionOfRun } from '../../shared/exchange/runFile.ts';
import { batteryOf } from '../../shared/knowledge/screening/index.ts';
import { formatDate } from '../../shared/format/number.ts';
import { useRunsQuery } from '../api.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { hrefOf, type RunKey } from '../workbench/route.ts';
import { RunningHead } from '../workbench/RunningHead.tsx';
import { RunGrid } from './RunGrid.tsx';
import { RunStart } from './RunStart.tsx';
import { SquadPage } from './SquadPage.tsx';
import { useFiles } from './useFiles.ts';
import './run.css';

/** Where a run is begun or found again, the run itself, or the squad page after it. */
export function RunScreen({ run, isSquad }: { run: RunKey | null; isSquad: boolean }) {
  useEffect(() => {
    document.title = `${run === null ? 'Intake run' : `Intake run of ${formatDate(run.heldOn)}`}, Caseframe`;
  }, [run]);
  return run === null ? <RunStart /> : <OneRun run={run} isSquad={isSquad} />;
}

function OneRun({ run, isSquad }: { run: RunKey; isSquad: boolean }) {
  const { data, error } = useRunsQuery(undefined, { refetchOnMountOrArgChange: true });
  const found = data?.runs.find((one) => isOfRun(run, one));
  const { files, failure } = useFiles(found?.caseIds ?? NOBODY);
  const session = files.map((file) => sessionOfRun(file, run)).find((one) => one !== null) ?? null;
  const battery = session === null ? null : batteryOf(session);
  const isOpen = found !== undefined && files.length === found.caseIds.length;
  const problem = error !== undefined && 'message' in error ? (error.message ?? null) : failure;

  if (isOpen && battery !== null) {
    return isSquad ? (
      <SquadPage run={run} battery={battery} files={files} />
    ) : (
      <RunGrid run={run} battery={battery} files={files} />
    );
  }
  return (
    <>
      <RunningHead />
      <main id="sheet" className="shelf" tabIndex={-1}>
        {problem !== null || (data !== undefined && (found === undefined || isOpen)) ? (
          <EmptyState title="This run cannot be opened.">
            <p>{problem ?? 'No athlete has a session of this battery on this day.'}</p>
            <p>
              <a href={hrefOf({ screen: 'run', run: null, isSquad: false })}>To the intake runs</a>
            </p>
          </EmptyState>
        ) : (
          <p className="appears-late" aria-live="polite">
            Opening the cases{found === undefined ? '…' : `, ${files.length} of ${found.caseIds.length}.`}
          </p>
        )}
      </main>
    </>
  );
}

const NOBODY: readonly string[] = [];
