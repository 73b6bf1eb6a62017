import { planeAdvice } from '../../../shared/assess/planeAdvice.ts';
import { seenInImage } from '../../../shared/kernel/plane/seenInImage.ts';
import { draftFrom, placed } from '../../../shared/model/calibrationDraft.ts';
import type { Calibration, CalibrationDraft, MovementTrial } from '../../../shared/model/trial.ts';

/** Residuals are drawn this many times their size: at their own they hide under the cross. */
export const RESIDUAL_SCALE = 10;

interface Line {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** The known length, the points of the plane with what each is off it, and the plumb line, as they lie in the picture. */
export function PlaneDrawing({ trial, unit }: { trial: MovementTrial; unit: number }) {
  const { calibration } = trial;
  const draft = trial.calibrationDraft ?? draftFrom(calibration);
  const cross = 5 * unit;
  return (
    <g className="bench-scale">
      {draft.kind === 'length' ? (
        <>
          <Haloed line={between(draft.from, draft.to)} unit={unit} />
          {[draft.from, draft.to].map((end, i) => {
            const at = placed(end);
            // Ends have no names and keep their order.
            // oxlint-disable-next-line react/no-array-index-key
            return at === null ? null : (
              <circle key={i} cx={at.xPx} cy={at.yPx} r={3 * unit} strokeWidth={1.5 * unit} />
            );
          })}
        </>
      ) : (
        <>
          {residualLines(calibration).map((line) => (
            <Haloed key={`${line.x1} ${line.y1}`} line={line} unit={unit} look="bench-residual" />
          ))}
          {draft.points.map(({ image }, i) => {
            const at = placed(image);
            if (at === null) return null;
            const { xPx: x, yPx: y } = at;
            return (
              // Points have no names and keep their order.
              // oxlint-disable-next-line react/no-array-index-key
              <g key={i}>
                <Haloed line={{ x1: x - cross, y1: y, x2: x + cross, y2: y }} unit={unit} />
                <Haloed line={{ x1: x, y1: y - cross, x2: x, y2: y + cross }} unit={unit} />
                <text
                  className="bench-name"
                  x={x + 1.3 * cross}
                  y={y - 0.8 * cross}
                  fontSize={13 * unit}
                  strokeWidth={3 * unit}
                >
                  {i + 1}
                </text>
              </g>
            );
          })}
        </>
      )}
      <Haloed line={between(draft.plumb.top, draft.plumb.bottom)} unit={unit} look="bench-plumb" />
    </g>
  );
}

function between(a: CalibrationDraft['from'], b: CalibrationDraft['from']): Line | null {
  const [from, to] = [placed(a), placed(b)];
  return from === null || to === null ? null : { x1: from.xPx, y1: from.yPx, x2: to.xPx, y2: to.yPx };
}

/** From each point towards where the plane of all says it is. Four points fit exactly and show nothing. */
export function residualLines(calibration: Calibration | null): readonly Line[] {
  if (calibration?.kind !== 'plane' || calibration.points.length < 5) return [];
  if (planeAdvice(calibration, null, null).refusal !== null) return [];
  return seenInImage(calibration).map(({ clicked, fitted }) => ({
    x1: clicked.x,
    y1: clicked.y,
    x2: clicked.x + RESIDUAL_SCALE * (fitted.x - clicked.x),
    y2: clicked.y + RESIDUAL_SCALE * (fitted.y - clicked.y),
  }));
}

function Haloed({ line, unit, look = '' }: { line: Line | null; unit: number; look?: string }) {
  if (line === null) return null;
  return (
    <>
      <line className="bench-halo" {...line} strokeWidth={3.5 * unit} />
      <line
        className={look}
        {...line}
        strokeWidth={1.25 * unit}
        strokeDasharray={look === 'bench-plumb' ? `${5 * unit} ${3 * unit}` : undefined}
      />
    </>
  );
}
