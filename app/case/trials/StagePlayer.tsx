import { useEffect, useState } from 'react';
import type { FrameClock } from '../../../shared/kernel/event/frameClock.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { toDecimals } from '../../../shared/format/number.ts';
import { Button } from '../../parts/Button.tsx';
import { StickFigure } from '../../plots/StickFigure.tsx';
import { metresPerUnit, type Stage } from './stage.ts';

/** Real time is too fast to see a throw; a quarter of it is what slow replays use. */
const PLAY_SPEED = 0.25;
/** Played when the true rate is not known: one frame after the other, no claim about time. */
const FALLBACK_RATE_HZ = 60;

/** The landmarks of one frame drawn to scale, with a slider over the frames. */
export function StagePlayer(props: {
  trial: MovementTrial;
  stage: Stage;
  /** Null where the capture rate is not known. */
  clock: FrameClock | null;
  frame: number;
  onFrame: (frame: number) => void;
}) {
  const { trial, stage, clock, frame, onFrame } = props;
  const [isPlaying, setPlaying] = useState(false);

  useEffect(() => {
    if (!isPlaying) return undefined;
    const timer = setTimeout(
      () => {
        if (frame >= stage.lastFrame) setPlaying(false);
        else onFrame(frame + 1);
      },
      (clock === null ? 1000 / FALLBACK_RATE_HZ : 1000 * (clock.timeOf(frame + 1) - clock.timeOf(frame))) / PLAY_SPEED,
    );
    return () => clearTimeout(timer);
  }, [isPlaying, frame, clock, stage.lastFrame, onFrame]);

  const points = stage.at(frame);
  const timeWords = clock === null ? 'capture rate not known, so no time' : `${toDecimals(clock.timeOf(frame), 3)} s`;
  return (
    <section className="stage" aria-label="Stage">
      <StickFigure
        points={points}
        bounds={stage.bounds}
        isYUp={trial.calibration?.kind === 'metres'}
        metresPerUnit={metresPerUnit(trial.calibration)}
        ballPath={stage.ballPath}
        label={`Stick figure of frame ${frame}: ${points.size} points seen`}
      />
      <div className="stage-controls">
        <Button
          onClick={() => {
            if (!isPlaying && frame >= stage.lastFrame) onFrame(stage.firstFrame);
            setPlaying(!isPlaying);
          }}
        >
          {isPlaying ? 'Pause' : 'Play at a quarter of the speed'}
        </Button>
        <label className="scrubber">
          <span>Frame</span>
          <input
            type="range"
            min={stage.firstFrame}
            max={stage.lastFrame}
            step={1}
            value={frame}
            aria-valuetext={`frame ${frame}, ${timeWords}`}
            onChange={({ target }) => {
              setPlaying(false);
              onFrame(Number(target.value));
            }}
          />
        </label>
        <output className="stage-time">
          frame {frame} of {stage.lastFrame}, {timeWords}
        </output>
      </div>
      <p className="quiet">
        Left limbs dashed, right limbs solid. {points.size === 0 ? 'No point is recorded in this frame. ' : ''}The arrow
        keys move the slider by one frame, Page Up and Page Down by more.
      </p>
    </section>
  );
}
