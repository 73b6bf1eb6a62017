import { expect, test } from 'vitest';
import { againstBest } from '../../../shared/assess/againstBest.ts';
import type { Fact } from '../../../shared/assess/assessment.ts';
import { releaseMargin } from '../../../shared/assess/releaseMargin.ts';
import { measured, type Reading } from '../../../shared/quantity.ts';
import { EXAMPLES } from '../../conformance/examples.ts';

const trial = { ...EXAMPLES.movementTrial, ballId: 'basketball-7', targetDistanceM: 4.225, targetHeightM: 3.05 };

function fact(measure: string, reading: Reading, from: string, height: Fact['height'] = null): Fact {
  return {
    key: `${measure}/${from}`,
    measure,
    label: measure,
    movement: null,
    phase: null,
    side: 'none',
    value: { kind: 'number', reading },
    displayUnit: null,
    height,
    takenOn: null,
    from: { kind: 'movementTrial', id: from },
    provenance: '',
    takenAs: null,
  };
}

const FILMED = { reference: 'take-off', method: 'video centre of mass', arms: 'as in the skill' } as const;
const rise = (metres: number, from: string, height: Fact['height'] = FILMED) =>
  fact('com.riseInSkill', measured('h', 'rise', metres, 'm', 0.01), from, height);

test('definition: of several heights alike the highest is the best, and the difference is here less best', () => {
  const [only] = againstBest([rise(0.3, trial.id), rise(0.42, 'a'), rise(0.38, 'b')], trial.id);
  expect(only?.best?.fact.from.id).toBe('a');
  expect(only?.best?.comparison.difference.value).toBeCloseTo(-0.12, 12);
  expect(only?.best?.comparison.isClear).toBe(true);
});

test('a height by another method is higher and still not compared, with the reason', () => {
  const mat = rise(0.6, 'mat', { reference: 'take-off', method: 'flight-time', arms: 'hips' });
  const [only] = againstBest([rise(0.3, trial.id), mat], trial.id);
  expect(only?.best).toBeNull();
  expect(only?.unlike[0]?.why).toMatch(/flight time/);
});

const release = (speed: number) => [
  fact('ball.releaseSpeed', measured('v', 'speed', speed, 'm/s', 0.1), trial.id),
  fact('ball.releaseAngle', measured('θ', 'angle', (52 * Math.PI) / 180, 'rad', 0.02), trial.id),
  fact('ball.releaseHeight', measured('y', 'height', 2.1, 'm', 0.02), trial.id),
];

test('law: a free throw that passes has room either way; far too fast a one has none', () => {
  const speeds = Array.from({ length: 61 }, (_, i) => 6 + i * 0.05);
  const through = speeds
    .map((v) => releaseMargin(trial, release(v)))
    .filter((one) => !('unknown' in one) && one.passes);
  expect(through.length).toBeGreaterThan(0);
  expect(releaseMargin(trial, release(12))).toMatchObject({ passes: false });
});

test('what is missing for the margin is said', () => {
  expect(releaseMargin({ ...trial, ballId: null }, release(7))).toEqual({ unknown: 'the ball is not chosen' });
  expect(releaseMargin(trial, [])).toHaveProperty('unknown');
});
