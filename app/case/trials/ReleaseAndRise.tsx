import { useMemo } from 'react';
import { againstBest } from '../../../shared/assess/againstBest.ts';
import { releaseMargin } from '../../../shared/assess/releaseMargin.ts';
import { formatDate } from '../../../shared/format/number.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { ReadingText } from '../../parts/ReadingText.tsx';
import { FactText } from '../FactText.tsx';
import { useCase } from '../useCase.ts';

const ROOM = [
  ['slower', 'Slower by', 'm/s'],
  ['faster', 'Faster by', 'm/s'],
  ['flatter', 'Flatter by', 'deg'],
  ['steeper', 'Steeper by', 'deg'],
] as const;

/** Room for error of the release, and the rise in the skill beside the athlete's own best. */
export function ReleaseAndRise({ trial }: { trial: MovementTrial }) {
  const { assessment } = useCase();
  const { facts } = assessment;
  const margin = useMemo(() => releaseMargin(trial, facts), [trial, facts]);
  const rises = useMemo(() => againstBest(facts, trial.id), [trial.id, facts]);
  const hasBall = facts.some(({ from, measure }) => from.id === trial.id && measure.startsWith('ball.'));
  return (
    <>
      {hasBall && (
        <section aria-labelledby="margin-for-error">
          <h3 id="margin-for-error">Room for error at release</h3>
          {'unknown' in margin ? (
            <p className="reading-unknown">not known: {margin.unknown}</p>
          ) : (
            <>
              <p>
                {margin.passes
                  ? 'This release passes its target. Each alone, it may be:'
                  : 'By these numbers this release does not pass its target, so there is no room to give.'}
              </p>
              {margin.passes && (
                <ul>
                  {ROOM.map(([key, label, unit]) => (
                    <li key={key}>
                      {label} <ReadingText reading={margin[key]} unit={unit} />
                    </li>
                  ))}
                </ul>
              )}
            </>
          )}
        </section>
      )}
      {rises.length > 0 && (
        <section aria-labelledby="against-best">
          <h3 id="against-best">Against the athlete’s own best</h3>
          {rises.map(({ here, best, unlike }) => (
            <div key={here.key}>
              <p>
                {here.label}: <FactText fact={here} />.{' '}
                {best === null ? (
                  'No height like it is on file to compare with.'
                ) : (
                  <>
                    The best like it{best.fact.takenOn === null ? '' : `, ${formatDate(best.fact.takenOn)},`} is{' '}
                    <FactText fact={best.fact} />: <ReadingText reading={best.comparison.difference} unit="cm" /> from
                    there to here
                    {best.comparison.isClear === false && ', which is within its uncertainty'}.
                  </>
                )}
              </p>
              {unlike.length > 0 && (
                <details>
                  <summary>Not compared: {unlike.map(({ label }) => label.toLowerCase()).join(', ')}</summary>
                  <ul>
                    {unlike.map(({ label, why }) => (
                      <li key={label}>
                        {label}. {why}
                      </li>
                    ))}
                  </ul>
                </details>
              )}
            </div>
          ))}
        </section>
      )}
    </>
  );
}
