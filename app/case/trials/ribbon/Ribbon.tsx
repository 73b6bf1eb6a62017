import { type KeyboardEvent, useEffect, useRef } from 'react';
import type { MovementTrial } from '../../../../shared/model/trial.ts';
import { Button } from '../../../parts/Button.tsx';
import { CellChoice } from '../../../parts/CellChoice.tsx';
import { PhaseRibbon, type RibbonEvent } from '../../../plots/PhaseRibbon.tsx';
import { patch, useEdit } from '../../useEdit.ts';
import { TrialCurves } from '../TrialCurves.tsx';
import type { Timeline } from '../timeline.ts';
import { useTimeWindow } from './useTimeWindow.ts';

const CLOSER = 0.5;
const PAN = 0.5;

/**
 * One time axis: phases, events and curves, all moving with the playhead. Events are moved here; the axis is looked at
 * closer or wider; a phase can be played over and over.
 */
export function Ribbon(props: {
  trial: MovementTrial;
  timeline: Timeline;
  proposals?: readonly RibbonEvent[];
  /** Frames a second that times count in; null: times stand for no frames. */
  rateHz: number | null;
  playheadS: number | null;
  onSeek?: (timeS: number) => void;
  /** The phase played over and over, and how another is chosen; absent where nothing plays. */
  loop?: { readonly phase: string | null; readonly onPhase: (phase: string | null) => void };
}) {
  const { trial, timeline, proposals = [], rateHz, playheadS, onSeek, loop } = props;
  const edit = useEdit();
  const { shown, isWhole, zoom, pan, fit, show } = useTimeWindow(timeline, rateHz, playheadS);
  const wheeled = useRef<HTMLElement>(null);
  const onWheel = (event: WheelEvent) => {
    // The page scrolls as ever; with Control it is looked at closer or wider, with Shift along.
    if (!event.ctrlKey && !event.shiftKey) return;
    event.preventDefault();
    const by = Math.sign(event.deltaY === 0 ? event.deltaX : event.deltaY);
    if (event.shiftKey) return pan(by * 0.1);
    const bounds = wheeled.current?.getBoundingClientRect();
    const share = bounds === undefined ? 0.5 : (event.clientX - bounds.left) / bounds.width;
    zoom(by > 0 ? 1.25 : 0.8, shown.fromS + share * (shown.toS - shown.fromS));
  };
  const latest = useRef(onWheel);
  useEffect(() => {
    latest.current = onWheel;
  });
  useEffect(() => {
    const element = wheeled.current;
    const hear = (event: WheelEvent) => latest.current(event);
    // Not passive: it must be able to keep the page from zooming.
    element?.addEventListener('wheel', hear, { passive: false });
    return () => element?.removeEventListener('wheel', hear);
  }, []);

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.target instanceof Element && event.target.matches('input, select, textarea')) return;
    const act = {
      '+': () => zoom(CLOSER),
      '-': () => zoom(1 / CLOSER),
      '0': fit,
      '[': () => pan(-PAN),
      ']': () => pan(PAN),
    }[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  };
  const events = timeline.events.toSorted((a, b) => a.timeS - b.timeS);
  const frameS = rateHz === null ? 0 : 1 / rateHz;
  const jump = (by: 1 | -1) => {
    if (playheadS === null) return;
    const next =
      by === 1
        ? events.find(({ timeS }) => timeS > playheadS + frameS / 2)
        : events.findLast(({ timeS }) => timeS < playheadS - frameS / 2);
    if (next !== undefined) onSeek?.(next.timeS);
  };
  return (
    // Keys work wherever the focus is in it; it is no control itself.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
    <section className="ribbon-whole" aria-label="Ribbon" ref={wheeled} onKeyDown={onKeyDown}>
      {onSeek !== undefined && (
        <div className="ribbon-tools">
          <Button look="quiet" onClick={() => zoom(CLOSER)}>
            Closer
          </Button>
          <Button look="quiet" disabled={isWhole} onClick={() => zoom(1 / CLOSER)}>
            Wider
          </Button>
          <Button look="quiet" disabled={isWhole} onClick={fit}>
            All of it
          </Button>
          <Button look="quiet" disabled={isWhole} onClick={() => pan(-PAN)}>
            Earlier
          </Button>
          <Button look="quiet" disabled={isWhole} onClick={() => pan(PAN)}>
            Later
          </Button>
          {events.length > 0 && (
            <>
              <Button look="quiet" onClick={() => jump(-1)}>
                Event before
              </Button>
              <Button look="quiet" onClick={() => jump(1)}>
                Event after
              </Button>
              <CellChoice
                label="Go to event"
                value={null}
                empty="Go to event…"
                choices={events.map(({ id, label }) => ({ value: id, label }))}
                onChange={(id) => {
                  const event = events.find((one) => one.id === id);
                  if (event !== undefined) onSeek(event.timeS);
                }}
              />
            </>
          )}
          {loop !== undefined && timeline.phases.length > 0 && (
            <CellChoice
              label="Phase played over and over"
              value={loop.phase}
              empty="No loop"
              choices={timeline.phases
                .filter(({ fromS, toS }) => toS > fromS)
                .map(({ id, label }) => ({ value: id, label: `Loop ${label.toLowerCase()}` }))}
              onChange={(id) => {
                loop.onPhase(id);
                const phase = timeline.phases.find((one) => one.id === id);
                if (phase !== undefined) {
                  onSeek(phase.fromS);
                  const margin = 0.25 * (phase.toS - phase.fromS);
                  show({ fromS: phase.fromS - margin, toS: phase.toS + margin });
                }
              }}
            />
          )}
        </div>
      )}
      <PhaseRibbon
        phases={timeline.phases}
        events={timeline.events}
        proposals={proposals}
        {...shown}
        playheadS={playheadS}
        onSeek={onSeek}
        moving={
          rateHz === null || onSeek === undefined
            ? undefined
            : {
                frameS,
                onMove: (id, timeS) => edit([patch('trialEvent', id, { timeS, uS: null, origin: 'by-hand' })]),
                onMoving: onSeek,
              }
        }
      />
      <TrialCurves trial={trial} phases={timeline.phases} {...shown} playheadS={playheadS} onSeek={onSeek} />
    </section>
  );
}
