import { lazy, Suspense } from 'react';
import type { Answer, Request } from '../../../shared/contract/channels.ts';
import { detailWords, type ForceDetail, forceDetails } from '../../../shared/assess/forceDetails.ts';
import type { ForceSummary, JumpTest } from '../../../shared/model/jump.ts';
import { Table } from '../../parts/Table.tsx';
import { forceInstants, forcePhases } from './forcePhases.ts';

// The chart library is large: fetched only when a trace is shown.
const ForcePlot = lazy(async () => ({ default: (await import('../../plots/ForcePlot.tsx')).ForcePlot }));

export type ForceMarks = NonNullable<Request<'jump.importForce'>['file']['marks']>[number];

/** A force trace with what was found in it. `onPlace`: the instants may be moved by hand. */
export function ForceTrace(props: {
  kind: JumpTest['kind'];
  summary: ForceSummary;
  trace: Answer<'jump.trace'>;
  onPlace?: (mark: keyof ForceMarks, timeS: number) => void;
}) {
  const { kind, summary, trace, onPlace } = props;
  const details = forceDetails(summary);
  return (
    <>
      <Suspense fallback={<p className="appears-late">Drawing the trace…</p>}>
        <ForcePlot
          label={`Vertical force over time. Onset at ${summary.onsetS.value.toFixed(3)} s, take-off at ${summary.takeoffS.value.toFixed(3)} s, landing at ${summary.landingS.value.toFixed(3)} s.`}
          timesS={trace.timesS}
          series={trace.columns.map((label, i) => ({ label, forcesN: trace.forcesN[i] ?? [] }))}
          bodyWeightN={summary.bodyWeightN.value}
          instants={forceInstants(summary)}
          {...(onPlace === undefined
            ? {}
            : {
                grips: {
                  handles: handlesOf(summary, trace.timesS.at(-1) ?? 0),
                  stepS: 1 / summary.rateHz,
                  onMove: (id: string, timeS: number) => onPlace(id as keyof ForceMarks, timeS),
                },
              })}
          phases={forcePhases(kind, summary, trace.timesS[0] ?? 0, trace.timesS.at(-1) ?? 0)}
        />
      </Suspense>
      {details.length > 0 && (
        <Table caption="Behind the height" columns={DETAIL_COLUMNS} rows={details} rowKey={({ label }) => label} />
      )}
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

const DETAIL_COLUMNS = [
  { id: 'what', head: 'What', cell: ({ label }: ForceDetail) => label },
  { id: 'value', head: 'Value', cell: detailWords, isNumber: true },
];

/** Each instant with how far it may go: they keep their order, a sample apart. */
function handlesOf({ onsetS, takeoffS, landingS, rateHz }: ForceSummary, lastS: number) {
  const apart = 1 / rateHz;
  return [
    { id: 'onsetS', label: 'Onset', timeS: onsetS.value, fromS: apart, toS: takeoffS.value - apart },
    {
      id: 'takeoffS',
      label: 'Take-off',
      timeS: takeoffS.value,
      fromS: onsetS.value + apart,
      toS: landingS.value - apart,
    },
    { id: 'landingS', label: 'Landing', timeS: landingS.value, fromS: takeoffS.value + apart, toS: lastS - apart },
  ];
}
