import { type PointerEvent, useId } from 'react';
import { Hatch } from './Hatch.tsx';
import { stackLabels } from './stackLabels.ts';
import { textWidth } from './textWidth.ts';
import { ticks } from './ticks.ts';
import { useWidth } from './useWidth.ts';

export interface RibbonPhase {
  readonly id: string;
  readonly label: string;
  readonly fromS: number;
  readonly toS: number;
}

export interface RibbonEvent {
  readonly id: string;
  readonly label: string;
  readonly timeS: number;
  readonly uS: number | null;
}

const PAD = 12;
const BAND = 30;
const ROW = 17;

/**
 * One time axis: phases as bands, events as ticks with their names, the playhead through both. Phases are told apart
 * by number, name and alternate hatching, not by colour.
 */
export function PhaseRibbon(props: {
  phases: readonly RibbonPhase[];
  events: readonly RibbonEvent[];
  fromS: number;
  toS: number;
  playheadS: number | null;
  onSeek?: (timeS: number) => void;
}) {
  const { phases, fromS, toS, playheadS, onSeek } = props;
  const [attach, width] = useWidth(720);
  const hatch = useId();
  const span = Math.max(toS - fromS, 1e-6);
  const x = (timeS: number) => PAD + ((timeS - fromS) / span) * (width - 2 * PAD);

  const events = props.events.toSorted((a, b) => a.timeS - b.timeS);
  const boxes = events.map((event) => labelBox(x(event.timeS), event.label, width));
  const eventRows = stackLabels(boxes, 8);
  const eventDepth = Math.max(0, ...eventRows.map((row) => row + 1));
  const top = eventDepth * ROW + 8;

  // A name too long for its band hangs below it.
  const hanging = phases.flatMap((phase, i) => {
    const middle = (x(phase.fromS) + x(phase.toS)) / 2;
    const fits = textWidth(`${i + 1} ${phase.label}`) < x(phase.toS) - x(phase.fromS) - 6;
    return fits ? [] : [{ phase, middle, box: labelBox(middle, `${i + 1} ${phase.label}`, width) }];
  });
  const hangingRows = stackLabels(
    hanging.map((item) => item.box),
    8,
  );
  const hangingDepth = Math.max(0, ...hangingRows.map((row) => row + 1));
  const axisY = top + BAND + (hangingDepth > 0 ? 8 + hangingDepth * ROW : 0) + 6;
  const height = axisY + 24;

  const seek = (pointer: PointerEvent<SVGSVGElement>) => {
    if (onSeek === undefined || (pointer.type === 'pointermove' && pointer.buttons !== 1)) return;
    const bounds = pointer.currentTarget.getBoundingClientRect();
    const at = ((pointer.clientX - bounds.left) / bounds.width) * width;
    onSeek(Math.min(toS, Math.max(fromS, fromS + ((at - PAD) / (width - 2 * PAD)) * span)));
  };

  return (
    <figure className="ribbon" ref={attach}>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        className={onSeek === undefined ? 'plot' : 'plot plot-seekable'}
        role="img"
        aria-label={describe(phases, events)}
        onPointerDown={seek}
        onPointerMove={seek}
      >
        <defs>
          <Hatch id={hatch} />
        </defs>
        {phases.map((phase, i) => {
          const left = x(phase.fromS);
          const wide = Math.max(x(phase.toS) - left, 1);
          const name = `${i + 1} ${phase.label}`;
          return (
            <g key={phase.id}>
              <rect className="band" x={left} y={top} width={wide} height={BAND} />
              {i % 2 === 1 && <rect fill={`url(#${hatch})`} x={left} y={top} width={wide} height={BAND} />}
              <text className="plot-label plot-halo" x={left + wide / 2} y={top + BAND / 2 + 4.5} textAnchor="middle">
                {textWidth(name) < wide - 6 ? name : wide > 9 ? i + 1 : ''}
              </text>
            </g>
          );
        })}
        {hanging.map(({ phase, middle, box }, i) => {
          const y = top + BAND + 8 + ((hangingRows[i] ?? 0) + 1) * ROW - 5;
          return (
            <g key={phase.id}>
              <line className="plot-leader" x1={middle} y1={top + BAND} x2={middle} y2={y - 11} />
              <text className="plot-label plot-halo" x={box.start} y={y}>
                {phases.indexOf(phase) + 1} {phase.label}
              </text>
            </g>
          );
        })}
        {events.map((event, i) => {
          const at = x(event.timeS);
          const y = ((eventRows[i] ?? 0) + 1) * ROW - 5;
          const half = event.uS === null ? 0 : (event.uS / span) * (width - 2 * PAD);
          return (
            <g key={event.id}>
              <line className="plot-tick" x1={at} y1={y + 4} x2={at} y2={top + BAND} />
              {half > 1 && <line className="plot-error" x1={at - half} y1={top} x2={at + half} y2={top} />}
              <text className="plot-label plot-halo" x={boxes[i]?.start ?? at} y={y}>
                {event.label}
              </text>
            </g>
          );
        })}
        <line className="plot-axis" x1={PAD} y1={axisY} x2={width - PAD} y2={axisY} />
        {ticks(fromS, toS, Math.max(2, Math.floor(width / 110))).map((timeS) => (
          <g key={timeS}>
            <line className="plot-axis" x1={x(timeS)} y1={axisY} x2={x(timeS)} y2={axisY + 4} />
            <text className="plot-number" x={x(timeS)} y={axisY + 17} textAnchor="middle">
              {timeS}
            </text>
          </g>
        ))}
        <text className="plot-number" x={width - PAD} y={axisY - 5} textAnchor="end">
          s
        </text>
        {playheadS !== null && (
          <g className="playhead">
            <line x1={x(playheadS)} y1={0} x2={x(playheadS)} y2={axisY} />
            <path d={`M ${x(playheadS) - 5} ${axisY + 7} h 10 l -5 -8 z`} />
          </g>
        )}
      </svg>
    </figure>
  );
}

/** Where a label centred on `middle` starts, kept inside the drawing. */
function labelBox(middle: number, label: string, width: number) {
  const wide = textWidth(label);
  return { start: Math.max(0, Math.min(middle - wide / 2, width - wide)), width: wide };
}

function describe(phases: readonly RibbonPhase[], events: readonly RibbonEvent[]): string {
  if (phases.length > 0) {
    return `Phases: ${phases.map((p) => `${p.label}, ${p.fromS.toFixed(2)} to ${p.toS.toFixed(2)} s`).join('; ')}.`;
  }
  return `Events: ${events.map((event) => `${event.label} at ${event.timeS.toFixed(2)} s`).join('; ')}.`;
}
