import { useDeferredValue, useMemo, useState } from 'react';
import { type JointMoment, staticMoments } from '../../../shared/kernel/trial/staticMoments.ts';
import { trialLoads } from '../../../shared/kernel/trial/trialLoads.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { CellChoice } from '../../parts/CellChoice.tsx';
import { useScene } from './useScene.ts';
import { WorkedCell } from './WorkedCell.tsx';

const STANCES = [
  { value: 'one leg', label: 'standing on this leg alone' },
  { value: 'two legs', label: 'standing on both legs alike' },
] as const satisfies readonly { value: JointMoment['carries']; label: string }[];

/** Forces by work, energy and impulse, and what each joint would hold if the body stood still as it is at an event or in the frame shown. */
export function TrialLoads({ trial, frame }: { trial: MovementTrial; frame: number }) {
  const scene = useScene(trial);
  // The playhead does not wait for the loads.
  const atFrame = useDeferredValue(frame);
  const loads = useMemo(() => (scene === null ? null : trialLoads(scene.view, scene.input)), [scene]);
  const moments = useMemo(
    () =>
      scene === null || loads === null || 'unknown' in loads
        ? []
        : [...loads.moments, ...staticMoments(scene.view, scene.input, loads.bodyMass, atFrame)],
    [scene, loads, atFrame],
  );
  const [event, setEvent] = useState<string | null>(null);
  const [stance, setStance] = useState<JointMoment['carries'] | null>(null);
  if (loads === null) return <p className="quiet">Give the true capture rate first.</p>;
  if ('unknown' in loads) return <p className="reading-unknown">not known: {loads.unknown}</p>;
  const events = [...new Map(moments.map((one) => [one.event, one.label]))];
  const [first, ...others] = events;
  const shown = others.find(([id]) => id === event) ?? first;
  const rows = moments.filter(
    ({ event: at, joint, carries }) =>
      at === shown?.[0] && (joint === 'shoulder' || joint === 'elbow' || carries === (stance ?? 'hanging')),
  );
  return (
    <>
      <p className="quiet">
        Models for a body at rest or averaged over a way: none is the load on a tissue, and none is a diagnosis.
      </p>
      <table className="table rate-table">
        <caption>
          <strong>Mean forces</strong>
        </caption>
        <thead>
          <tr>
            <th scope="col">Force</th>
            <th scope="col">Value</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">On the ground, push-off</th>
            <WorkedCell reading={loads.meanPushOffForce} />
          </tr>
          <tr>
            <th scope="row">On the ground, landing</th>
            <WorkedCell reading={loads.meanLandingForce} />
          </tr>
          {loads.meanBallForce !== null && (
            <tr>
              <th scope="row">On the ball, to its release</th>
              <WorkedCell reading={loads.meanBallForce} />
            </tr>
          )}
        </tbody>
      </table>
      {shown !== undefined && first !== undefined && (
        <>
          <div className="choices-in-row">
            <CellChoice
              label="Event of the static moments"
              value={event}
              empty={first[1]}
              choices={others.map(([value, label]) => ({ value, label }))}
              onChange={setEvent}
            />
            <CellChoice
              label="What the legs hold"
              value={stance}
              empty="legs hanging free"
              choices={STANCES}
              onChange={setStance}
            />
          </div>
          <table className="table rate-table">
            <caption>
              <strong>Static moments</strong>{' '}
              <span className="quiet">
                at {shown[1].toLowerCase()}, as if at rest; positive: the weight lies forward of the joint
              </span>
            </caption>
            <thead>
              <tr>
                <th scope="col">Joint</th>
                <th scope="col">Moment</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ joint, side, withBall, moment }) => (
                <tr key={`${joint}-${side}`}>
                  <th scope="row">
                    {joint}, {side}
                    {withBall && <span className="quiet">, with the ball</span>}
                  </th>
                  <WorkedCell reading={moment} />
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
    </>
  );
}
