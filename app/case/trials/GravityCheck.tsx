import { memo, useMemo } from 'react';
import { flightSays, proposedRate } from '../../../shared/assess/flightSays.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { FactText } from '../FactText.tsx';
import { Button } from '../../parts/Button.tsx';
import { ReadingText } from '../../parts/ReadingText.tsx';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { eventsOfFrames, rateEdits } from './rateEdits.ts';

/** What the free flight says about scale and rate, and what other checks ask of this trial. In words. */
export const GravityCheck = memo(function GravityCheck({ trial }: { trial: MovementTrial }) {
  const { file, assessment } = useCase();
  const edit = useEdit();
  const says = useMemo(() => flightSays(file, trial), [file, trial]);
  const proposal = 'unknown' in says ? null : proposedRate(trial, says);
  const own = assessment.facts.filter((fact) => fact.from.id === trial.id);
  const found = own.filter((fact) => fact.measure === 'ball.gravityFound');
  const subjects = new Set([trial.id, ...own.map((fact) => fact.key)]);
  const checks = assessment.checks.filter(({ about }) => about !== null && subjects.has(about));
  if (found.length === 0 && checks.length === 0 && 'unknown' in says) return null;
  return (
    <section className="gravity" aria-labelledby="gravity-check">
      <h3 id="gravity-check">Gravity check, and others</h3>
      {found.map((fact) => (
        <p key={fact.key}>
          {fact.label}: <FactText fact={fact} />. A wrong scale, frame rate or slow-motion factor shows here as a value
          away from 9.81 m/s².
        </p>
      ))}
      {!('unknown' in says) && says.of === 'body' && (
        <p className={says.check.verdict === 'questioned' ? 'questioned' : undefined}>
          In the air the centre of mass falls with <ReadingText reading={says.check.gravity} unit="m/s2" />.
        </p>
      )}
      {!('unknown' in says) && (
        <p>
          {says.check.sentence}
          {says.of === 'ball' && trial.ballId === null && ' No drag is taken off: choose the ball, then it is.'}
        </p>
      )}
      {proposal !== null && trial.captureRateHz !== null && (
        <div className="row-of-buttons">
          <Button onClick={() => edit(rateEdits(trial, eventsOfFrames(file, trial), proposal.rateHz, 'free-flight'))}>
            Take {Number(proposal.rateHz.toFixed(3))} Hz as the true capture rate, {Number(proposal.factor.toFixed(2))}{' '}
            times {trial.captureRateHz}
          </Button>
          <span className="quiet">
            {proposal.because}. Events keep their frames. Only if the scale is right; after this the check has nothing
            of its own left to say about the rate.
          </span>
        </div>
      )}
      {checks.map((check) => (
        <p key={`${check.id} ${check.about}`} className={check.verdict === 'questioned' ? 'questioned' : undefined}>
          <strong>{check.verdict}</strong>: {check.sentence}
        </p>
      ))}
    </section>
  );
});
