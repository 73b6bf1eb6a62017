import { useState } from 'react';
import { measuredTrial } from '../../../shared/assess/measuredTrial.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { convert, UNITS } from '../../../shared/units.ts';
import { CellChoice } from '../../parts/CellChoice.tsx';
import { shownUnit } from '../../parts/ReadingText.tsx';
import { CurvePlot } from '../../plots/CurvePlot.tsx';
import { useCase } from '../useCase.ts';
import type { Timeline } from './timeline.ts';

/** A curve of the reader's choice below the ribbon, on the same time axis, and what the measuring warns of. */
export function TrialCurves(props: { trial: MovementTrial; timeline: Timeline; playheadS: number | null }) {
  const { trial, timeline, playheadS } = props;
  const { file } = useCase();
  const [chosen, setChosen] = useState<string | null>(null);
  const measured = measuredTrial(file, trial);
  const series = measured?.series.filter((one) => one.points.length > 1) ?? [];
  const shown = series.find((one) => one.id === chosen) ?? null;
  const unit = shown === null ? null : shownUnit(shown.unit);
  return (
    <>
      {series.length > 0 && (
        <CellChoice
          label="Curve below the ribbon"
          value={chosen}
          empty="Show a curve…"
          choices={series.map(({ id, label }) => ({ value: id, label }))}
          onChange={setChosen}
        />
      )}
      {shown !== null && unit !== null && (
        <CurvePlot
          label={shown.label}
          unit={UNITS[unit].label}
          points={shown.points.map(([timeS, value]) => [timeS, convert(value, shown.unit, unit)])}
          phases={timeline.phases}
          fromS={timeline.fromS}
          toS={timeline.toS}
          playheadS={playheadS}
        />
      )}
      {measured !== null && measured.warnings.length > 0 && (
        <ul className="warnings" aria-label="Warnings about the measures">
          {measured.warnings.map((warning) => (
            <li key={warning}>{warning}</li>
          ))}
        </ul>
      )}
    </>
  );
}
