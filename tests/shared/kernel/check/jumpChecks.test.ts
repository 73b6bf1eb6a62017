import { describe, expect, test } from 'vitest';
import { bodyWeightAsForceNeeded } from '../../../../shared/kernel/check/bodyWeightAsForceNeeded.ts';
import { unlikeHeightsCompared } from '../../../../shared/kernel/check/unlikeHeightsCompared.ts';
import { weightAsMassTimesTen } from '../../../../shared/kernel/check/weightAsMassTimesTen.ts';
import { measured } from '../../../../shared/quantity.ts';

const check = (statedWeightN: number | null, massKg: number | null) =>
  weightAsMassTimesTen({ statedWeightN, massKg, about: null });

describe('mistake 1: weight as mass times ten', () => {
  test('W1: 720 N for 72.0 kg is 1.97 % more than 706.08 N', () => {
    const found = check(720, 72);
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('times ten');
    expect(found.numbers[0]?.value).toBe(720);
    expect(found.numbers[1]?.value).toBeCloseTo(706.0788, 4);
  });
  test('W1: 706 N is fine, with g 9.80665 or 9.81', () => {
    expect(check(706.0788, 72).verdict).toBe('fine');
    expect(check(706.32, 72).verdict).toBe('fine');
  });
  test('kilograms given as a force', () => expect(check(72, 72).sentence).toContain('kilograms'));
  test('a weight that belongs to another mass', () => expect(check(600, 72).verdict).toBe('questioned'));
  test.each([
    [null, 72],
    [706, null],
  ])('cannot tell from %s N and %s kg', (weight, mass) => {
    expect(check(weight, mass)).toMatchObject({ verdict: 'cannot tell', numbers: [] });
  });
});

describe('mistake 4: body weight as the force needed', () => {
  const weight = measured('W', 'body weight', 706.0788, 'N', 0);
  const known = {
    height: measured('h', 'height', 0.4, 'm', 0),
    pushOffDistance: measured('s', 'distance', 0.35, 'm', 0),
  };
  const unknown = { height: { unknown: 'not measured' }, pushOffDistance: { unknown: 'not measured' } };

  test('I8: body weight lifts nothing; 72 kg to 0.40 m over 0.35 m takes 1513.0 N', () => {
    const found = bodyWeightAsForceNeeded({ statedForceN: 706, weight, ...known, about: null });
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[1]?.value).toBeCloseTo(1513.0, 1);
  });
  test('questioned even where the right answer cannot be given', () => {
    const found = bodyWeightAsForceNeeded({ statedForceN: 700, weight, ...unknown, about: null });
    expect(found).toMatchObject({ verdict: 'questioned', numbers: [{ value: 700 }, { value: 706.0788 }] });
  });
  test('more than body weight is fine; without a force or a weight it cannot tell', () => {
    const ask = (statedForceN: number | null, w: typeof weight | { unknown: string }) =>
      bodyWeightAsForceNeeded({ statedForceN, weight: w, ...known, about: null }).verdict;
    expect(ask(1500, weight)).toBe('fine');
    expect(ask(null, weight)).toBe('cannot tell');
    expect(ask(1500, { unknown: 'not recorded' })).toBe('cannot tell');
  });
});

describe('mistake 3: unlike heights compared', () => {
  const skill = {
    label: 'Rise in the throw',
    heightM: 0.3571,
    reference: 'take-off',
    method: 'video',
    arms: 'free',
  } as const;
  const reach = {
    label: 'Jump and reach',
    heightM: 0.5184,
    reference: 'standing',
    method: 'jump-and-reach',
    arms: 'free',
  } as const;

  test('J10: 0.3571 m above take-off against 0.5184 m above standing says nothing', () => {
    const found = unlikeHeightsCompared({ a: skill, b: reach, about: null });
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('from take-off, the other from standing');
    expect(found.numbers.map(({ value }) => value)).toEqual([0.3571, 0.5184]);
  });
  test('arms on the hips against free arms', () => {
    const found = unlikeHeightsCompared({ a: skill, b: { ...skill, arms: 'hips' }, about: null });
    expect(found.sentence).toContain('free in one and on the hips in the other');
  });
  test('alike: fine; arms not recorded: cannot tell', () => {
    expect(unlikeHeightsCompared({ a: skill, b: skill, about: null }).verdict).toBe('fine');
    expect(unlikeHeightsCompared({ a: skill, b: { ...skill, arms: null }, about: null }).verdict).toBe('cannot tell');
    expect(unlikeHeightsCompared({ a: { ...skill, arms: 'not recorded' }, b: skill, about: null }).verdict).toBe(
      'cannot tell',
    );
  });
});
