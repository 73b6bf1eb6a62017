import { expect, test } from 'vitest';
import { analyseForceTrace } from '../../../../shared/kernel/jump/analyseForceTrace.ts';
import { fromForceSummary } from '../../../../shared/kernel/jump/fromForceSummary.ts';
import { toForceSummary } from '../../../../shared/kernel/jump/toForceSummary.ts';
import type { Quantity } from '../../../../shared/quantity.ts';
import { jumpTraceCsv } from '../../../../main/demo/jumpTrace.ts';
import { randomSource } from '../../../../main/demo/randomSource.ts';
import { readForceCsv } from '../../../../main/exchange/forceCsv.ts';

/** A jump made with a take-off velocity of 2.6 m/s and a mass of 80 kg. */
function madeJump() {
  const made = { massKg: 80, takeoffVelocityMPerS: 2.6, depthM: 0.3, leftShare: 0.5 };
  const { plates, rateHz } = readForceCsv(jumpTraceCsv(made, randomSource(5)), { columns: [], rateHz: null });
  const { jumps } = analyseForceTrace({ plates, rateHz, kind: 'countermovement', massKg: null });
  const [jump] = jumps;
  if (jump === undefined) throw new Error('the record holds a jump');
  return toForceSummary(jump, rateHz, ['left', 'right']);
}

const inputOf = ({ working }: Quantity, symbol: string): number =>
  working.inputs.find((one) => one.symbol === symbol)?.quantity.value ?? Number.NaN;

test('laws of the equations that are printed: the numbers put in give the number that was stored', () => {
  const force = madeJump();
  const jump = fromForceSummary(force, 'countermovement');
  const { jumpHeight: h, jumpHeightFlightTime: hf, timeToTakeoff: t, rsiModified: rsi, mass } = jump;
  expect(inputOf(h, 'v_to') ** 2 / (2 * inputOf(h, 'g'))).toBeCloseTo(force.jumpHeightM.value, 12);
  expect((inputOf(hf, 'g') * inputOf(hf, 't_f') ** 2) / 8).toBeCloseTo(force.jumpHeightFlightTimeM.value, 12);
  expect(inputOf(t, 't_to') - inputOf(t, 't_0')).toBeCloseTo(force.timeToTakeoffS.value, 12);
  expect(inputOf(rsi, 'h') / inputOf(rsi, 't_to')).toBeCloseTo(force.rsiModified.value, 12);
  expect(inputOf(mass, 'W') / inputOf(mass, 'g')).toBeCloseTo(force.massKg.value, 12);
  // Made with these.
  expect(Math.abs(jump.takeoffVelocity.value - 2.6)).toBeLessThan(0.02);
  expect(Math.abs(mass.value - 80)).toBeLessThan(0.2);
});

test('value and uncertainty are the stored ones, which know the correlations; every number but the read-off force has its equation', () => {
  const force = madeJump();
  const jump = fromForceSummary(force, 'countermovement');
  const pairs = [
    [jump.takeoffVelocity, force.takeoffVelocityMPerS],
    [jump.jumpHeight, force.jumpHeightM],
    [jump.jumpHeightFlightTime, force.jumpHeightFlightTimeM],
    [jump.riseAboveStanding, force.riseAboveStandingM],
    [jump.timeToTakeoff, force.timeToTakeoffS],
    [jump.rsiModified, force.rsiModified],
    [jump.peakPower, force.peakPowerW],
    [jump.countermovementDepth, force.countermovementDepthM],
  ] as const;
  for (const [quantity, stored] of pairs) {
    expect({ value: quantity?.value, u: quantity?.u }).toEqual(stored);
    expect(quantity?.working.formula?.startsWith(`${quantity.working.symbol} =`)).toBe(true);
  }
  expect(jump.peakForce.working.formula).toBeNull();
});

test('a stored velocity that is not above zero is refused', () => {
  const force = madeJump();
  const still = { ...force, takeoffVelocityMPerS: { value: 0, u: null } };
  expect(() => fromForceSummary(still, 'countermovement')).toThrow(/take-off velocity|heightFromTakeoffVelocity/);
});
