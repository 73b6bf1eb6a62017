import { describe, expect, test } from 'vitest';
import { eventKinematics } from '../../../../shared/kernel/trial/eventKinematics.ts';
import { scene } from '../../../../shared/kernel/trial/scene.ts';
import { isKnown, type Reading } from '../../../../shared/quantity.ts';
import { FRAMES, inventedTrial, RATE, TAKEOFF } from './inventedTrial.ts';

const view = scene(inventedTrial());
if ('unknown' in view) throw new Error(view.unknown);
const found = eventKinematics(view);
const at = (event: string) => found.find((one) => one.event === event);
const known = (reading: Reading | undefined) => {
  if (reading === undefined || !isKnown(reading)) throw new Error(JSON.stringify(reading));
  return reading;
};

describe('a stiff figure on a parabola', () => {
  const release = at('release');

  test('law: its angles do not change', () => {
    expect(release?.angles.length).toBeGreaterThan(5);
    for (const { label, velocity, acceleration } of release?.angles ?? []) {
      expect(Math.abs(known(velocity).value), label).toBeLessThan(0.01);
      expect(Math.abs(known(acceleration).value), label).toBeLessThan(0.5);
      expect(known(velocity).u, label).toBeGreaterThan(0);
    }
  });

  test('law: its points and its centre of mass move as free flight says', () => {
    const vy = TAKEOFF.vy - (9.80665 * (FRAMES.release - FRAMES.takeoff)) / RATE;
    const speed = Math.hypot(TAKEOFF.vx, vy);
    for (const point of ['hip-left', 'centre-of-mass']) {
      const of = known(release?.speeds.find((one) => one.point === point)?.speed);
      expect(of.value, point).toBeCloseTo(speed, 1.3);
    }
  });
});

test('near the end of what is digitised a rate is unknown, and says what it needs', () => {
  const late = inventedTrial();
  const events = late.events.map((event) =>
    event.event === 'landing' ? { ...event, timeS: FRAMES.last / RATE } : event,
  );
  const short = scene({ ...late, events });
  if ('unknown' in short) throw new Error(short.unknown);
  const landing = eventKinematics(short).find(({ event }) => event === 'landing');
  expect(landing?.angles[0]?.velocity).toEqual({
    unknown: expect.stringMatching(/digitised for 0\.05 s before and after/),
  });
});
