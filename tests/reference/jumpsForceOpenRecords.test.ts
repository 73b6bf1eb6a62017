import { expect, test } from 'vitest';
import { readForceCsv } from '../../main/exchange/forceCsv.ts';
import { analyseForceTrace } from '../../shared/kernel/jump/analyseForceTrace.ts';
import type { ForceJump, ForceTrace } from '../../shared/kernel/jump/forceTrace.ts';
import { describeOpenData, type OpenData } from '../support/openData.ts';

/** Answers computed with numpy and scipy, independent of this kernel; see expected.json of each folder. */
type Answers = Record<string, number> & { quiet_window_s: [number, number]; impulse_trustworthy?: boolean };

function analyse(data: OpenData, file: string, kind: ForceTrace['kind']) {
  const csv = readForceCsv(data.text(file), { columns: [], rateHz: null });
  return { csv, analysis: analyseForceTrace({ rateHz: csv.rateHz, plates: csv.plates, massKg: null, kind }) };
}

/** Tolerances as expected.json suggests them: times ±3 samples; heights ±0.010 m; power 2 %; mass 0.3 %. */
function expectTimes(jump: ForceJump, expected: Answers, rateHz: number) {
  const samples = (n: number) => n / rateHz + 1e-6;
  expect(Math.abs(jump.takeoff.value - (expected.takeoff_s as number))).toBeLessThanOrEqual(samples(3));
  expect(Math.abs(jump.landing.value - (expected.landing_s as number))).toBeLessThanOrEqual(samples(3));
  const slope = (9.80665 * (expected.flight_time_s as number)) / 4;
  const height = jump.jumpHeightFlightTime.value - (expected.jump_height_flight_time_m as number);
  expect(Math.abs(height)).toBeLessThanOrEqual(0.001 + slope * samples(2));
}

function expectImpulse(jump: ForceJump, expected: Answers, rateHz: number) {
  expect(Math.abs(jump.mass.value / (expected.body_mass_kg as number) - 1)).toBeLessThanOrEqual(0.003);
  expect(Math.abs(jump.onset.value - (expected.onset_s as number))).toBeLessThanOrEqual(3 / rateHz + 1e-6);
  const height = jump.jumpHeight.value - (expected.jump_height_impulse_m__from_onset as number);
  expect(Math.abs(height)).toBeLessThanOrEqual(0.01);
  expect(jump.peakForce.value).toBeCloseTo(expected.peak_force_N as number, 1);
  expect(Math.abs(jump.peakPower.value / (expected.peak_power_W__from_onset as number) - 1)).toBeLessThanOrEqual(0.02);
  if (jump.countermovementDepth) {
    const depth = jump.countermovementDepth.value - (expected.countermovement_depth_m__from_onset as number);
    expect(Math.abs(depth)).toBeLessThanOrEqual(0.01);
  }
}

describeOpenData('jump-force-cmj-sj-dj', 'Gidiel-Machado et al. 2025, two plates, 1000 Hz', (data) => {
  test('countermovement jump against numpy/scipy answers', () => {
    const { trials } = data.json('expected.json') as { trials: Record<string, Answers> };
    const expected = trials['cmj_dual_plate_1000hz.csv'] as Answers;
    const { csv, analysis } = analyse(data, 'cmj_dual_plate_1000hz.csv', 'countermovement');
    expect(csv.columns).toEqual(['fz_plate1_N', 'fz_plate2_N']);
    expect(csv.rateHz).toBeCloseTo(1000, 6);
    expect(analysis.jumps).toHaveLength(1);
    expectTimes(analysis, expected, 1000);
    expectImpulse(analysis, expected, 1000);
    expect(Math.abs(analysis.takeoffVelocity.value - 2.50685)).toBeLessThan(0.01);
    expect(Math.abs(analysis.rsiModified.value - (expected.rsi_modified_m_per_s as number))).toBeLessThan(0.01);
    expect(analysis.warnings).toEqual([]);
    expect(analysis.peakLandingForce.value).toBeCloseTo(expected.peak_landing_force_N as number, 2);
    // One sample of force at either end.
    const [one, two] = analysis.plates.map(({ impulse }) => impulse.value);
    expect(Math.abs((one ?? 0) - (expected.impulse_onset_to_takeoff_plate1_Ns as number))).toBeLessThan(1);
    expect(Math.abs((two ?? 0) - (expected.impulse_onset_to_takeoff_plate2_Ns as number))).toBeLessThan(1);
    // The authors' figure: lowest about −0.35 m, apex about +0.40 m above standing.
    expect(analysis.countermovementDepth?.value).toBeCloseTo(0.35, 1);
    expect(analysis.riseAboveStanding?.value).toBeCloseTo(0.4, 1);
    expect(analysis.phases?.pushOffDistance.value).toBeCloseTo(0.35 + 0.08, 1);
  });
  test('squat jump, integrated backward from the last second', () => {
    const { trials } = data.json('expected.json') as {
      trials: Record<string, { backward_integration: Answers; forward_integration_quiet_squat_hold: Answers }>;
    };
    const expected = trials['sj_dual_plate_1000hz.csv'];
    const { analysis } = analyse(data, 'sj_dual_plate_1000hz.csv', 'squat');
    const backward = expected?.backward_integration as Answers;
    expectTimes(analysis, backward, 1000);
    expect(Math.abs(analysis.mass.value / (backward.body_mass_kg as number) - 1)).toBeLessThanOrEqual(0.003);
    expect(Math.abs(analysis.jumpHeight.value - (backward.jump_height_backward_m as number))).toBeLessThanOrEqual(0.01);
    expect(Math.abs(analysis.takeoffVelocity.value - (backward.v_takeoff_backward_m_s as number))).toBeLessThan(0.01);
    const forward = expected?.forward_integration_quiet_squat_hold as Answers;
    expect(Math.abs(analysis.onset.value - (forward.onset_s as number))).toBeLessThanOrEqual(0.003 + 1e-6);
    expect(Math.abs(analysis.peakPower.value / (forward.peak_power_W__from_onset as number) - 1)).toBeLessThan(0.02);
    expect(analysis.countermovementDepth).toBeNull();
  });
});

describeOpenData('jump-force-single-plate', 'Duarte & Watanabe, notes on scientific computing, one plate', (data) => {
  const expected = () => (data.json('expected.json') as { trials: Record<string, Answers> }).trials;

  test('450 Hz, stepping on and off: weighed while standing, not on the empty plate', () => {
    const answers = expected()['jump1_450hz.csv'] as Answers;
    const { csv, analysis } = analyse(data, 'jump1_450hz.csv', 'countermovement');
    expect(csv.rateHz).toBeCloseTo(450, 3);
    expectTimes(analysis, answers, 450);
    expectImpulse(analysis, answers, 450);
    expect(analysis.isImpulseSound).toBe(true);
  });
  test('J9: 600 Hz with 0.18 s of quiet stance and an unzeroed plate: found, but warned about twice', () => {
    const answers = expected()['cmj_short_600hz.csv'] as Answers;
    const { csv, analysis } = analyse(data, 'cmj_short_600hz.csv', 'countermovement');
    // 1 µs rounding of the printed times over 2 s.
    expect(csv.rateHz).toBeCloseTo(600, 2);
    expectTimes(analysis, answers, 600);
    expect(Math.abs(analysis.mass.value / (answers.body_mass_kg as number) - 1)).toBeLessThanOrEqual(0.003);
    expect(Math.abs(analysis.jumpHeight.value - (answers.jump_height_impulse_m__from_onset as number))).toBeLessThan(
      0.01,
    );
    expect(analysis.isImpulseSound).toBe(false);
    expect(analysis.jumpHeight.u).toBeNull();
    expect(analysis.warnings.join(' ')).toMatch(/No still stance.*not zeroed/);
  });
});

describeOpenData(
  'jump-force-dual-plate-repeated',
  'Ba, Hong, Azam & Cheng 2022, three jumps in a row on two plates',
  (data) => {
    const files = ['p003', 'p007', 'p010', 'p013'].map((code) => `${code}_three_jumps_1000hz.csv`);
    test.each(files)(
      '%s: three jumps; impulse heights only where somebody stood still, warned about elsewhere',
      (file) => {
        const { trials } = data.json('expected.json') as { trials: Record<string, { jumps: Answers[] }> };
        const expected = trials[file]?.jumps ?? [];
        const { csv, analysis } = analyse(data, file, 'countermovement');
        expect(csv.columns).toEqual(['fz_right_N', 'fz_left_N']);
        expect(analysis.jumps).toHaveLength(expected.length);
        analysis.jumps.forEach((jump, k) => {
          const answers = expected[k] as Answers;
          expectTimes(jump, answers, 1000);
          expect(jump.isImpulseSound).toBe(answers.impulse_trustworthy);
          if (answers.impulse_trustworthy) expectImpulse(jump, answers, 1000);
          else {
            expect(jump.jumpHeight.u).toBeNull();
            expect(jump.warnings.join(' ')).toContain('No still stance');
          }
        });
      },
    );
  },
);
