import { counted, toDecimals } from '../../shared/format/number.ts';
import type { MovementTrial } from '../../shared/model/trial.ts';
import { clockEdits, eventsOfFrames } from '../case/trials/rateEdits.ts';
import { useCase } from '../case/useCase.ts';
import { patch, useEdit } from '../case/useEdit.ts';
import { Button } from '../parts/Button.tsx';
import type { Film } from './film.ts';

/** As cameras and players call them; others as the file does. */
const CODECS: Readonly<Record<string, string>> = {
  avc: 'H.264',
  hevc: 'H.265 (HEVC)',
  vp8: 'VP8',
  vp9: 'VP9',
  av1: 'AV1',
};

/** What the file says of itself, and the question it cannot answer: how fast it was truly filmed. */
export function FilmFacts({ trial, film }: { trial: MovementTrial; film: Film }) {
  const edit = useEdit();
  const take = (rateHz: number, captureRateFrom: MovementTrial['captureRateFrom']) =>
    edit([patch('movementTrial', trial.id, { captureRateHz: rateHz, playbackRateHz: rateHz, captureRateFrom })]);
  const { file } = useCase();
  const { times, promised, pace, width, height, rotation, codec } = film;
  const { frameTimesS } = pace;
  const rate = pace.rateHz === null ? null : Number(pace.rateHz.toFixed(3));
  return (
    <>
      <p>
        {counted(times.length, 'frame')}, {width} × {height} px, {CODECS[codec] ?? codec}
        {rotation === 0 ? '' : `, turned by ${rotation}° as the file asks`}
        {rate === null
          ? '.'
          : `, ${frameTimesS === null ? '' : 'mostly '}${rate} frames a second of the film’s own time.`}
      </p>
      {promised > times.length && (
        <p className="questioned">
          <strong>Cut off:</strong> {times.length} of {promised} frames are readable.
        </p>
      )}
      {frameTimesS !== null && (
        <p className={trial.frameTimesS === null ? 'questioned' : 'quiet'}>
          <strong>Uneven:</strong> frames lie up to {toDecimals(1000 * pace.offBeatS, 1)} ms off an even beat.{' '}
          {trial.frameTimesS === null
            ? 'Times here still count frames at the capture rate, so they are as much in doubt.'
            : 'Each frame’s own time is used for everything that is measured here.'}
        </p>
      )}
      {frameTimesS !== null && trial.frameTimesS === null && (
        <div className="row-of-buttons">
          <Button onClick={() => edit(clockEdits(trial, eventsOfFrames(file, trial), { frameTimesS }))}>
            Use each frame’s own time; events stay in their frames
          </Button>
        </div>
      )}
      <p>
        Was it filmed faster than it plays? A slowed clip says the rate at which it plays, never the one at which it was
        filmed; every speed would be wrong by that factor. The camera’s setting is the answer.
      </p>
      {rate !== null && trial.captureRateHz === null && (
        <div className="row-of-buttons">
          <Button onClick={() => take(rate, 'not-slowed')}>Not slowed: {rate} frames a second are real</Button>
          <Button onClick={() => take(rate, null)}>Not known: begin with {rate}, let the free flight tell</Button>
        </div>
      )}
      {trial.captureRateHz !== null && trial.captureRateFrom === null && (
        <p className="questioned">
          <strong>Not confirmed:</strong> the capture rate was not known and the film’s own was taken. Place the ball in
          its flight, set the plane and the release, and see what the gravity check says.
        </p>
      )}
    </>
  );
}
