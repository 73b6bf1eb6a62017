import { expect, test } from 'vitest';
import { standardErrorOfMeasurement } from '../../shared/kernel/change/standardErrorOfMeasurement.ts';
import { bentLanding } from '../../shared/kernel/check/bentLanding.ts';
import { normFromElsewhere } from '../../shared/kernel/check/normFromElsewhere.ts';
import { compareHeights } from '../../shared/kernel/jump/compareHeights.ts';
import { eccentricUtilisationRatio } from '../../shared/kernel/jump/eccentricUtilisationRatio.ts';
import { flightHeight } from '../../shared/kernel/jump/flightHeight.ts';
import { flightTime } from '../../shared/kernel/jump/flightTime.ts';
import { spacing } from '../../shared/kernel/signal/spacing.ts';
import { measureTrial } from '../../shared/kernel/trial/measureTrial.ts';
import { isKnown, measured, type Quantity } from '../../shared/quantity.ts';
import { evaluateRules } from '../../shared/rules/evaluate.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';
import type { Unit } from '../../shared/units.ts';
import { FRAMES, inventedTrial, RATE, TAKEOFF } from '../shared/kernel/trial/inventedTrial.ts';
import { ADULT_MAN, fact } from '../shared/rules/build.ts';

// What the studies behind the jump and throw chapters found in people, held against what the kernel says or refuses.

const known = <U extends Unit>(value: number, unit: U, u = 0): Quantity<U> => measured('x', 'given', value, unit, u);
const height = (value: number) => ({
  quantity: known(value, 'm', 0.005),
  reference: 'take-off' as const,
  method: 'flight-time' as const,
  arms: 'hips' as const,
});

test('J6, Gonçalves et al. 2024 (PeerJ 12:e17704): a landing on bent ankles that reads 18 % over 0.30 m is questioned', () => {
  const found = bentLanding({
    kneeAtTakeoff: { unknown: 'not filmed' },
    kneeAtLanding: { unknown: 'not filmed' },
    byFlightTime: known(1.18 * 0.3, 'm'),
    byImpulse: known(0.3, 'm'),
    about: null,
  });
  expect(found.verdict).toBe('questioned');
  // By J4 the landing lies about twice the excess lower.
  expect(found.sentence).toContain('about 11 cm lower');
});

test('J11, Asian J Sports Med, article 12921: up to 15.4 cm between standing and take-off as zero, so never compared', () => {
  const standing = { ...height(0.3 + 0.154), reference: 'standing' as const };
  expect(compareHeights(height(0.3), standing)).toEqual({ unknown: expect.stringContaining('standing') });
});

test.each([
  ['J12, Aragón-Vargas 2000: four methods, all different in 52 men', 'jump-and-reach'],
  ['J13, Moir 2008: time in the air and take-off velocity give other heights of one jump', 'force-plate'],
] as const)('%s, so never compared', (_, method) => {
  expect(compareHeights(height(0.3), { ...height(0.3), method })).toHaveProperty('unknown');
});

test('J14, Eythorsdottir et al. 2024: 17 cm between studies of like groups, so a norm by another method is questioned', () => {
  const tags = { method: 'flight-time', reference: 'take-off', arms: 'hips', sex: 'male', sport: null };
  const found = normFromElsewhere({
    value: { label: 'height', value: 0.38, unit: 'm', tags },
    norm: { label: 'median', value: 0.55, tags: { ...tags, method: 'jump-and-reach', reference: 'standing' } },
    about: null,
  });
  expect(found.verdict).toBe('questioned');
});

test('I6, Kozinc, Pleša & Šarabon 2021 (SJ 0.39 ± 0.06 m): within two centimetres the ratio cannot be told from 1; no rule judges it', () => {
  const ratio = eccentricUtilisationRatio(known(0.41, 'm', 0.02), known(0.39, 'm', 0.02));
  expect(Math.abs(ratio.value - 1)).toBeLessThan(ratio.u ?? 0);
  expect(JSON.stringify(SHIPPED_RULES)).not.toMatch(/eccentricUtilisation/i);
});

test('V12, Balsalobre-Fernández et al. 2014: ICC 0.997 at 240 frames a second leaves room for the timing of two events', () => {
  // Spread between men of a national team, 4.8 cm (Haugen et al.): the study's own was not seen.
  const leftOver = standardErrorOfMeasurement(known(0.048, 'm'), known(0.997, '1'));
  const timing = flightHeight(flightTime(0.5, 240)).u ?? Number.NaN;
  expect(timing).toBeLessThan(leftOver.value);
  expect(flightHeight(flightTime(0.5, 30)).u).toBeGreaterThan(leftOver.value);
});

test.each([
  [0.04, 'even'],
  [0.06, 'uneven'],
] as const)('V19 (from memory): frames whose spacing varies by %d are %s', (share, kind) => {
  const times = Array.from({ length: 40 }, (_, i) => i / 30 + (i === 20 ? share / 30 : 0));
  expect(spacing(times, 'a film', () => 'a frame').kind).toBe(kind);
});

test('HB7: release height is take-off height of the centre of mass + rise so far + ball above it, within 2 cm', () => {
  const input = inventedTrial();
  const found = measureTrial(input);
  const release = found.measures.find(({ measure }) => measure === 'ball.releaseHeight')?.reading;
  const centre = (frame: number) => found.centreOfMass.find((one) => one.frame === frame)?.y ?? Number.NaN;
  const ball = input.tracks.find(({ point }) => point === 'ball')?.samples.find(([frame]) => frame === FRAMES.release);
  const t = (FRAMES.release - FRAMES.takeoff) / RATE;
  const rise = TAKEOFF.vy * t - (9.80665 * t * t) / 2;
  const sum = centre(FRAMES.takeoff) + rise + ((ball?.[2] ?? Number.NaN) - centre(FRAMES.release));
  if (release === undefined || !isKnown(release)) throw new Error('no release height');
  expect(Math.abs(release.value - sum)).toBeLessThan(0.02);
});

test.each([
  [80.6, 1],
  [35, 0],
  [8, 0],
])('HB8: a ball of %d m/s is taken for a unit error %d times (above 45 m/s: convention)', (speed, times) => {
  const said = evaluateRules(
    SHIPPED_RULES,
    [fact('ball.releaseSpeed', speed, { movement: 'handball-jump-throw', phase: 'release' })],
    [],
    ADULT_MAN,
  ).filter(({ ruleId, outcome }) => ruleId.endsWith('speed-is-a-unit-error') && outcome !== 'not-assessed');
  expect(said).toHaveLength(times);
});
