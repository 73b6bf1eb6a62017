import { expect, test } from 'vitest';
import type { Fact } from '../../../shared/assess/assessment.ts';
import { releaseElsewhere } from '../../../shared/assess/releaseElsewhere.ts';
import { scene } from '../../../shared/kernel/trial/scene.ts';
import { isKnown, measured, type Reading } from '../../../shared/quantity.ts';
import type { Unit } from '../../../shared/units.ts';
import { inventedTrial } from '../kernel/trial/inventedTrial.ts';

const input = inventedTrial();
const view = scene(input);
if ('unknown' in view) throw new Error(view.unknown);
// The vacuum of the worked values: no ball, and so no drag of its own.
const trial = { ...input.trial, ballId: null };
const fact = (measure: string, value: number, unit: Unit) =>
  ({
    measure,
    key: measure,
    from: { kind: 'movementTrial', id: trial.id },
    value: { kind: 'number', reading: measured('x', measure, value, unit, 0) },
  }) as unknown as Fact;
const facts = [
  fact('ball.releaseSpeed', 7.1973, 'm/s'),
  fact('ball.releaseAngle', (52 * Math.PI) / 180, 'rad'),
  fact('ball.releaseHeight', 2.1, 'm'),
];
const known = (reading: Reading) => {
  if (!isKnown(reading)) throw new Error(reading.unknown);
  return reading.value;
};

test('P1 (computed): from 35 cm higher the least speed is 6.9089 m/s at 49.041°', () => {
  const { higher } = releaseElsewhere(trial, facts, view, { higherM: 0.35, laterS: 0.04 });
  if ('unknown' in higher) throw new Error(higher.unknown);
  expect(known(higher.leastSpeed)).toBeCloseTo(6.9089, 4);
  expect((known(higher.leastSpeedAngle) * 180) / Math.PI).toBeCloseTo(49.041, 3);
});

test('constant acceleration: 40 ms later, 0.25 s after leaving the ground at 2.942 m/s, the ball is 11.8 mm higher and 2 cm nearer', () => {
  const { later } = releaseElsewhere(trial, facts, view, { higherM: 0.35, laterS: 0.04 });
  if ('unknown' in later) throw new Error(later.unknown);
  const up = 9.80665 * (0.3 - 0.25);
  expect(known(later.height)).toBeCloseTo(2.1 + up * 0.04 - (9.80665 * 0.04 ** 2) / 2, 3);
  expect(known(later.distance)).toBeCloseTo(4.225 - 0.5 * 0.04, 3);
});

test('without a target, without a release, or released on the ground: the reason', () => {
  const change = { higherM: 0.05, laterS: 0.04 };
  expect(releaseElsewhere({ ...trial, targetHeightM: null }, facts, view, change).higher).toEqual({
    unknown: expect.stringContaining('no target') as string,
  });
  expect(releaseElsewhere(trial, [], view, change).later).toEqual({
    unknown: expect.stringContaining('not known') as string,
  });
  const events = input.events.map((event) => (event.event === 'release' ? { ...event, timeS: 0.2 } : event));
  const grounded = scene({ ...input, events });
  if ('unknown' in grounded) throw new Error(grounded.unknown);
  expect(releaseElsewhere(trial, facts, grounded, change).later).toEqual({
    unknown: expect.stringContaining('on the ground') as string,
  });
});
