import type { MovementTrial } from '../../../shared/model/trial.ts';
import { FactText } from '../FactText.tsx';
import { useCase } from '../useCase.ts';

/** What the free flight says about scale and rate, and what other checks ask of this trial. In words. */
export function GravityCheck({ trial }: { trial: MovementTrial }) {
  const { assessment } = useCase();
  const own = assessment.facts.filter((fact) => fact.from.id === trial.id);
  const found = own.filter((fact) => fact.measure === 'ball.gravityFound');
  const subjects = new Set([trial.id, ...own.map((fact) => fact.key)]);
  const checks = assessment.checks.filter(({ about }) => about !== null && subjects.has(about));
  if (found.length === 0 && checks.length === 0) return null;
  return (
    <section className="gravity" aria-labelledby="gravity-check">
      <h3 id="gravity-check">Gravity check, and others</h3>
      {found.map((fact) => (
        <p key={fact.key}>
          {fact.label}: <FactText fact={fact} />. A wrong scale, frame rate or slow-motion factor shows here as a value
          away from 9.81 m/s².
        </p>
      ))}
      {checks.map((check) => (
        <p key={`${check.id} ${check.about}`} className={check.verdict === 'questioned' ? 'questioned' : undefined}>
          <strong>{check.verdict}</strong>: {check.sentence}
        </p>
      ))}
    </section>
  );
}
