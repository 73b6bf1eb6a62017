import { useEffect, useState } from 'react';
import type { FrameClock } from '../../shared/kernel/event/frameClock.ts';
import { toDecimals } from '../../shared/format/number.ts';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';

const SPEEDS = [
  { value: '1', label: 'real speed' },
  { value: '0.5', label: 'half speed' },
  { value: '0.25', label: 'a quarter' },
  { value: '0.1', label: 'a tenth' },
] as const;

/** Where in the film one is, and the ways to get elsewhere: step, slide, type, play. */
export function Transport(props: {
  frame: number;
  /** The frame now on screen: playing waits for it, so that no frame is left out. */
  shownFrame: number | null;
  count: number;
  /** By the true capture rate, else of the film's own time; null: no claim about time. */
  clock: FrameClock | null;
  isTrueRate: boolean;
  /** First and last frame played over and over; null: to the end. */
  loop: readonly [number, number] | null;
  onFrame: (frame: number) => void;
}) {
  const { frame, shownFrame, count, clock, isTrueRate, loop, onFrame } = props;
  const [speed, setSpeed] = useState('0.25');
  const [isPlaying, setPlaying] = useState(false);
  const last = count - 1;
  const [loopFrom, loopTo] = loop?.map(Math.round) ?? [];
  useEffect(() => {
    if (!isPlaying || shownFrame !== frame) return undefined;
    const timer = setTimeout(
      () => {
        if (loopFrom !== undefined && loopTo !== undefined && (frame >= loopTo || frame < loopFrom)) onFrame(loopFrom);
        else if (frame >= last) setPlaying(false);
        else onFrame(frame + 1);
      },
      (1000 * (clock === null ? 1 / 60 : clock.timeOf(frame + 1) - clock.timeOf(frame))) / Number(speed),
    );
    return () => clearTimeout(timer);
  }, [isPlaying, shownFrame, frame, last, loopFrom, loopTo, clock, speed, onFrame]);

  const go = (to: number) => {
    setPlaying(false);
    onFrame(Math.min(last, Math.max(0, Math.round(to))));
  };
  const timeWords =
    clock === null
      ? 'no time known'
      : `${toDecimals(clock.timeOf(frame), 4)} s${isTrueRate ? '' : ' of the film, not yet of real time'}`;
  return (
    <div className="bench-transport">
      <div className="row-of-buttons">
        <Button onClick={() => go(frame - 1)} disabled={frame <= 0}>
          One frame back
        </Button>
        <Button onClick={() => go(frame + 1)} disabled={frame >= last}>
          One frame on
        </Button>
        <Button
          onClick={() => {
            if (!isPlaying && frame >= last) onFrame(0);
            setPlaying(!isPlaying);
          }}
        >
          {isPlaying ? 'Pause' : 'Play'}
        </Button>
        <select
          className="input input-list cell-choice"
          aria-label="Speed of playing"
          value={speed}
          onChange={({ target }) => setSpeed(target.value)}
        >
          {SPEEDS.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
        <output className="bench-time">
          frame {frame} of {last}, {timeWords}
        </output>
      </div>
      <div className="bench-slide">
        <label className="scrubber">
          <span>Frame</span>
          <input
            type="range"
            min={0}
            max={last}
            step={1}
            value={frame}
            aria-valuetext={`frame ${frame}, ${timeWords}`}
            onChange={({ target }) => go(Number(target.value))}
          />
        </label>
        <NumberField
          label="Go to frame"
          unit="1"
          isWhole
          possible={[0, last]}
          value={null}
          onChange={(to) => to !== null && go(to)}
        />
        {clock !== null && (
          <NumberField
            label="Go to time"
            unit="s"
            possible={[0, clock.timeOf(last)]}
            value={null}
            onChange={(to) => to !== null && go(clock.frameAt(to))}
          />
        )}
      </div>
    </div>
  );
}
