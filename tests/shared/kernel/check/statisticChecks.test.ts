import { describe, expect, test } from 'vitest';
import { DE_LEVA_MALE } from '../../../../shared/kernel/anthropometry/deLeva1996.ts';
import { asymmetryUnnamed } from '../../../../shared/kernel/check/asymmetryUnnamed.ts';
import { asymmetryWithinVariation } from '../../../../shared/kernel/check/asymmetryWithinVariation.ts';
import { estimatedPercentile } from '../../../../shared/kernel/check/estimatedPercentile.ts';
import { feetWithDecimals } from '../../../../shared/kernel/check/feetWithDecimals.ts';
import { metresInCentimetreEquation } from '../../../../shared/kernel/check/metresInCentimetreEquation.ts';
import { normFromElsewhere, type NormTags } from '../../../../shared/kernel/check/normFromElsewhere.ts';
import { powerBeyondBand } from '../../../../shared/kernel/check/powerBeyondBand.ts';
import { powerExplainsHeight } from '../../../../shared/kernel/check/powerExplainsHeight.ts';
import { sagittalRadiusInSideView } from '../../../../shared/kernel/check/sagittalRadiusInSideView.ts';
import { segmentSharesDoNotSum } from '../../../../shared/kernel/check/segmentSharesDoNotSum.ts';
import { strengthIndicesMixed } from '../../../../shared/kernel/check/strengthIndicesMixed.ts';
import { measured, type Reading } from '../../../../shared/quantity.ts';
import type { Unit } from '../../../../shared/units.ts';

const exact = <U extends Unit>(value: number, unit: U): Reading<U> => measured('x', 'given', value, unit, 0);
const unknown = { unknown: 'not recorded' };
const about = null;

const askMetresInCentimetreEquation = (
  statedPowerW: number | null,
  massKg: number | null = 72,
  height: Reading<'m'> = exact(0.4, 'm'),
) => metresInCentimetreEquation({ statedPowerW, height, massKg, about });

describe('mistake 21: metres in an equation for centimetres (Sayers et al. 1999, squat: 40 cm and 72 kg give 3634.6 W)', () => {
  test('1231 W, from 0.40 in place of 40, is questioned', () => {
    const found = askMetresInCentimetreEquation(1231);
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[0]?.value).toBe(1231);
    expect(found.numbers[1]?.value).toBeCloseTo(3634.6, 1);
  });
  test('3635 W is fine; a power of no known equation, and a missing height or mass, cannot be told', () => {
    expect(askMetresInCentimetreEquation(3635).verdict).toBe('fine');
    expect(askMetresInCentimetreEquation(5000).verdict).toBe('cannot tell');
    expect(askMetresInCentimetreEquation(3635, null).verdict).toBe('cannot tell');
    expect(askMetresInCentimetreEquation(3635, 72, unknown).verdict).toBe('cannot tell');
    expect(askMetresInCentimetreEquation(null).verdict).toBe('cannot tell');
  });
});

const askPowerBeyondBand = (statedPowerW: number | null, massKg: number | null = 75) =>
  powerBeyondBand({ statedPowerW, massKg, about });

describe('mistake 22: a power nobody shows (band of 20 to 90 W/kg, P-check of the dossier)', () => {
  test('Harman with +1822, 50 cm and 75 kg: 7617 W, 101.6 W/kg, questioned', () => {
    const found = askPowerBeyondBand(61.9 * 50 + 36 * 75 + 1822);
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[0]?.value).toBeCloseTo(101.6, 1);
    expect(found.numbers[1]?.value).toBe(90);
  });
  test('Lewis with m inside the root: 133 W, questioned', () =>
    expect(askPowerBeyondBand(133).numbers[1]?.value).toBe(20));
  test('Harman with −1822: 3973 W is fine; without mass or power it cannot be told', () => {
    expect(askPowerBeyondBand(3973).verdict).toBe('fine');
    expect(askPowerBeyondBand(3973, null).verdict).toBe('cannot tell');
    expect(askPowerBeyondBand(null).verdict).toBe('cannot tell');
  });
});

describe('mistake 23: strength indices mixed (I1 to I3, computed: one jump is 1.750 m/s and 2.672)', () => {
  const jump = { index: exact(1.75, 'm/s'), ratio: exact(2.672, '1'), modified: unknown };
  test('2.67 given as the index is questioned', () => {
    const found = strengthIndicesMixed({ statedIndex: 2.67, ...jump, about });
    expect(found).toMatchObject({ verdict: 'questioned', numbers: [{ value: 2.67 }, { value: 1.75 }] });
    expect(found.sentence).toContain('a ratio');
  });
  test('the modified index of a countermovement jump given as the index is questioned', () => {
    const found = strengthIndicesMixed({
      statedIndex: 0.4,
      index: unknown,
      ratio: unknown,
      modified: exact(0.4, 'm/s'),
      about,
    });
    expect(found.verdict).toBe('questioned');
  });
  test('1.75 is fine; 2.1 is neither; without a drop jump it cannot be told', () => {
    expect(strengthIndicesMixed({ statedIndex: 1.75, ...jump, about }).verdict).toBe('fine');
    expect(strengthIndicesMixed({ statedIndex: 2.1, ...jump, about }).verdict).toBe('questioned');
    const none = { index: unknown, ratio: unknown, modified: unknown };
    expect(strengthIndicesMixed({ statedIndex: 1.75, ...none, about }).verdict).toBe('cannot tell');
    expect(strengthIndicesMixed({ statedIndex: null, ...jump, about }).verdict).toBe('cannot tell');
  });
});

describe('mistake 24: asymmetry without formula or side (31.0 and 28.4, computed: 8.387, 4.377, 8.754 or 2.785 %)', () => {
  const base = { stated: 0.0839, formula: null, weakerSide: 'left' as const, sides: { left: 28.4, right: 31 }, about };
  test('8.4 % without a formula is questioned, recognised, and another formula is set beside it', () => {
    const found = asymmetryUnnamed(base);
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('percentage difference');
    expect(found.numbers[1]?.value).toBeCloseTo(0.04377, 5);
  });
  test('a difference by no formula known here is questioned as that', () => {
    expect(asymmetryUnnamed({ ...base, stated: 0.2 }).sentence).toContain('no formula known here');
  });
  test('named, but without the weaker side, is questioned', () => {
    expect(asymmetryUnnamed({ ...base, formula: 'percentage-difference', weakerSide: 'none' }).verdict).toBe(
      'questioned',
    );
  });
  test('named with its side is fine; with neither formula nor values it cannot be told', () => {
    expect(asymmetryUnnamed({ ...base, formula: 'bilateral-index' }).verdict).toBe('fine');
    expect(asymmetryUnnamed({ ...base, sides: null }).verdict).toBe('cannot tell');
    expect(asymmetryUnnamed({ ...base, stated: null }).verdict).toBe('cannot tell');
  });
});

const askAsymmetryWithinVariation = (left: readonly number[], right: readonly number[]) =>
  asymmetryWithinVariation({ formula: 'percentage-difference', left, right, unit: 'm', about });

describe('mistake 25: asymmetry smaller than the variation of trials (Exell et al., quoted by Bishop et al. 2016)', () => {
  test('means 2 % apart with trials that vary by 10 % are questioned', () => {
    const found = askAsymmetryWithinVariation([0.9, 1, 1.1], [0.882, 0.98, 1.078]);
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[0]?.value).toBeCloseTo(0.02, 9);
    expect(found.numbers[1]?.value).toBeCloseTo(0.1, 9);
  });
  test('20 % apart is fine; two trials a side, or one that is nought, cannot be told', () => {
    expect(askAsymmetryWithinVariation([0.99, 1, 1.01], [0.79, 0.8, 0.81]).verdict).toBe('fine');
    expect(askAsymmetryWithinVariation([1, 1], [0.8, 0.8]).verdict).toBe('cannot tell');
    expect(askAsymmetryWithinVariation([1, 1, 0], [0.8, 0.8, 0.8]).verdict).toBe('cannot tell');
  });
});

describe('mistake 26: sagittal radius in a side view (de Leva 1996, table 4: trunk of men 0.372 against 0.347)', () => {
  const row = DE_LEVA_MALE.rows.find(({ segment, origin }) => segment === 'trunk' && origin === 'SUPR') ?? null;
  const ask = (radius: number | null, from: typeof row = row) => sagittalRadiusInSideView({ radius, row: from, about });
  test('0.372 is questioned and recognised', () => {
    const found = ask(0.372);
    expect(found).toMatchObject({ verdict: 'questioned', numbers: [{ value: 0.372 }, { value: 0.347 }] });
    expect(found.sentence).toContain('front-to-back');
  });
  test('0.347 is fine; no radius or no row cannot be told', () => {
    expect(ask(0.347).verdict).toBe('fine');
    expect(ask(null).verdict).toBe('cannot tell');
    expect(ask(0.347, null).verdict).toBe('cannot tell');
  });
});

describe('mistake 27: segment shares that do not sum (A3, Winter 2009: with every limb doubled 1.0000)', () => {
  const body = (
    [
      ['Hand', 0.006, 2],
      ['Forearm', 0.016, 2],
      ['Upper arm', 0.028, 2],
      ['Foot', 0.0145, 2],
      ['Leg', 0.0465, 2],
      ['Thigh', 0.1, 2],
      ['Head and neck', 0.081, 1],
      ['Trunk', 0.497, 1],
    ] as const
  ).map(([name, share, count]) => ({ name, share, count: count as number }));
  const ask = (segments: typeof body) => segmentSharesDoNotSum({ segments, about });
  test('the thigh counted once is questioned and named: 0.900', () => {
    const found = ask(body.map((one) => (one.name === 'Thigh' ? { ...one, count: 1 } : one)));
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('Thigh is counted once');
    expect(found.numbers[0]?.value).toBeCloseTo(0.9, 9);
  });
  test('a segment listed twice is questioned and named', () => {
    expect(ask([...body, { name: 'Foot', share: 0.0145, count: 2 }]).sentence).toContain('Foot is listed twice');
  });
  test('the whole body is fine; an empty list cannot be told', () => {
    expect(ask(body).verdict).toBe('fine');
    expect(ask([]).verdict).toBe('cannot tell');
  });
});

describe('mistake 29: a norm from elsewhere (J14: similar groups differ by 17 cm between studies)', () => {
  const tags: NormTags = { method: 'force-plate', reference: 'take-off', arms: 'hips', sex: 'female', sport: null };
  const value = { label: 'Jump height', value: 0.36, unit: 'm' as const, tags };
  // Patterson & Peterson 2004: women 14.1 in by jump and reach.
  const reach = { label: 'Norm', value: 0.358, tags: { ...tags, method: 'jump-and-reach', reference: 'standing' } };
  const ask = (norm: Parameters<typeof normFromElsewhere>[0]['norm'], own: NormTags = tags) =>
    normFromElsewhere({ value: { ...value, tags: own }, norm, about });
  test('a norm by jump and reach for a plate height is questioned', () => {
    expect(ask(reach)).toMatchObject({ verdict: 'questioned', numbers: [{ value: 0.36 }, { value: 0.358 }] });
    expect(ask(reach).sentence).toContain('method, level that counts as zero');
  });
  test('one of another sex is questioned', () => {
    expect(ask({ ...reach, tags: { ...tags, sex: 'male' } }).verdict).toBe('questioned');
  });
  test('alike is fine; an unrecorded tag or no norm cannot be told', () => {
    expect(ask({ ...reach, tags }).verdict).toBe('fine');
    expect(ask({ ...reach, tags }, { ...tags, arms: null }).verdict).toBe('cannot tell');
    expect(ask(null).verdict).toBe('cannot tell');
  });
});

describe('mistake 30: an estimated percentile as a counted one (dossier 2.6: “estimated, say so”)', () => {
  const base = { percentile: 75, foundBy: 'normal curve', isCalledEstimated: false, about } as const;
  test('not said to be estimated is questioned', () => {
    expect(estimatedPercentile(base)).toMatchObject({ verdict: 'questioned', numbers: [{ value: 75 }] });
  });
  test('said so, or counted, is fine; not knowing how it was found cannot be told', () => {
    expect(estimatedPercentile({ ...base, isCalledEstimated: true }).verdict).toBe('fine');
    expect(estimatedPercentile({ ...base, foundBy: 'counting' }).verdict).toBe('fine');
    expect(estimatedPercentile({ ...base, foundBy: null }).verdict).toBe('cannot tell');
    expect(estimatedPercentile({ ...base, percentile: null }).verdict).toBe('cannot tell');
  });
});

const askFeetWithDecimals = (typedFeet: string | null) => feetWithDecimals({ typedFeet, about });

describe('mistake 31: inches typed as decimal feet (NIST SP 811, W2 and W3: 6 ft 2 in is 1.8796 m, 6.2 ft is 1.88976 m)', () => {
  test('6.2 is questioned, with both readings', () => {
    const found = askFeetWithDecimals('6.2');
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[0]?.value).toBeCloseTo(1.88976, 5);
    expect(found.numbers[1]?.value).toBeCloseTo(1.8796, 4);
  });
  test('6 is fine, 6.25 can only be a decimal; words or nothing cannot be told', () => {
    expect(askFeetWithDecimals('6').verdict).toBe('fine');
    expect(askFeetWithDecimals('6.25').verdict).toBe('fine');
    expect(askFeetWithDecimals('six').verdict).toBe('cannot tell');
    expect(askFeetWithDecimals(null).verdict).toBe('cannot tell');
  });
});

describe('mistake 35: power said to explain height (Linthorne 2021, Sports Biomech 20(1):3-21)', () => {
  const base = { correlation: 0.8, isFromSameJumps: true, isCalledCause: true, about };
  test('a correlation from the same jumps called a cause is questioned', () => {
    const found = powerExplainsHeight(base);
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[1]?.value).toBeCloseTo(0.64, 9);
  });
  test('not called a cause, or from other jumps, is fine; unknown cannot be told', () => {
    expect(powerExplainsHeight({ ...base, isCalledCause: false }).verdict).toBe('fine');
    expect(powerExplainsHeight({ ...base, isFromSameJumps: false }).verdict).toBe('fine');
    expect(powerExplainsHeight({ ...base, isFromSameJumps: null }).verdict).toBe('cannot tell');
    expect(powerExplainsHeight({ ...base, correlation: null }).verdict).toBe('cannot tell');
  });
});
