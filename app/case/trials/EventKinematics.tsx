import { useMemo, useState } from 'react';
import { type EventKinematics as AtEvent, eventKinematics } from '../../../shared/kernel/trial/eventKinematics.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { CellChoice } from '../../parts/CellChoice.tsx';
import { useScene } from './useScene.ts';
import { WorkedCell } from './WorkedCell.tsx';

/** Angles, how fast they change, and speeds of points at one event of the reader's choice. */
export function EventKinematics({ trial }: { trial: MovementTrial }) {
  const scene = useScene(trial);
  const [chosen, setChosen] = useState<string | null>(null);
  const found = useMemo(() => (scene === null ? [] : eventKinematics(scene.view)), [scene]);
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
                  <WorkedCell key={i} reading={reading} />
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
                <WorkedCell reading={row.speed} />
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
