import { lazy, Suspense } from 'react';
import type { Answer } from '../../../shared/contract/channels.ts';
import type { ForceSummary, JumpTest } from '../../../shared/model/jump.ts';
import { forceInstants, forcePhases } from './forcePhases.ts';

// The chart library is large: fetched only when a trace is shown.
const ForcePlot = lazy(async () => ({ default: (await import('../../plots/ForcePlot.tsx')).ForcePlot }));

/** A force trace with what was found in it. */
export function ForceTrace(props: { kind: JumpTest['kind']; summary: ForceSummary; trace: Answer<'jump.trace'> }) {
  const { kind, summary, trace } = props;
  return (
    <>
      <Suspense fallback={<p className="appears-late">Drawing the trace…</p>}>
        <ForcePlot
          label={`Vertical force over time. Onset at ${summary.onsetS.value.toFixed(3)} s, take-off at ${summary.takeoffS.value.toFixed(3)} s, landing at ${summary.landingS.value.toFixed(3)} s.`}
          timesS={trace.timesS}
          series={trace.columns.map((label, i) => ({ label, forcesN: trace.forcesN[i] ?? [] }))}
          bodyWeightN={summary.bodyWeightN.value}
          instants={forceInstants(summary)}
          phases={forcePhases(kind, summary, trace.timesS[0] ?? 0, trace.timesS.at(-1) ?? 0)}
        />
      </Suspense>
      {summary.warnings.length > 0 && (
        <ul className="warnings" aria-label="Warnings about this trace">
          {summary.warnings.map((warning) => (
            <li key={warning}>{warning}</li>
          ))}
        </ul>
      )}
    </>
  );
}
