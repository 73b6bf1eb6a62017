import { describe, expect, test } from 'vitest';
import { analyseForceTrace } from '../../shared/kernel/jump/analyseForceTrace.ts';
import { integrateForce, motionFromRest } from '../../shared/kernel/jump/integrateForce.ts';
import { standardGravity } from '../../shared/kernel/constants/standardGravity.ts';

const g = standardGravity.value;
const W = 70 * g;

/** J7: 70 kg, 1 s still, a half sine down of 350 N over 0.30 s, a half sine up of 1100 N over 0.36 s, flight, landing. */
function record(rateHz = 1000): number[] {
  const flightS = 0.53974;
  const landingS = 1.66 + flightS;
  return Array.from({ length: Math.round(4 * rateHz) }, (_, k) => {
    const t = k / rateHz;
    if (t <= 1) return W;
    if (t <= 1.3) return W - 350 * Math.sin((Math.PI * (t - 1)) / 0.3);
    if (t <= 1.66) return W + 1100 * Math.sin((Math.PI * (t - 1.3)) / 0.36);
    if (t < landingS) return 0;
    // Stopped by a half sine that takes up the take-off momentum in 0.3 s: 2 A T / π = 2 m v.
    const stop = 0.3;
    const amplitude = (70 * 2.64652 * Math.PI) / (2 * stop);
    return t < landingS + stop ? W + amplitude * Math.sin((Math.PI * (t - landingS)) / stop) : W;
  });
}

describe('J7: a countermovement jump with a closed-form answer (computed check values; exact integrals of half sines)', () => {
  const jump = analyseForceTrace({ rateHz: 1000, plates: [record()], massKg: null, kind: 'countermovement' });

  test('weight, mass and the instants', () => {
    expect(jump.bodyWeight.value).toBeCloseTo(686.4655, 4);
    expect(jump.mass.value).toBeCloseTo(70, 6);
    // One sample: the first that differs from body weight.
    expect(Math.abs(jump.onset.value - 1)).toBeLessThanOrEqual(0.001);
    // Force passes 20 N inside the step at 1.660 s.
    expect(Math.abs(jump.takeoff.value - 1.66)).toBeLessThanOrEqual(0.001 + 1e-9);
    expect(Math.abs(jump.timeToTakeoff.value - 0.66)).toBeLessThanOrEqual(0.002 + 1e-9);
    expect(Math.abs(jump.flightTime.value - 0.53974)).toBeLessThanOrEqual(0.001);
  });
  test('the trapezoid rule at 1000 Hz gives 2.64651 m/s, 0.3571 m (±0.0005), and −0.95493 m/s at the lowest', () => {
    const motion = motionFromRest(integrateForce(Float64Array.from(record()), 1000), W, 1);
    const v = motion.velocity(1.66);
    expect(v).toBeCloseTo(2.64651, 4);
    expect(Math.abs((v * v) / (2 * g) - 0.3571)).toBeLessThanOrEqual(0.0005);
    expect(motion.velocity(1.3)).toBeCloseTo(-0.95493, 4);
    expect(motion.velocity(1.42397)).toBeCloseTo(0, 3);
    expect(motion.position(1.42397)).toBeCloseTo(-0.22056, 4);
    expect(motion.position(1.66)).toBeCloseTo(0.16125, 4);
  });
  test('take-off velocity 2.64651 m/s and height 0.3571 m', () => {
    // This force drops to nothing in one step; between two samples of it the body loses up to g Δt = 0.0098 m/s.
    expect(Math.abs(jump.takeoffVelocity.value - 2.64651)).toBeLessThanOrEqual(g / 1000);
    expect(Math.abs(jump.jumpHeight.value - 0.3571)).toBeLessThanOrEqual(2.64651 / 1000);
    expect(Math.abs(jump.jumpHeightFlightTime.value - 0.35711)).toBeLessThanOrEqual(0.0015);
  });
  test('centre of mass 0.22056 m down, 0.51835 m up in all', () => {
    expect(jump.countermovementDepth?.value).toBeCloseTo(0.22056, 4);
    expect(Math.abs((jump.riseAboveStanding?.value ?? 0) - 0.51835)).toBeLessThanOrEqual(0.003);
  });
  test('peak force 1786.47 N, peak power 3107.2 W, modified index 0.5411', () => {
    expect(jump.peakForce.value).toBeCloseTo(1786.47, 1);
    expect(Math.abs(jump.peakPower.value - 3107.2)).toBeLessThanOrEqual(1);
    // Height and time are each off by up to a sample.
    expect(Math.abs(jump.rsiModified.value - 0.5411)).toBeLessThanOrEqual(0.006);
  });
  test('phases: unweighting to 0.300 s, standstill at 0.42397 s; impulses −66.8451, +66.8451 and 185.2564 N·s', () => {
    const { unweighting, braking, propulsion, pushOffDistance, meanPower } = jump.phases ?? expect.fail('no phases');
    // The onset found is the first sample that differs from body weight, up to a sample late.
    expect(braking.start.value).toBeCloseTo(1.3, 3);
    expect(propulsion.start.value).toBeCloseTo(1.42397, 4);
    expect(unweighting.netImpulse.value).toBeCloseTo(-66.8451, 1);
    expect(braking.netImpulse.value).toBeCloseTo(66.8451, 1);
    // Half a sample of falling, as above: W Δt / 2 to W Δt.
    expect(Math.abs(propulsion.netImpulse.value - 185.2564)).toBeLessThan(W / 1000);
    expect(unweighting.duration.value + braking.duration.value + propulsion.duration.value).toBeCloseTo(
      jump.timeToTakeoff.value,
      9,
    );
    expect(pushOffDistance.value).toBeCloseTo(0.22056 + 0.16125, 2);
    // Work over time from the closed form: m (v²/2 + g s) / (0.660 − 0.42397) s.
    const exact = (70 * (2.64652 ** 2 / 2 + g * (0.22056 + 0.16125))) / (0.66 - 0.42397);
    expect(Math.abs(meanPower.value / exact - 1)).toBeLessThan(0.01);
  });
  test('I7: rate of force development, lowest to highest force: 4393.9 N/s', () => {
    expect(jump.rateOfForceDevelopment?.value).toBeCloseTo(4393.9, 0);
  });
  test('one plate takes all of it: impulse 252.1014 − 66.8451 + W · 0.66 N·s', () => {
    expect(jump.plates).toHaveLength(1);
    expect(Math.abs((jump.plates[0]?.impulse.value ?? 0) - (185.2564 + W * 0.66))).toBeLessThan(W / 1000);
  });
  test('a sound record, and nothing left over after landing', () => {
    expect(jump.isImpulseSound).toBe(true);
    expect(jump.warnings).toEqual([]);
    expect(Math.abs(jump.drift?.value ?? 1)).toBeLessThan(0.01);
  });
  test('a mass entered 3 % too high is questioned; the record is weighed, not the entry', () => {
    const heavy = analyseForceTrace({ rateHz: 1000, plates: [record()], massKg: 72.1, kind: 'countermovement' });
    expect(heavy.jumpHeight.value).toBeCloseTo(jump.jumpHeight.value, 12);
    expect(heavy.warnings).toHaveLength(1);
    expect(heavy.warnings[0]).toContain('72.1 kg');
  });
});

const halfSine = (t: number, lengthS: number, impulse: number) =>
  W + ((impulse * Math.PI) / (2 * lengthS)) * Math.sin((Math.PI * t) / lengthS);

describe('a drop jump with a closed-form answer (half sines; impulse-momentum and free fall)', () => {
  const [dropped, rises, contactS] = [0.3, 0.25, 0.22] as const;
  const vDown = Math.sqrt(2 * g * dropped);
  const vUp = Math.sqrt(2 * g * rises);
  const flightS = (2 * vUp) / g;
  const forces = Array.from({ length: 4000 }, (_, k) => {
    const t = k / 1000 - 0.5;
    if (t < 0) return 0;
    if (t < contactS) return halfSine(t, contactS, 70 * (vDown + vUp));
    if (t < contactS + flightS) return 0;
    const landed = t - contactS - flightS;
    return landed < 0.3 ? halfSine(landed, 0.3, 70 * vUp) : W;
  });
  const jump = analyseForceTrace({ rateHz: 1000, plates: [forces], massKg: 70, kind: 'drop' });
  // Force steps from 0 to body weight and back between samples: g Δt a step, three steps between flight and rest.
  const stepV = (3 * g) / 1000;

  test('weighed at the end, integrated backward', () => {
    expect(jump.bodyWeight.value).toBeCloseTo(W, 6);
    expect(Math.abs(jump.takeoffVelocity.value - vUp)).toBeLessThan(stepV);
    expect(Math.abs(jump.jumpHeight.value - rises)).toBeLessThan((vUp * stepV) / g);
    expect(jump.isImpulseSound).toBe(true);
  });
  test('contact 0.22 s, flight time, and the height it fell from', () => {
    expect(Math.abs(jump.timeToTakeoff.value - contactS)).toBeLessThanOrEqual(0.001 + 1e-9);
    expect(Math.abs(jump.flightTime.value - flightS)).toBeLessThanOrEqual(0.001 + 1e-9);
    expect(Math.abs((jump.dropHeight?.value ?? 0) - dropped)).toBeLessThan((vDown * 2 * stepV) / g);
    expect(Math.abs(jump.rsiModified.value - rises / contactS)).toBeLessThan(0.05);
  });
  test('no countermovement, no phases', () => {
    expect(jump.countermovementDepth).toBeNull();
    expect(jump.phases).toBeNull();
  });
});
