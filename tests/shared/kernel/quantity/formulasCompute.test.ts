import { describe, expect, test } from 'vitest';
import { DE_LEVA_MALE } from '../../../../shared/kernel/anthropometry/deLeva1996.ts';
import { segmentInertia } from '../../../../shared/kernel/anthropometry/segmentInertia.ts';
import type { SegmentRow } from '../../../../shared/kernel/anthropometry/segmentTable.ts';
import { asymmetry } from '../../../../shared/kernel/change/asymmetry.ts';
import { ASYMMETRY_FORMULAS } from '../../../../shared/kernel/change/asymmetryFormulas.ts';
import { coefficientOfVariation } from '../../../../shared/kernel/change/coefficientOfVariation.ts';
import { judgeChange } from '../../../../shared/kernel/change/judgeChange.ts';
import { minimalDetectableChange } from '../../../../shared/kernel/change/minimalDetectableChange.ts';
import { smallestWorthwhileChange } from '../../../../shared/kernel/change/smallestWorthwhileChange.ts';
import { standardErrorOfMeasurement } from '../../../../shared/kernel/change/standardErrorOfMeasurement.ts';
import { symmetricPercent } from '../../../../shared/kernel/change/symmetricPercent.ts';
import { typicalError } from '../../../../shared/kernel/change/typicalError.ts';
import { weight } from '../../../../shared/kernel/force/weight.ts';
import { analyseForceTrace } from '../../../../shared/kernel/jump/analyseForceTrace.ts';
import { compareHeights, type HeightComparison } from '../../../../shared/kernel/jump/compareHeights.ts';
import { contactTime } from '../../../../shared/kernel/jump/contactTime.ts';
import { eccentricUtilisationRatio } from '../../../../shared/kernel/jump/eccentricUtilisationRatio.ts';
import { flightHeight } from '../../../../shared/kernel/jump/flightHeight.ts';
import { flightTime } from '../../../../shared/kernel/jump/flightTime.ts';
import { heightFromTakeoffVelocity } from '../../../../shared/kernel/jump/heightFromTakeoffVelocity.ts';
import { jumpAndReachHeight } from '../../../../shared/kernel/jump/jumpAndReachHeight.ts';
import { lewisPower } from '../../../../shared/kernel/jump/lewisPower.ts';
import { meanLandingForce } from '../../../../shared/kernel/jump/meanLandingForce.ts';
import { meanPushOffForce } from '../../../../shared/kernel/jump/meanPushOffForce.ts';
import { POWER_EQUATIONS } from '../../../../shared/kernel/jump/powerEquations.ts';
import { predictPower } from '../../../../shared/kernel/jump/predictPower.ts';
import { preStretchAugmentation } from '../../../../shared/kernel/jump/preStretchAugmentation.ts';
import { rateOfForceDevelopment } from '../../../../shared/kernel/jump/rateOfForceDevelopment.ts';
import { reactiveStrengthIndex } from '../../../../shared/kernel/jump/reactiveStrengthIndex.ts';
import { reactiveStrengthIndexModified } from '../../../../shared/kernel/jump/reactiveStrengthIndexModified.ts';
import { reactiveStrengthRatio } from '../../../../shared/kernel/jump/reactiveStrengthRatio.ts';
import { takeoffVelocityFromFlightTime } from '../../../../shared/kernel/jump/takeoffVelocityFromFlightTime.ts';
import { takeoffVelocityFromHeight } from '../../../../shared/kernel/jump/takeoffVelocityFromHeight.ts';
import { meanForceByImpulse } from '../../../../shared/kernel/load/meanForceByImpulse.ts';
import { staticJointMoment } from '../../../../shared/kernel/load/staticJointMoment.ts';
import { parseFormula } from '../../../../shared/kernel/quantity/parseFormula.ts';
import { measured, type Quantity } from '../../../../shared/quantity.ts';
import type { Unit } from '../../../../shared/units.ts';
import { evaluateFormula } from '../../../support/evaluateFormula.ts';

const q = <U extends Unit>(value: number, unit: U, u = 0.01 * value): Quantity<U> =>
  measured('x', 'value', value, unit, u);

/** Walks the working of a quantity and holds every formula that can be put in numbers against its value. */
function expectFormulasToCompute(quantity: Quantity): void {
  const { formula, inputs, name } = quantity.working;
  if (formula !== null) {
    const tree = parseFormula(formula);
    expect(tree, `${name}: ${formula}`).not.toBeNull();
    // Integrals and peaks of a whole record have no numbers to put in.
    const isOfRecord = /∫|v\(t_p\)|argmin|max\((F v|-x)\)/.test(formula);
    if (tree !== null && !isOfRecord) {
      const values = Object.fromEntries(inputs.map(({ symbol, quantity: input }) => [symbol, input.value]));
      const found = evaluateFormula(tree, values);
      expect(found / quantity.value, `${name}: ${formula} gives ${found}, not ${quantity.value}`).toBeCloseTo(1, 9);
    }
  }
  for (const input of inputs) expectFormulasToCompute(input.quantity);
}

const arm = {
  'elbow-right': { x: 1, y: 1 },
  'wrist-right': { x: 1.27, y: 1 },
  'knuckle-right': { x: 1.35, y: 1.02 },
};
const heights = (value: number) =>
  ({ quantity: q(value, 'm'), reference: 'take-off', method: 'flight-time', arms: 'hips' }) as const;
const comparison = compareHeights(heights(0.3), heights(0.35)) as HeightComparison;
const thigh = DE_LEVA_MALE.rows.find(({ segment }) => segment === 'thigh') as SegmentRow;
const inertia = segmentInertia(thigh, DE_LEVA_MALE, q(72, 'kg'), q(0.43, 'm'), 'transverse');

const QUANTITIES: readonly (Quantity | { readonly unknown: string })[] = [
  weight(q(72, 'kg')),
  flightHeight(flightTime(0.5, 120)),
  takeoffVelocityFromFlightTime(flightTime(0.5, 120)),
  takeoffVelocityFromHeight(q(0.4, 'm')),
  heightFromTakeoffVelocity(q(2.5, 'm/s')),
  jumpAndReachHeight(q(2.3, 'm'), q(2.8, 'm')),
  reactiveStrengthIndex(q(0.35, 'm'), contactTime(0.2, 240), true),
  reactiveStrengthIndexModified(q(0.35, 'm'), q(0.7, 's')),
  reactiveStrengthRatio(flightTime(0.5, 120), contactTime(0.2, 120)),
  eccentricUtilisationRatio(q(0.35, 'm'), q(0.32, 'm')),
  preStretchAugmentation(q(0.35, 'm'), q(0.32, 'm')),
  meanPushOffForce(q(700, 'N'), q(0.4, 'm'), q(0.35, 'm')),
  meanLandingForce(q(700, 'N'), q(0.3, 'm'), q(0.2, 'm')),
  lewisPower(q(0.4, 'm'), q(72, 'kg')),
  ...POWER_EQUATIONS.map(({ id }) => predictPower(id, q(0.4, 'm'), q(72, 'kg'))),
  comparison.difference,
  ...(comparison.ratio === null ? [] : [comparison.ratio]),
  rateOfForceDevelopment([500, 600, 900], 1000, 0, 2, 1),
  ...ASYMMETRY_FORMULAS.map(({ id }) => asymmetry(id, q(31, 'N'), q(28.4, 'N'))),
  coefficientOfVariation([28, 31, 34], 'N'),
  standardErrorOfMeasurement(q(10, 'm'), q(0.91, '1')),
  minimalDetectableChange(q(3, 'm')),
  smallestWorthwhileChange(q(0.05, 'm')),
  typicalError(
    [
      [5, 6],
      [6, 5],
      [7, 9],
    ],
    'm',
  ),
  symmetricPercent(q(3, 'm'), q(4, 'm')),
  (judgeChange(q(3, 'm'), q(4, 'm'), null) as { change: Quantity }).change,
  inertia.aboutCentre,
  inertia.aboutOrigin,
  meanForceByImpulse(q(0.45, 'kg'), q(1, 'm/s'), q(22, 'm/s'), q(0.15, 's')),
  staticJointMoment({
    points: arm,
    table: DE_LEVA_MALE,
    bodyMass: q(72, 'kg'),
    joint: 'elbow',
    side: 'right',
    carries: 'hanging',
    held: null,
    pointU: 0.005,
  }),
  staticJointMoment({
    points: arm,
    table: DE_LEVA_MALE,
    bodyMass: q(72, 'kg'),
    joint: 'elbow',
    side: 'right',
    carries: 'hanging',
    held: { mass: q(0.6, 'kg'), at: { x: 1.4, y: 1 } },
    pointU: 0.005,
  }),
];

test.each(
  QUANTITIES.map((quantity) => ['unknown' in quantity ? quantity.unknown : quantity.working.name, quantity] as const),
)('law: the formula printed for %s, with the numbers put in, gives the value shown', (_name, quantity) => {
  if ('unknown' in quantity) return expect.fail(quantity.unknown);
  expectFormulasToCompute(quantity);
});

describe('law: the same for every step of a force record', () => {
  const W = 686.4655;
  const forces = Array.from({ length: 4000 }, (_, k) => {
    const t = k / 1000;
    if (t <= 1) return W + 0.5 * Math.sin(700 * t);
    if (t <= 1.3) return W - 350 * Math.sin((Math.PI * (t - 1)) / 0.3);
    if (t <= 1.66) return W + 1100 * Math.sin((Math.PI * (t - 1.3)) / 0.36);
    if (t < 2.2) return 2 * Math.sin(900 * t);
    return t < 2.5 ? W + 970 * Math.sin((Math.PI * (t - 2.2)) / 0.3) : W;
  });
  const jump = analyseForceTrace({ rateHz: 1000, plates: [forces], massKg: null, kind: 'countermovement' });
  const quantities = [
    ...Object.values(jump),
    ...Object.values(jump.phases ?? {}).flatMap((phase) => ('unit' in phase ? [phase] : Object.values(phase))),
  ].filter((value): value is Quantity => typeof value === 'object' && value !== null && 'working' in value);
  test('more than twenty of them, each with an uncertainty or a reason', () => {
    expect(quantities.length).toBeGreaterThan(20);
    for (const { u, uReason } of quantities) expect(u === null).toBe(uReason !== null);
  });
  test.each(quantities.map((quantity) => [quantity.working.name, quantity] as const))('%s', (_name, quantity) => {
    expectFormulasToCompute(quantity);
  });
});
