import { useMemo, useState } from 'react';
import { movementOf } from '../../../shared/assess/movementOf.ts';
import { type EventKinematics as AtEvent, eventKinematics } from '../../../shared/kernel/trial/eventKinematics.ts';
import { scene } from '../../../shared/kernel/trial/scene.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { isKnown, type Reading } from '../../../shared/quantity.ts';
import { CellChoice } from '../../parts/CellChoice.tsx';
import { ReadingText } from '../../parts/ReadingText.tsx';
import { WorkingView } from '../../parts/WorkingView.tsx';
import { useCase } from '../useCase.ts';

/** Angles, how fast they change, and speeds of points at one event of the reader's choice; worked out once opened. */
export function EventKinematics({ trial }: { trial: MovementTrial }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="event-kinematics" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>Angles and speeds at each event</summary>
      {isOpen && <AtEvents trial={trial} />}
    </details>
  );
}

function AtEvents({ trial }: { trial: MovementTrial }) {
  const { file } = useCase();
  const [chosen, setChosen] = useState<string | null>(null);
  const { landmarkTracks, trialEvents, pointRepeats, athlete, ownMovements } = file;
  const found = useMemo(() => {
    const movement = movementOf({ ownMovements }, trial.movementId);
    if (movement === null) return [];
    const ofTrial = (record: { readonly trialId: string }) => record.trialId === trial.id;
    const { massKg, statureM, referenceSex } = athlete;
    const view = scene({
      trial,
      tracks: landmarkTracks.filter(ofTrial),
      events: trialEvents.filter(ofTrial),
      repeats: pointRepeats.filter(ofTrial),
      movement,
      massKg,
      statureM,
      referenceSex,
    });
    return 'unknown' in view ? [] : eventKinematics(view);
  }, [trial, landmarkTracks, trialEvents, pointRepeats, athlete, ownMovements]);
  const [first, ...others] = found;
  if (first === undefined) return <p className="quiet">Give an event a time and the true capture rate first.</p>;
  const shown = others.find(({ event }) => event === chosen) ?? first;
  return (
    <>
      <CellChoice
        label="Event"
        value={chosen}
        empty={first.label}
        choices={others.map(({ event, label }) => ({ value: event, label }))}
        onChange={setChosen}
      />
      <Tables at={shown} />
    </>
  );
}

function Tables({ at: { label, angles, speeds } }: { at: AtEvent }) {
  return (
    <>
      {angles.length > 0 && (
        <table className="table rate-table">
          <caption>
            <strong>Angles</strong> <span className="quiet">at {label.toLowerCase()}</span>
          </caption>
          <thead>
            <tr>
              <th scope="col">Angle</th>
              <th scope="col">Value</th>
              <th scope="col">Angular velocity</th>
              <th scope="col">Angular acceleration</th>
            </tr>
          </thead>
          <tbody>
            {angles.map((row) => (
              <tr key={row.id}>
                <th scope="row">{row.label}</th>
                {[row.angle, row.velocity, row.acceleration].map((reading, i) => (
                  <Cell key={i} reading={reading} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {speeds.length > 0 && (
        <table className="table rate-table">
          <caption>
            <strong>Speeds</strong> <span className="quiet">at {label.toLowerCase()}, in the plane of motion</span>
          </caption>
          <thead>
            <tr>
              <th scope="col">Point</th>
              <th scope="col">Speed</th>
            </tr>
          </thead>
          <tbody>
            {speeds.map((row) => (
              <tr key={row.point}>
                <th scope="row">{row.label}</th>
                <Cell reading={row.speed} />
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p className="quiet">
        The uncertainty is that of digitising, scale and timing. A filter also flattens what is faster than it lets
        through; that is not in it.
      </p>
    </>
  );
}

/** A value that opens to its working. */
function Cell({ reading }: { reading: Reading }) {
  return (
    <td>
      {isKnown(reading) ? (
        <details>
          <summary>
            <ReadingText reading={reading} />
          </summary>
          <WorkingView quantity={reading} />
        </details>
      ) : (
        <ReadingText reading={reading} />
      )}
    </td>
  );
}
