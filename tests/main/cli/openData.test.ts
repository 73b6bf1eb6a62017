import { describe, expect, test } from 'vitest';
import { describeOpenData, type OpenData } from '../../support/openData.ts';
import { sameCutoff } from '../../support/sameCutoff.ts';
import { inProcess, valueOf } from './caseframe.ts';

// The commands on every file of the open data that they read, against the answers that general
// tools gave (expected.json of each folder, which states the tolerances).

type Answers = Record<string, number | boolean | number[] | string | undefined>;
type Json = Record<string, unknown>;

/** As one JSON document, which is what a program gets. */
const run = async (...words: string[]) => JSON.parse(JSON.stringify((await inProcess(...words)).json)) as Json;
const off = (json: Json, key: string, expected: unknown) => Math.abs(valueOf(json, key) - (expected as number));
const rootMeanSquare = (errors: readonly number[]) =>
  Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);

/** Times ±3 samples; flight-time height 1 mm and two samples of flight. */
function expectFlight(jump: Json, answers: Answers, rateHz: number) {
  const samples = (n: number) => n / rateHz + 1e-5;
  expect(off(jump, 'takeoff', answers['takeoff_s'])).toBeLessThanOrEqual(samples(3));
  expect(off(jump, 'landing', answers['landing_s'])).toBeLessThanOrEqual(samples(3));
  expect(off(jump, 'flightTime', answers['flight_time_s'])).toBeLessThanOrEqual(samples(3));
  const slope = (9.80665 * (answers['flight_time_s'] as number)) / 4;
  expect(off(jump, 'jumpHeightFlightTime', answers['jump_height_flight_time_m'])).toBeLessThanOrEqual(
    0.001 + slope * samples(2),
  );
}

/** Mass 0.3 %, impulse height ±0.010 m, peak force 0.1 N, power 2 %; what follows from them as far as they let it be off. */
function expectImpulse(jump: Json, answers: Answers, rateHz: number) {
  const share = (key: string, expected: unknown) => off(jump, key, expected) / (expected as number);
  expect(share('bodyWeight', answers['body_weight_N'])).toBeLessThanOrEqual(0.003);
  expect(share('mass', answers['body_mass_kg'])).toBeLessThanOrEqual(0.003);
  expect(off(jump, 'onset', answers['onset_s'])).toBeLessThanOrEqual(3 / rateHz + 1e-5);
  expect(off(jump, 'timeToTakeoff', answers['time_to_takeoff_s'])).toBeLessThanOrEqual(3 / rateHz + 1e-5);
  expect(off(jump, 'jumpHeight', answers['jump_height_impulse_m__from_onset'])).toBeLessThanOrEqual(0.01);
  expect(off(jump, 'takeoffVelocity', answers['v_takeoff_m_s__from_onset'])).toBeLessThanOrEqual(
    0.01 * (9.80665 / (answers['v_takeoff_m_s__from_onset'] as number)),
  );
  expect(off(jump, 'peakForce', answers['peak_force_N'])).toBeLessThanOrEqual(0.1);
  expect(share('peakPower', answers['peak_power_W__from_onset'])).toBeLessThanOrEqual(0.02);
  expect(off(jump, 'countermovementDepth', answers['countermovement_depth_m__from_onset'])).toBeLessThanOrEqual(0.01);
  const rise =
    (answers['com_disp_at_takeoff_m__from_onset'] as number) + (answers['jump_height_impulse_m__from_onset'] as number);
  expect(off(jump, 'riseAboveStanding', rise)).toBeLessThanOrEqual(0.02);
  expect(off(jump, 'rsiModified', answers['rsi_modified_m_per_s'])).toBeLessThanOrEqual(
    0.01 / (answers['time_to_takeoff_s'] as number) + 0.005,
  );
}

const trialsOf = (data: OpenData) => (data.json('expected.json') as { trials: Record<string, Answers> }).trials;

describe('jump force', async () => {
  describeOpenData('jump-force-cmj-sj-dj', 'Gidiel-Machado et al. 2025, two plates at 1000 Hz', (data) => {
    const twoPlates = ['--rate', '1000', '--columns', 'fz_plate1_N,fz_plate2_N'];
    test('countermovement jump', async () => {
      const json = await run('jump', 'force', data.path('cmj_dual_plate_1000hz.csv'), ...twoPlates, '--kind', 'cmj');
      const answers = trialsOf(data)['cmj_dual_plate_1000hz.csv'] as Answers;
      expectFlight(json, answers, 1000);
      expectImpulse(json, answers, 1000);
      expect(json['jumps']).toHaveLength(1);
      expect(json['warnings']).toEqual([]);
      expect(off(json, 'peakLandingForce', answers['peak_landing_force_N'])).toBeLessThanOrEqual(0.1);
      // One sample of force at either end.
      const plates = json['plates'] as Json[];
      const impulses = [answers['impulse_onset_to_takeoff_plate1_Ns'], answers['impulse_onset_to_takeoff_plate2_Ns']];
      plates.forEach((plate, i) => expect(off(plate, 'impulse', impulses[i])).toBeLessThan(1));
      const [a = 0, b = 0] = impulses as number[];
      expect(json['asymmetry']).toMatchObject({ formula: 'bilateral asymmetry index', positiveFor: 'fz_plate1_N' });
      expect(off(json, 'asymmetry.value', (a - b) / (a + b))).toBeLessThan(0.002);
      expect(Object.keys(json['phases'] as Json)).toEqual(['unweighting', 'braking', 'propulsion']);
    });
    test('squat jump, integrated backward', async () => {
      const json = await run('jump', 'force', data.path('sj_dual_plate_1000hz.csv'), ...twoPlates, '--kind', 'squat');
      const { backward_integration: answers } = trialsOf(data)['sj_dual_plate_1000hz.csv'] as unknown as Record<
        string,
        Answers
      >;
      expectFlight(json, answers as Answers, 1000);
      expect(off(json, 'mass', answers?.['body_mass_kg']) / 67.4).toBeLessThanOrEqual(0.003);
      expect(off(json, 'jumpHeight', answers?.['jump_height_backward_m'])).toBeLessThanOrEqual(0.01);
      expect(json['countermovementDepth']).toBeNull();
      expect(json['countermovementDepthReason']).toContain('countermovement');
    });
  });

  describeOpenData('jump-force-single-plate', 'Duarte & Watanabe, one plate', (data) => {
    test('450 Hz, stepping on and off', async () => {
      const json = await run('jump', 'force', data.path('jump1_450hz.csv'), '--columns', 'fz_N');
      expectFlight(json, trialsOf(data)['jump1_450hz.csv'] as Answers, 450);
      expectImpulse(json, trialsOf(data)['jump1_450hz.csv'] as Answers, 450);
    });
    test('J9: 600 Hz with hardly any quiet stance: flight time holds, the impulse is warned about', async () => {
      const json = await run('jump', 'force', data.path('cmj_short_600hz.csv'), '--rate', '600', '--columns', 'fz_N');
      const answers = trialsOf(data)['cmj_short_600hz.csv'] as Answers;
      expectFlight(json, answers, 600);
      expect(off(json, 'jumpHeight', answers['jump_height_impulse_m__from_onset'])).toBeLessThanOrEqual(0.01);
      expect(json['jumpHeight']).toMatchObject({ u: null });
      expect(json['jumpHeightUReason']).toEqual(expect.any(String));
      expect(String(json['warnings'])).toContain('No still stance');
    });
  });

  describeOpenData('jump-force-dual-plate-repeated', 'Ba, Hong, Azam & Cheng 2022, three jumps in a row', (data) => {
    test.each(['p003', 'p007', 'p010', 'p013'])(
      '%s: all jumps; impulse only where somebody stood still',
      async (code) => {
        const file = `${code}_three_jumps_1000hz.csv`;
        const { jumps: answers } = trialsOf(data)[file] as unknown as { jumps: Answers[] };
        const json = await run('jump', 'force', data.path(file), '--rate', '1000', '--columns', 'fz_right_N,fz_left_N');
        const jumps = json['jumps'] as Json[];
        expect(jumps).toHaveLength(answers.length);
        jumps.forEach((jump, k) => {
          expectFlight(jump, answers[k] as Answers, 1000);
          if (answers[k]?.['impulse_trustworthy'] === true) expectImpulse(jump, answers[k], 1000);
          else expect(String(jump['warnings'])).toContain('No still stance');
        });
      },
    );
  });
});

describe('flight fit', async () => {
  describeOpenData('projectile-ball-toss', 'tossed ball at 30 Hz (Duarte & Watanabe), fitted by NumPy', (data) => {
    test('plain least squares, 1e-4 relative; the gravity found is asked about in words', async () => {
      const json = await run(
        'flight',
        'fit',
        data.path('ball_toss_30hz.csv'),
        '--columns',
        'time_s,x_m,y_m',
        '--drag',
        'off',
      );
      const answers = trialsOf(data)['ball_toss_30hz.csv'] as Answers;
      for (const [key, expected] of [
        ['releaseSpeed', answers['speed0_m_s']],
        ['releaseAngle', answers['release_angle_deg']],
        ['gravity', answers['g_estimate_m_s2']],
      ] as const) {
        expect(off(json, key, expected) / (expected as number)).toBeLessThan(1e-4);
      }
      expect(['fine', 'questioned', 'cannot tell']).toContain(json['verdict']);
      expect(json['reasons']).toHaveLength(1);
    });
  });
});

const errorOf = (json: Json, truth: readonly number[]) =>
  rootMeanSquare((json['values'] as (number | null)[]).flatMap((x, i) => (x === null ? [] : x - (truth[i] ?? 0))));

describe('smooth', async () => {
  describeOpenData(
    'smoothing-jump-com',
    'centre of mass of a jump with noise, against a force plate (SciPy)',
    (data) => {
      const table = (name: string) => {
        const [head = '', ...rows] = data.text('cmj_com_100hz.csv').trim().split('\n');
        const column = head.split(',').indexOf(name);
        return rows.map((row) => Number(row.split(',')[column]));
      };
      const smooth = (cutoff: string, derivative: number) =>
        run(
          'smooth',
          data.path('cmj_com_100hz.csv'),
          '--columns',
          'time_s,com_height_noisy_m',
          '--cutoff',
          cutoff,
          '--derivative',
          String(derivative),
        );
      interface Row {
        fc_hz: number;
        accel_rmse_corrected: number;
        velocity_rmse_corrected: number;
        residual_rms_mm_corrected: number;
      }
      const expected = () => data.json('expected.json') as { fs_hz: number; table: Row[] };

      test('RMS errors of velocity and acceleration within 2 % for cut-offs from 6 Hz, never more below', async () => {
        for (const row of expected().table) {
          // The reference divides the cut-off by 0.802 before the tangent; the same filter is asked for here.
          const cutoff = String(sameCutoff(row.fc_hz, expected().fs_hz));
          const a = errorOf(await smooth(cutoff, 2), table('acceleration_true_m_s2')) / row.accel_rmse_corrected;
          const v = errorOf(await smooth(cutoff, 1), table('velocity_true_m_s')) / row.velocity_rmse_corrected;
          expect(Math.max(a, v)).toBeLessThan(1.02);
          // Below 6 Hz the nine samples of padding bend the ends of the reference, and ours come out nearer the truth.
          if (row.fc_hz >= 6) expect(Math.min(a, v)).toBeGreaterThan(0.98);
        }
      });
      test('at the best cut-off, 6 Hz as stated, all three within 2 % without any translation', async () => {
        const row = expected().table.find(({ fc_hz }) => fc_hz === 6) as Row;
        const errors = await Promise.all([0, 1, 2].map((order) => smooth('6', order)));
        const [plain, velocity, acceleration] = errors as [Json, Json, Json];
        expect(Math.abs((1000 * (plain['residual'] as number)) / row.residual_rms_mm_corrected - 1)).toBeLessThan(0.02);
        expect(Math.abs(errorOf(velocity, table('velocity_true_m_s')) / row.velocity_rmse_corrected - 1)).toBeLessThan(
          0.02,
        );
        expect(
          Math.abs(errorOf(acceleration, table('acceleration_true_m_s2')) / row.accel_rmse_corrected - 1),
        ).toBeLessThan(0.02);
      });
      test('auto suggests a cut-off near the best, and returns what its plot needs', async () => {
        const json = await smooth('auto', 2);
        expect(json['cutoffFrom']).toBe('residual analysis');
        // Residual analysis picks too low rather than too high (Yu et al. 1999); 6 Hz is the best here.
        expect(json['cutoffHz']).toBeGreaterThan(4);
        expect(json['cutoffHz']).toBeLessThan(7);
        const { curve, line } = json['residualAnalysis'] as { curve: { cutoffHz: number }[]; line: object };
        expect(curve.length).toBeGreaterThan(50);
        expect(line).toMatchObject({ noise: expect.any(Number) as number, slope: expect.any(Number) as number });
      });
    },
  );

  describeOpenData('gait-winter', 'Winter 2009, table A.1 (open copy), filtered by SciPy at 6 Hz', (data) => {
    interface Marker {
      sample_index_0based: number[];
      [key: string]: number[];
    }
    const expected = () =>
      data.json('expected.json') as { fs_hz: number; fc_hz_used: number; markers: Record<string, Marker> };
    test('every marker: filtered values to 1e-4, from times printed to a millisecond only', async () => {
      const { fs_hz: rate, fc_hz_used: cutoff, markers } = expected();
      for (const [marker, want] of Object.entries(markers)) {
        for (const axis of ['x', 'y'] as const) {
          const json = await run(
            'smooth',
            data.path('winter_raw_coordinates.csv'),
            '--columns',
            `time_s,${marker}_${axis}_cm`,
            '--cutoff',
            String(sameCutoff(cutoff, rate)),
          );
          expect(String(json['warnings'])).toContain('0.001 s');
          const values = json['values'] as number[];
          want.sample_index_0based.forEach((sample, i) => {
            if (sample < 10 || sample >= values.length - 10) return;
            const metres = (values[sample] as number) / 100;
            // 1e-4 as stated, and as much again for the rate that rounded times leave open by 0.03 %.
            expect(Math.abs(metres - (want[`${axis}_filtered_m`]?.[i] ?? 0))).toBeLessThan(2e-4);
          });
        }
      }
    });
  });
});
