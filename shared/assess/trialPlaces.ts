import { DomainError } from '../errors.ts';
import { frameClock } from '../kernel/event/frameClock.ts';
import type { Point } from '../kernel/plane/point.ts';
import { planeFromCalibration } from '../kernel/plane/planeFromCalibration.ts';
import { joinTracks } from '../kernel/trial/joinTracks.ts';
import type { CaseFile } from '../model/records.ts';
import { BALL, type MovementTrial } from '../model/trial.ts';
import { measured, type Reading } from '../quantity.ts';

/** Points as digitised, in the plane of motion with y up; frames without the point are absent. */
function placesOf(file: CaseFile, trial: MovementTrial, point: string): ReadonlyMap<number, Point> {
  const toMetres = planeOf(trial, point === BALL ? 'ball' : 'body');
  const tracks = file.landmarkTracks.filter((track) => track.trialId === trial.id && track.point === point);
  const samples = joinTracks(tracks)[0]?.samples ?? [];
  return new Map(samples.map(([frame, x, y]) => [frame, toMetres({ x, y })]));
}

/** Without a usable calibration the picture itself, upright: good for angles and for which way is up. */
function planeOf({ calibration }: MovementTrial, of: 'body' | 'ball'): (point: Point) => Point {
  try {
    if (calibration !== null) return planeFromCalibration(calibration, of).toMetres;
  } catch (thrown) {
    if (!(thrown instanceof DomainError)) throw thrown;
  }
  return ({ x, y }) => ({ x, y: -y });
}

function frameOf(file: CaseFile, trial: MovementTrial, event: string): number | null {
  const at = file.trialEvents.find((one) => one.trialId === trial.id && one.event === event)?.timeS;
  const clock = frameClock(trial);
  return at === undefined || clock === null ? null : Math.round(clock.frameAt(at));
}

/** Median height of the crown above the lowest heel or toe digitised in the same frame; null where there is none. */
export function crownAboveFeet(file: CaseFile, trial: MovementTrial): number | null {
  const feet = ['heel-left', 'heel-right', 'toe-left', 'toe-right'].map((name) => placesOf(file, trial, name));
  const heights = [...placesOf(file, trial, 'vertex')].flatMap(([frame, crown]) => {
    const here = feet.flatMap((places) => places.get(frame)?.y ?? []);
    return here.length === 0 ? [] : [crown.y - Math.min(...here)];
  });
  return heights.toSorted((a, b) => a - b)[heights.length >> 1] ?? null;
}

/** Forearm of the throwing arm above the horizontal at release, rad, towards the way the wrist points. */
export function forearmAtRelease(file: CaseFile, trial: MovementTrial): Reading<'rad'> {
  const frame = frameOf(file, trial, 'release');
  if (frame === null || trial.side === 'none') return { unknown: 'throwing side or release is not entered' };
  const [elbow, wrist] = ['elbow', 'wrist'].map((part) => placesOf(file, trial, `${part}-${trial.side}`).get(frame));
  if (elbow === undefined || wrist === undefined) return { unknown: 'the forearm is not digitised at release' };
  const angle = Math.atan2(wrist.y - elbow.y, Math.abs(wrist.x - elbow.x));
  return measured('φ', 'forearm at release', angle, 'rad', 'used to recognise a mistake only');
}

/** How far the middle of the hips rises from take-off to its highest place before landing, m. */
export function hipRise(file: CaseFile, trial: MovementTrial): Reading<'m'> {
  const [off, down] = [frameOf(file, trial, 'take-off'), frameOf(file, trial, 'landing')];
  const sides = ['hip-left', 'hip-right'].map((name) => placesOf(file, trial, name)).filter(({ size }) => size > 0);
  if (off === null || down === null || sides.length === 0) {
    return { unknown: 'take-off, landing or the hips are missing' };
  }
  const heightIn = (frame: number) => {
    const here = sides.flatMap((places) => places.get(frame)?.y ?? []);
    return here.length === sides.length ? here.reduce((sum, y) => sum + y, 0) / here.length : null;
  };
  const start = heightIn(off);
  const heights = Array.from({ length: Math.max(0, down - off) }, (_, i) => heightIn(off + i)).filter(
    (y) => y !== null,
  );
  if (start === null || heights.length === 0) return { unknown: 'the hips are not digitised in flight' };
  return measured('h_hip', 'rise of the hip', Math.max(...heights) - start, 'm', 'used to recognise a mistake only');
}
