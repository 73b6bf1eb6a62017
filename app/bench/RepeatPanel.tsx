import { counted } from '../../shared/format/number.ts';
import { pointUncertainty } from '../../shared/kernel/trial/pointUncertainty.ts';
import { LEAST_REPEATS } from '../../shared/kernel/uncertainty/digitisingError.ts';
import type { LandmarkTrack, MovementTrial } from '../../shared/model/trial.ts';
import { useCase } from '../case/useCase.ts';
import { useEdit } from '../case/useEdit.ts';
import { Button } from '../parts/Button.tsx';
import { pointLabel } from './pointNames.ts';
import type { useRepeats } from './useRepeats.ts';

/** How exact the points are, and the round in which some are put down twice to learn it. */
export function RepeatPanel(props: {
  trial: MovementTrial;
  tracks: readonly LandmarkTrack[];
  active: string;
  repeats: ReturnType<typeof useRepeats>;
}) {
  const { trial, tracks, active, repeats } = props;
  const { file } = useCase();
  const edit = useEdit();
  const made = file.pointRepeats.filter(({ trialId }) => trialId === trial.id);
  const { said, handUPx } = pointUncertainty(trial, tracks, made);
  return (
    <fieldset className="bench-suggest">
      <legend>How exact your points are</legend>
      <p>
        Put some points down a second time without sight of the first. How far the two lie apart is your own error, and
        the uncertainty of this trial’s points from then on.
      </p>
      {said.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {handUPx === null && <p className="quiet">How exact points by hand are is not known yet.</p>}
      {made.length > 0 && made.length < LEAST_REPEATS && (
        <p className="quiet">
          {counted(made.length, 'point')} put down twice; it takes {LEAST_REPEATS}.
        </p>
      )}
      <div className="row-of-buttons">
        {repeats.point === null ? (
          <Button disabled={!repeats.canStart(active)} onClick={() => repeats.start(active)}>
            Put {pointLabel(active).toLowerCase()} down a second time
          </Button>
        ) : (
          <Button look="quiet" onClick={repeats.stop}>
            Stop here
          </Button>
        )}
        {made.length > 0 && repeats.point === null && (
          <Button look="quiet" onClick={() => edit(made.map(({ id }) => ({ op: 'remove', kind: 'pointRepeat', id })))}>
            Forget the repeats
          </Button>
        )}
      </div>
      <output className="import-state">
        {repeats.point !== null &&
          `${pointLabel(repeats.point)}: put it down again, ${counted(repeats.left, 'frame')} to go. By keyboard: Enter takes it up, arrows move it, Enter puts it down.`}
      </output>
    </fieldset>
  );
}
