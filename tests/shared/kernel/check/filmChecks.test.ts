import { describe, expect, test } from 'vitest';
import { degreesAsRadians } from '../../../../shared/kernel/check/degreesAsRadians.ts';
import { dualPassUncorrected } from '../../../../shared/kernel/check/dualPassUncorrected.ts';
import { eventsWithoutUncertainty } from '../../../../shared/kernel/check/eventsWithoutUncertainty.ts';
import { hipAsCentreOfMass } from '../../../../shared/kernel/check/hipAsCentreOfMass.ts';
import { imageYDown } from '../../../../shared/kernel/check/imageYDown.ts';
import { insideAngleAsFlexion } from '../../../../shared/kernel/check/insideAngleAsFlexion.ts';
import { ratesSwapped } from '../../../../shared/kernel/check/ratesSwapped.ts';
import { rawPointsDifferentiated } from '../../../../shared/kernel/check/rawPointsDifferentiated.ts';
import { scaleInAnotherPlane } from '../../../../shared/kernel/check/scaleInAnotherPlane.ts';
import { segmentTurned } from '../../../../shared/kernel/check/segmentTurned.ts';
import { measured, type Reading } from '../../../../shared/quantity.ts';
import type { Unit } from '../../../../shared/units.ts';

const exact = <U extends Unit>(value: number, unit: U): Reading<U> => measured('x', 'given', value, unit, 0);
const deg = (value: number) => (value * Math.PI) / 180;
const unknown = { unknown: 'not recorded' };
const about = null;
const gravity = (value: number, u: number) => measured('g', 'gravity found', value, 'm/s2', u);

const askRatesSwapped = (captureRateHz: number | null, playbackRateHz: number | null) =>
  ratesSwapped({ captureRateHz, playbackRateHz, about });

describe('mistake 2: capture and playback rate swapped (V17: k = capture over playback, 240 over 30 is 8)', () => {
  test('30 captured and 240 played is questioned', () => {
    const found = askRatesSwapped(30, 240);
    expect(found).toMatchObject({ verdict: 'questioned', numbers: [{ value: 30 }, { value: 240 }] });
    expect(found.sentence).toContain('8.0 times');
  });
  test('240 captured and 30 played is fine; one alone cannot be told', () => {
    expect(askRatesSwapped(240, 30).verdict).toBe('fine');
    expect(askRatesSwapped(240, null).verdict).toBe('cannot tell');
    expect(askRatesSwapped(null, 30).verdict).toBe('cannot tell');
  });
});

const askSegmentTurned = (turn: Reading<'rad'>) => segmentTurned({ turn, segment: 'the left thigh', about });

describe('mistake 5: a segment turned out of the picture (V6, V7, computed)', () => {
  test('V7: 0.24 m seen of 0.27 m is 27.27°, and is questioned', () => {
    const found = askSegmentTurned(exact(deg(27.27), 'rad'));
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('11 % shorter');
    expect(found.numbers[0]?.value).toBeCloseTo(0.24 / 0.27, 4);
  });
  test('V6: 10° makes it only 1.5 % shorter and is fine', () => {
    expect(askSegmentTurned(exact(deg(10), 'rad')).verdict).toBe('fine');
  });
  test('20° ± 10° or no length cannot be told', () => {
    expect(askSegmentTurned(measured('θ', 'turn', deg(20), 'rad', deg(10))).verdict).toBe('cannot tell');
    expect(askSegmentTurned(unknown).verdict).toBe('cannot tell');
  });
});

const askScaleInAnotherPlane = (D: Reading<'m'>, d: Reading<'m'>) =>
  scaleInAnotherPlane({ cameraDistance: D, nearerBy: d, isCorrected: false, about });

describe('mistake 15: scale taken in another plane (V5, computed)', () => {
  test.each([
    [3, 0.3, 0.1111],
    [5, 0.3, 0.0638],
    [10, 0.3, 0.0309],
    [10, -0.3, -0.0291],
  ])('camera at %d m, movement %d m nearer: lengths off by %d, questioned', (D, d, expected) => {
    const found = askScaleInAnotherPlane(exact(D, 'm'), exact(d, 'm'));
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[0]?.value).toBeCloseTo(expected, 4);
  });
  test('once lengths are corrected for it, it is fine and says by how much', () => {
    const seen = { cameraDistance: exact(10, 'm'), nearerBy: exact(0.3, 'm'), isCorrected: true, about };
    expect(scaleInAnotherPlane(seen)).toMatchObject({
      verdict: 'fine',
      sentence: expect.stringContaining('3.1 %') as string,
    });
  });
  test('2 cm at 10 m is fine; without the distances it cannot be told and says what to enter', () => {
    expect(askScaleInAnotherPlane(exact(10, 'm'), exact(0.02, 'm')).verdict).toBe('fine');
    expect(askScaleInAnotherPlane(unknown, exact(0.3, 'm')).verdict).toBe('cannot tell');
    expect(askScaleInAnotherPlane(exact(10, 'm'), unknown).sentence).toContain('how far the camera stood');
  });
});

describe('mistake 16: image y pointing down (law: what falls has a downward acceleration)', () => {
  test('gravity of −9.8 m/s² and a crown below the feet are questioned', () => {
    expect(imageYDown({ gravityFound: gravity(-9.8, 0.2), headAboveFeetM: null, about })).toMatchObject({
      verdict: 'questioned',
      numbers: [{ value: -9.8 }, { value: 9.80665 }],
    });
    expect(imageYDown({ gravityFound: unknown, headAboveFeetM: -1.7, about }).verdict).toBe('questioned');
  });
  test('either the right way up is fine; nothing, or a gravity too uncertain for its sign, cannot be told', () => {
    expect(imageYDown({ gravityFound: gravity(9.7, 0.3), headAboveFeetM: null, about }).verdict).toBe('fine');
    expect(imageYDown({ gravityFound: unknown, headAboveFeetM: 1.7, about }).verdict).toBe('fine');
    expect(imageYDown({ gravityFound: unknown, headAboveFeetM: null, about }).verdict).toBe('cannot tell');
    expect(imageYDown({ gravityFound: gravity(-3, 4), headAboveFeetM: null, about }).verdict).toBe('cannot tell');
  });
});

const askRawPointsDifferentiated = (rateHz: number | null, order: 1 | 2, isSmoothed: boolean | null = false) =>
  rawPointsDifferentiated({ pointUM: 0.001, rateHz, order, isSmoothed, about });

describe('mistake 17: raw points differentiated (dossier 3.5, computed: noise of 1 mm a point)', () => {
  test.each([
    [60, 8.82],
    [120, 35.3],
    [240, 141.1],
  ])('%d frames a second: acceleration uncertain by %d m/s², questioned', (rate, noise) => {
    const found = askRawPointsDifferentiated(rate, 2);
    expect(found.verdict).toBe('questioned');
    expect(found.numbers[0]?.value).toBeCloseTo(noise, 1);
  });
  test('240 frames a second: velocity uncertain by 0.1697 m/s, questioned; 60: 0.0424 m/s, fine', () => {
    expect(askRawPointsDifferentiated(240, 1).numbers[0]?.value).toBeCloseTo(0.1697, 4);
    expect(askRawPointsDifferentiated(60, 1).verdict).toBe('fine');
  });
  test('smoothed is fine; not knowing whether, or how fast, cannot be told', () => {
    expect(askRawPointsDifferentiated(240, 2, true).verdict).toBe('fine');
    expect(askRawPointsDifferentiated(240, 2, null).verdict).toBe('cannot tell');
    expect(askRawPointsDifferentiated(null, 2).verdict).toBe('cannot tell');
  });
});

const filterOf18 = (a0: number, b1: number, b2: number) => ({ a0, a1: 2 * a0, a2: a0, b1, b2 });

describe('mistake 18: dual pass without its correction (Winter 2009, computed coefficients for 60 Hz and 6 Hz)', () => {
  const ask = (coefficients: ReturnType<typeof filterOf18> | null, passes: 1 | 2) =>
    dualPassUncorrected({ filter: coefficients, cutoffHz: 6, rateHz: 60, passes, about });
  const onePass = filterOf18(0.06745527, 1.1429805, -0.4128016);
  test('the one-pass filter run twice has a gain of 0.5 at its cut-off', () => {
    const found = ask(onePass, 2);
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('0.802');
    expect(found.numbers[0]?.value).toBeCloseTo(0.5, 4);
  });
  test('run once it is fine, and so are exact C (0.7071) and C = 0.802 (0.70736) run twice', () => {
    expect(ask(onePass, 1).verdict).toBe('fine');
    expect(ask(filterOf18(0.09444674, 0.96264131, -0.34042828), 2).verdict).toBe('fine');
    expect(ask(filterOf18(0.09448918, 0.96237529, -0.34033201), 2).verdict).toBe('fine');
  });
  test('without coefficients it cannot be told', () => expect(ask(null, 2).verdict).toBe('cannot tell'));
});

const askDegreesAsRadians = (stated: number | null, expected: Reading<'rad' | 'm/s'>, greatest: number | null = null) =>
  degreesAsRadians({ stated, expected, greatest, about });

describe('mistake 19: degrees as radians (W7, computed: 1000 °/s on 0.35 m is 6.1087 m/s, not 350)', () => {
  test('350 m/s against 6.1087 m/s is questioned', () => {
    const found = askDegreesAsRadians(350, exact(6.1087, 'm/s'));
    expect(found).toMatchObject({ verdict: 'questioned', numbers: [{ value: 350 }, { value: 6.1087 }] });
    expect(found.sentence).toContain('57.3 times');
  });
  test('an angle of 52 rad is questioned where 180° is the most', () => {
    expect(askDegreesAsRadians(52, unknown, Math.PI).sentence).toContain('looks like degrees');
  });
  test('what fits is fine; with nothing to hold it against it cannot be told', () => {
    expect(askDegreesAsRadians(6.2, exact(6.1087, 'm/s')).verdict).toBe('fine');
    expect(askDegreesAsRadians(0.9, unknown, Math.PI).verdict).toBe('fine');
    expect(askDegreesAsRadians(0.9, unknown).verdict).toBe('cannot tell');
    expect(askDegreesAsRadians(null, unknown, Math.PI).verdict).toBe('cannot tell');
  });
});

const askInsideAngleAsFlexion = (stated: number | null, flexion: Reading<'rad'>) =>
  insideAngleAsFlexion({ statedFlexionRad: stated, flexion, joint: 'the knee', about });

describe('mistake 20: inside angle as flexion (definition: standing reads 180° inside, 0° flexed)', () => {
  test('175° of flexion in somebody standing is questioned', () => {
    const found = askInsideAngleAsFlexion(deg(175), exact(0, 'rad'));
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('angle inside');
    expect(found.numbers).toHaveLength(2);
  });
  test('A13: the stick figure’s knee, 146.352° inside, is 33.648° flexed: either is told apart', () => {
    expect(askInsideAngleAsFlexion(deg(146.352), exact(deg(33.648), 'rad')).sentence).toContain('angle inside');
    expect(askInsideAngleAsFlexion(deg(33.6), exact(deg(33.648), 'rad')).verdict).toBe('fine');
  });
  test('a third angle is questioned without a guess; nothing to compare cannot be told', () => {
    expect(askInsideAngleAsFlexion(deg(60), exact(deg(33.6), 'rad')).sentence).not.toContain('inside');
    expect(askInsideAngleAsFlexion(deg(60), unknown).verdict).toBe('cannot tell');
    expect(askInsideAngleAsFlexion(null, exact(0, 'rad')).verdict).toBe('cannot tell');
  });
});

const askHipAsCentreOfMass = (statedRiseM: number | null, centreRise: Reading<'m'> = exact(0.409, 'm')) =>
  hipAsCentreOfMass({ statedRiseM, hipRise: exact(0.35, 'm'), centreRise, about });

describe('mistake 28: hip as centre of mass (A11, computed: arms overhead lift the centre 5.9 cm with the hips still)', () => {
  test('the rise of the hip is questioned and recognised', () => {
    const found = askHipAsCentreOfMass(0.35);
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('how far the hip rises');
    expect(found.numbers.map(({ value }) => value)).toEqual([0.35, 0.409]);
  });
  test('the rise of the centre of mass is fine; without the body it cannot be told', () => {
    expect(askHipAsCentreOfMass(0.41).verdict).toBe('fine');
    expect(askHipAsCentreOfMass(0.35, unknown).verdict).toBe('cannot tell');
    expect(askHipAsCentreOfMass(null).verdict).toBe('cannot tell');
  });
});

const askEventsWithoutUncertainty = (uS: number | null, captureRateHz: number | null = 60) =>
  eventsWithoutUncertainty({ events: [{ label: 'Take-off', uS }], captureRateHz, about });

describe('mistake 33: events without uncertainty (V10: half a frame either way)', () => {
  test('an event said to be exact at 60 frames a second is questioned: ± 8.3 ms', () => {
    const found = askEventsWithoutUncertainty(0);
    expect(found.verdict).toBe('questioned');
    expect(found.sentence).toContain('± 8.3 ms');
    expect(found.numbers[1]?.value).toBeCloseTo(1 / 60 / Math.sqrt(12), 12);
  });
  test('half a frame, entered or taken, is fine; no events or no rate cannot be told', () => {
    expect(askEventsWithoutUncertainty(null).verdict).toBe('fine');
    expect(askEventsWithoutUncertainty(0.004).verdict).toBe('fine');
    expect(askEventsWithoutUncertainty(0, null).verdict).toBe('cannot tell');
    expect(eventsWithoutUncertainty({ events: [], captureRateHz: 60, about }).verdict).toBe('cannot tell');
  });
});
