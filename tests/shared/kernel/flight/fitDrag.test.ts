import { describe, expect, test } from 'vitest';
import { randomSource } from '../../../../main/demo/randomSource.ts';
import { dragFactor } from '../../../../shared/kernel/flight/dragFactor.ts';
import { fitDrag } from '../../../../shared/kernel/flight/fitDrag.ts';
import { liftFactor } from '../../../../shared/kernel/flight/liftFactor.ts';
import { ballById } from '../../../../shared/knowledge/balls/index.ts';
import { isKnown, measured } from '../../../../shared/quantity.ts';
import { flown } from '../../../support/flown.ts';

const long = flown(15, 0.5, 0.05, 100, 100);

test('law: a flight without error gives back the drag it was flown with', () => {
  const found = fitDrag(long, 0.0001);
  expect(isKnown(found) && found.value).toBeCloseTo(0.05, 5);
});

test('100 noisy flights of 1 s, 4 mm a coordinate: the drag lies within 2 u in 90 % of them or more, and u is no wider than needed', () => {
  const errors = Array.from({ length: 100 }, (_, seed) => {
    const noise = randomSource(seed);
    const found = fitDrag(
      long.map(({ t, x, y }) => ({ t, x: x + noise.normal(0.004), y: y + noise.normal(0.004) })),
      'its scatter is used',
    );
    if (!isKnown(found)) throw new Error(found.unknown);
    return (found.value - 0.05) / (found.u as number);
  });
  expect(errors.filter((error) => Math.abs(error) <= 2).length).toBeGreaterThanOrEqual(90);
  const rms = Math.hypot(...errors) / 10;
  expect(rms).toBeGreaterThan(0.75);
  expect(rms).toBeLessThan(1.25);
});

test('cannot tell: a quarter of a second of a heavy ball says what it shows, and nothing more', () => {
  const noise = randomSource(3);
  const short = flown(9, 0.9, 0.0225, 15, 60).map(({ t, x, y }) => ({
    t,
    x: x + noise.normal(0.005),
    y: y + noise.normal(0.005),
  }));
  expect(fitDrag(short, 0.005)).toEqual({
    unknown: expect.stringMatching(/cannot tell drag from none: it shows/) as string,
  });
});

test('a scale that is uncertain makes drag uncertain: lengths that fall too fast look like air', () => {
  const [exact, rough] = [fitDrag(long, 0.001), fitDrag(long, 0.001, { scaleU: 0.01 })];
  if (!isKnown(exact) || !isKnown(rough)) throw new Error('no drag found');
  expect(rough.u).toBeGreaterThan(3 * (exact.u as number));
});

test('refuses what is no flight, saying what it got', () => {
  expect(() => fitDrag(long.slice(0, 5), 0.004)).toThrow(/at least 6 frames of flight, got 5/);
  expect(() =>
    fitDrag(
      long.map((sample) => ({ ...sample, y: Number.NaN })),
      0.004,
    ),
  ).toThrow(/finite samples/);
});

describe('lift by spin', () => {
  const ball = ballById('basketball-7');
  if (ball === null) throw new Error('no ball');

  test('definition: with C_L as large as C_d, lift is as strong as drag', () => {
    const drag = dragFactor(ball);
    const lift = liftFactor(ball, measured('C_L', 'Lift', ball.drag.coefficient, '1', 0));
    expect(lift.value).toBeCloseTo(drag.value, 12);
    // The ball's own C_d cancels, so less is uncertain.
    expect(lift.u).toBeLessThan(drag.u as number);
  });
  test('topspin pushes down', () => {
    expect(liftFactor(ball, measured('C_L', 'Lift', -0.1, '1', 0)).value).toBeLessThan(0);
  });
});
