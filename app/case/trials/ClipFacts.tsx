import { memo } from 'react';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { TARGETS } from '../../../shared/knowledge/balls/index.ts';
import { movementOf, movementsOf } from '../../../shared/assess/movementOf.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { DateField } from '../../parts/DateField.tsx';
import { LongTextField } from '../../parts/LongTextField.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { PainField } from '../../parts/PainField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { today } from '../newRecord.ts';
import { BallField } from './BallField.tsx';
import { eventsOfFrames, rateEdits } from './rateEdits.ts';
import { StopWords } from '../StopWords.tsx';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { useFields } from '../useFields.ts';

const SIDES = [
  { value: 'right', label: 'Right' },
  { value: 'left', label: 'Left' },
  { value: 'none', label: 'No side' },
] as const;

/** What must be known of the film before any number taken from it means something. */
export const ClipFacts = memo(function ClipFacts({ trial }: { trial: MovementTrial }) {
  const { file } = useCase();
  const field = useFields('movementTrial', trial);
  const filmedOn = field('filmedOn');
  const edit = useEdit();
  const ofFrames = eventsOfFrames(file, trial);
  const movement = movementOf(file, trial.movementId);
  const known = movementsOf(file).map(({ id, label }) => ({ value: id, label }));
  const movements =
    movement === null ? [...known, { value: trial.movementId, label: `${trial.movementId} (not known here)` }] : known;
  return (
    <>
      <div className="form">
        <ChoiceField label="Movement" look="list" choices={movements} {...field('movementId')} />
        <TextField label="Label" hint="To tell this trial from the others: third of five." {...field('label')} />
        <DateField
          label="Filmed on"
          latest={today()}
          {...filmedOn}
          onChange={(day) => {
            if (day !== null) filmedOn.onChange(day);
          }}
        />
        <ChoiceField label="Throwing, striking or leading side" choices={SIDES} {...field('side')} />
        <NumberField
          label="Capture rate"
          unit="Hz"
          possible={[0, 100_000]}
          isAbove
          neededFor="times and speeds"
          hint="Frames the camera truly recorded in a second."
          {...field('captureRateHz')}
          onChange={(rateHz) => edit(rateEdits(trial, ofFrames, rateHz, 'entered'))}
        />
        {trial.captureRateFrom === 'free-flight' && (
          <p className="quiet">Taken from the free flight: the gravity check cannot question this rate any more.</p>
        )}
        <NumberField
          label="Playback rate"
          unit="Hz"
          possible={[0, 100_000]}
          isAbove
          hint={slowWords(trial)}
          {...field('playbackRateHz')}
        />
        <BallField {...field('ballId')} />
        {movement?.aimsAtTarget === true && (
          <>
            <NumberField
              label="Distance to the target"
              unit="m"
              entry={['m', 'ft and in']}
              possible={[0, 200]}
              isAbove
              hint={`Level distance from the release to the target.${marksOf(movement.sport)}`}
              {...field('targetDistanceM')}
            />
            <NumberField
              label="Standard uncertainty of the distance"
              unit="m"
              entry={['cm', 'm']}
              possible={[0, 200]}
              hint="Empty: not known."
              {...field('targetDistanceUM')}
            />
            <NumberField
              label="Height of the target"
              unit="m"
              entry={['m', 'ft and in']}
              possible={[0, 50]}
              {...field('targetHeightM')}
            />
            <NumberField
              label="Standard uncertainty of the height"
              unit="m"
              entry={['cm', 'm']}
              possible={[0, 50]}
              hint="Empty: not known."
              {...field('targetHeightUM')}
            />
          </>
        )}
      </div>
      <PainField label="Pain during the movement" {...field('painNrs')} />
      <StopWords about={trial.id} />
      <LongTextField label="Note" {...field('note')} />
    </>
  );
});

/** Where the sport usually plays from, as a reminder. */
function marksOf(sport: string): string {
  const marks = TARGETS.filter((target) => target.sport === sport).flatMap((target) => target.marks);
  return marks.map(({ label, distanceM }) => ` ${label}: ${distanceM} m.`).join('');
}

/** Slowed seconds taken for real ones are the commonest fault of all; said before it happens. */
function slowWords({ captureRateHz, playbackRateHz }: MovementTrial): string {
  if (captureRateHz === null || playbackRateHz === null || captureRateHz === playbackRateHz) {
    return 'Frames a second at which the clip plays. Other than the capture rate in slow motion.';
  }
  const factor = captureRateHz / playbackRateHz;
  return factor > 1
    ? `Plays ${Number(factor.toFixed(2))} times slower than real. Times here are real seconds, from the capture rate.`
    : `Plays ${Number((1 / factor).toFixed(2))} times faster than real. Times here are real seconds, from the capture rate.`;
}
