import { useMemo, useState } from 'react';
import { againstBest } from '../../../shared/assess/againstBest.ts';
import { releaseElsewhere } from '../../../shared/assess/releaseElsewhere.ts';
import { releaseMargin } from '../../../shared/assess/releaseMargin.ts';
import { formatDate } from '../../../shared/format/number.ts';
import { dragFactor } from '../../../shared/kernel/flight/dragFactor.ts';
import { dragOfFlight } from '../../../shared/kernel/trial/dragOfFlight.ts';
import { ballById } from '../../../shared/knowledge/balls/index.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { NumberField } from '../../parts/NumberField.tsx';
import { ReadingText } from '../../parts/ReadingText.tsx';
import { FactText } from '../FactText.tsx';
import { useCase } from '../useCase.ts';
import { OpenedDetails } from './OpenedDetails.tsx';
import { useScene } from './useScene.ts';
import { WorkedCell } from './WorkedCell.tsx';

const ROOM = [
  ['slower', 'Slower by'],
  ['faster', 'Faster by'],
  ['flatter', 'Flatter by'],
  ['steeper', 'Steeper by'],
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
                <table className="table rate-table">
                  <caption className="only-heard">Room for error, each alone</caption>
                  <tbody>
                    {ROOM.map(([key, label]) => (
                      <tr key={key}>
                        <th scope="row">{label}</th>
                        <WorkedCell reading={margin[key]} />
                      </tr>
                    ))}
                  </tbody>
                </table>
              )}
            </>
          )}
        </section>
      )}
      {hasBall && <SameFromElsewhere trial={trial} />}
      {hasBall && (
        <OpenedDetails title="How much the air slows this ball">{() => <AirFound trial={trial} />}</OpenedDetails>
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

const NEEDED = [
  ['height', 'Release height'],
  ['speed', 'Speed, at the angle as it was'],
  ['angle', 'Angle, at the speed as it was'],
  ['leastSpeed', 'Least speed that gets there'],
] as const;

/** What would reach the same target from a little higher, and from a little later in the same jump. Nothing is stored. */
function SameFromElsewhere({ trial }: { trial: MovementTrial }) {
  // The two changes a coach asks about first; any others can be typed.
  const [higherM, setHigherM] = useState<number | null>(0.05);
  const [laterS, setLaterS] = useState<number | null>(0.04);
  return (
    <OpenedDetails title="The same target from higher, or later">
      {() => (
        <>
          <div className="form">
            <NumberField
              label="Higher by"
              unit="m"
              entry={['cm', 'm']}
              possible={[-2, 2]}
              value={higherM}
              onChange={setHigherM}
            />
            <NumberField
              label="Later by"
              unit="s"
              entry={['ms', 's']}
              possible={[-1, 1]}
              value={laterS}
              onChange={setLaterS}
            />
          </div>
          {higherM !== null && laterS !== null && <Moved trial={trial} higherM={higherM} laterS={laterS} />}
        </>
      )}
    </OpenedDetails>
  );
}

function Moved({ trial, higherM, laterS }: { trial: MovementTrial; higherM: number; laterS: number }) {
  const { facts } = useCase().assessment;
  const scene = useScene(trial);
  const found = useMemo(
    () => (scene === null ? null : releaseElsewhere(trial, facts, scene.view, { higherM, laterS })),
    [trial, facts, scene, higherM, laterS],
  );
  if (found === null) return null;
  const columns = [
    ['Higher', found.higher],
    ['Later', found.later],
  ] as const;
  return (
    <table className="table rate-table">
      <caption className="only-heard">The release that reaches the same target</caption>
      <thead>
        <tr>
          <th scope="col">Release</th>
          {columns.map(([label]) => (
            <th key={label} scope="col">
              {label}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {NEEDED.map(([key, label]) => (
          <tr key={key}>
            <th scope="row">{label}</th>
            {columns.map(([of, moved]) => (
              <WorkedCell key={of} reading={'unknown' in moved ? moved : moved[key]} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The drag that this very flight shows, beside that of the ball on file. */
function AirFound({ trial }: { trial: MovementTrial }) {
  const scene = useScene(trial);
  const found = useMemo(() => (scene === null ? null : dragOfFlight(scene.view)), [scene]);
  const ball = trial.ballId === null ? null : ballById(trial.ballId);
  if (found === null) return <p className="quiet">Give the true capture rate first.</p>;
  return (
    <table className="table rate-table">
      <caption className="only-heard">Drag factor of the ball</caption>
      <tbody>
        <tr>
          <th scope="row">Found in this flight</th>
          <WorkedCell reading={found} />
        </tr>
        <tr>
          <th scope="row">Of the ball on file, used above</th>
          <WorkedCell reading={ball === null ? { unknown: 'no ball is chosen' } : dragFactor(ball)} />
        </tr>
      </tbody>
    </table>
  );
}
