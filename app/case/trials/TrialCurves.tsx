import { useMemo, useState } from 'react';
import { measuredTrial } from '../../../shared/assess/measuredTrial.ts';
import { betweenId, type CurveChoice, curveChoices, trialCurve } from '../../../shared/kernel/trial/trialCurves.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { convert, UNITS } from '../../../shared/units.ts';
import { Button } from '../../parts/Button.tsx';
import { CellChoice } from '../../parts/CellChoice.tsx';
import { shownUnit } from '../../parts/ReadingText.tsx';
import { CurveStack } from '../../plots/CurveStack.tsx';
import type { RibbonPhase } from '../../plots/PhaseRibbon.tsx';
import { useCase } from '../useCase.ts';
import { useScene } from './useScene.ts';

const GROUPS: readonly CurveChoice['group'][] = ['Angles', 'Turning', 'Heights', 'Speeds'];

/** Curves of the reader's choice below the ribbon, on the same time axis, and what the measuring warns of. */
export function TrialCurves(props: {
  trial: MovementTrial;
  phases: readonly RibbonPhase[];
  fromS: number;
  toS: number;
  playheadS: number | null;
  onSeek?: ((timeS: number) => void) | undefined;
}) {
  const { trial } = props;
  const { file } = useCase();
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [hasRaw, setRaw] = useState(false);
  const measured = measuredTrial(file, trial);
  const view = useScene(trial)?.view ?? null;
  const choices = useMemo(() => (view === null ? [] : curveChoices(view)), [view]);
  const curves = useMemo(
    () =>
      chosen.flatMap((id) => {
        const curve = view === null ? null : trialCurve(view, id);
        if (curve === null) return [];
        const unit = shownUnit(curve.unit);
        const inUnit = (points: typeof curve.raw) =>
          points.map(([timeS, value]) => [timeS, convert(value, curve.unit, unit)] as const);
        return [
          {
            id,
            label: curve.label,
            unit: UNITS[unit].label,
            filtered: inUnit(curve.filtered),
            raw: hasRaw ? inUnit(curve.raw) : null,
          },
        ];
      }),
    [view, chosen, hasRaw],
  );
  const add = (id: string | null) => {
    if (id !== null && !chosen.includes(id)) setChosen([...chosen, id]);
  };
  return (
    <>
      {choices.length > 0 && (
        <div className="curve-choices">
          {GROUPS.map((group) => {
            const offered = choices.filter((one) => one.group === group && !chosen.includes(one.id));
            return offered.length === 0 ? null : (
              <CellChoice
                key={group}
                label={`Curve below the ribbon, ${group.toLowerCase()}`}
                value={null}
                empty={`${group}…`}
                choices={offered.map(({ id, label }) => ({ value: id, label }))}
                onChange={add}
              />
            );
          })}
          <AngleOfThree points={[...(view?.points.keys() ?? [])]} onAdd={add} />
          {curves.length > 0 && (
            <label className="choice">
              <input type="checkbox" checked={hasRaw} onChange={({ target }) => setRaw(target.checked)} />
              <span>Unfiltered too, thin</span>
            </label>
          )}
        </div>
      )}
      {curves.length > 0 && (
        <CurveStack
          curves={curves}
          phases={props.phases}
          fromS={props.fromS}
          toS={props.toS}
          playheadS={props.playheadS}
          onSeek={props.onSeek}
          onRemove={(id) => setChosen(chosen.filter((one) => one !== id))}
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

const THREE = ['from', 'at', 'to'] as const;

/** Any angle: at one point, between two others. */
function AngleOfThree({ points, onAdd }: { points: readonly string[]; onAdd: (id: string) => void }) {
  const [three, setThree] = useState<Partial<Record<(typeof THREE)[number], string>>>({});
  if (points.length < 3) return null;
  const { from, at, to } = three;
  return (
    <details className="curve-three">
      <summary>Another angle</summary>
      <div className="own-row">
        {THREE.map((end) => (
          <CellChoice
            key={end}
            label={`Angle ${end}`}
            value={three[end] ?? null}
            empty={`${end}…`}
            choices={points.map((point) => ({ value: point, label: point.replaceAll('-', ' ') }))}
            onChange={(point) => setThree({ ...three, [end]: point ?? undefined })}
          />
        ))}
        <Button
          disabled={from === undefined || at === undefined || to === undefined || new Set([from, at, to]).size < 3}
          onClick={() => from !== undefined && at !== undefined && to !== undefined && onAdd(betweenId(from, at, to))}
        >
          Draw it
        </Button>
      </div>
    </details>
  );
}
