import fs from 'node:fs';
import { describe, expect, test } from 'vitest';
import { c3dForce } from '../../../../main/exchange/c3d/c3dForce.ts';
import { c3dNumbers } from '../../../../main/exchange/c3d/c3dNumbers.ts';
import { c3dPlates } from '../../../../main/exchange/c3d/c3dPlates.ts';
import { readC3d } from '../../../../main/exchange/c3d/readC3d.ts';
import { DomainError } from '../../../../shared/errors.ts';
import { analyseForceTrace } from '../../../../shared/kernel/jump/analyseForceTrace.ts';
import { describeOpenData } from '../../../support/openData.ts';
import { inProcess } from '../../cli/caseframe.ts';
import { type MadeC3d, writeC3d } from './writeC3d.ts';

interface Expected {
  readonly byte_order: string;
  readonly stored_as: string;
  readonly points: number;
  readonly frames: number;
  readonly first_frame: number;
  readonly last_frame: number;
  readonly point_rate_hz: number;
  readonly units: string;
  readonly analog_channels: number;
  readonly analog_samples_per_frame: number;
  readonly force_plate_types: readonly number[];
  readonly labels_first_12: readonly string[];
  readonly plate_corners_mm?: readonly (readonly (readonly number[])[])[];
  readonly invalid_point_samples: number;
  readonly valid_point_samples: number;
  readonly spot_values: readonly { point_index: number; frame_index: number; xyz: readonly number[] | null }[];
  readonly analog_stats?: readonly { index: number; label: string; min: number; max: number; mean: number }[];
}

/** Relative, and absolute for readings of nought (tolerances in expected.json). */
const near = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-4 * Math.abs(b) + 1e-5);
const of = (made: MadeC3d) => Array.from(c3dPlates(readC3d(writeC3d(made)))[0]?.verticalN ?? []).slice(0, 2);
const matrix = (columns: number) => Array.from({ length: 6 * columns }, (_, i) => (i % 6 === 2 ? 10 : 0));

const ORDERS = { 'Intel little-endian': 'intel', 'DEC VAX': 'dec', 'SGI/MIPS big-endian': 'mips' } as const;

describeOpenData('c3d-samples', 'open C3D samples, counts and numbers of an independent numpy reader', (data) => {
  const { files, extra } = data.json('expected.json') as {
    files: Record<string, Expected>;
    extra: Record<string, number>;
  };
  const bytes = (name: string) => fs.readFileSync(data.path(name));

  test.each(Object.entries(files ?? {}))('%s', async (name, expected) => {
    const file = readC3d(bytes(name));
    expect(file).toMatchObject({
      byteOrder: ORDERS[expected.byte_order as keyof typeof ORDERS],
      storedAs: expected.stored_as,
      frames: expected.frames,
      firstFrame: expected.first_frame,
      units: expected.units,
    });
    expect(file.pointRateHz).toBeCloseTo(expected.point_rate_hz, 3);
    expect(file.pointLabels).toHaveLength(expected.points);
    expect(file.pointLabels.slice(0, 12)).toEqual(expected.labels_first_12);
    expect(file.analog).toHaveLength(expected.analog_channels);
    expect(file.samplesPerFrame).toBe(expected.analog_samples_per_frame);

    // Integer files are only as fine as their steps (tolerances in expected.json).
    const step = file.storedAs === 'integer' ? Math.abs(file.parameters.get('POINT:SCALE')?.numbers[0] ?? 0) / 2 : 0;
    for (const { point_index, frame_index, xyz } of expected.spot_values) {
      const found = file.point(frame_index, point_index);
      if (xyz === null) expect(found).toBeNull();
      else
        xyz.forEach((one, axis) =>
          expect(Math.abs((found?.[axis] ?? Number.NaN) - one)).toBeLessThanOrEqual(0.01 + step),
        );
    }
    for (const { index, label, min, max, mean } of expected.analog_stats ?? []) {
      const samples = Array.from(file.analog[index] ?? []);
      expect(file.analogLabels[index]).toBe(label);
      near(Math.min(...samples), min);
      near(Math.max(...samples), max);
      near(samples.reduce((sum, one) => sum + one, 0) / samples.length, mean);
    }
    const plates = c3dPlates(file);
    expect(plates.map(({ type }) => type)).toEqual(expected.force_plate_types);
    (expected.plate_corners_mm ?? []).forEach((corners, p) => {
      corners.flat().forEach((one, i) => expect(plates[p]?.corners.flat()[i]).toBeCloseTo(one, 3));
    });

    const { json } = await inProcess('c3d', 'info', data.path(name));
    expect(json).toMatchObject({
      lastFrame: expected.last_frame,
      validPointSamples: expected.valid_point_samples,
      invalidPointSamples: expected.invalid_point_samples,
    });
  });

  test('law: one recording in three byte orders and two kinds of number reads alike', () => {
    const [le, vax, be] = ['six_variants_int_le', 'six_variants_int_vax', 'six_variants_real_be'].map((name) =>
      readC3d(bytes(`${name}.c3d`)),
    );
    if (le === undefined || vax === undefined || be === undefined) return expect.fail('three files');
    for (let frame = 0; frame < le.frames; frame += 7) {
      for (let p = 0; p < le.pointLabels.length; p++) {
        expect(vax.point(frame, p)).toEqual(le.point(frame, p));
        const [a, b] = [le.point(frame, p), be.point(frame, p)];
        expect(a === null).toBe(b === null);
        a?.forEach((one, axis) => expect(Math.abs(one - (b?.[axis] ?? Number.NaN))).toBeLessThan(0.1));
      }
    }
    expect(vax.analog).toEqual(le.analog);
  });

  test('the jump: flight and peak force of numpy; as no one stands still, the impulse is not trusted', () => {
    const { rateHz, plates } = c3dForce(bytes('jump_51markers_2plates_type4_real_le.c3d'), {
      columns: [],
      rateHz: null,
    });
    expect(rateHz).toBe(extra['analog_rate_hz']);
    const sum = plates[0]?.map((force, k) => force + (plates[1]?.[k] ?? 0)) ?? [];
    const takeoff = Math.round((extra['takeoff_s'] as number) * rateHz);
    expect(Math.max(...sum.slice(0, takeoff))).toBeCloseTo(extra['peak_force_before_takeoff_N'] as number, 1);
    expect(Math.max(...sum.slice(takeoff))).toBeCloseTo(extra['peak_landing_force_N'] as number, 1);
    const jump = analyseForceTrace({ rateHz, plates, massKg: null, kind: 'countermovement' });
    // The reference takes 60 N, as the plates are not zeroed; ours lies just over what they read in flight: within 10 ms.
    expect(Math.abs(jump.takeoff.value - (extra['takeoff_s'] as number))).toBeLessThanOrEqual(0.01);
    expect(Math.abs(jump.landing.value - (extra['landing_s'] as number))).toBeLessThanOrEqual(0.01);
    expect(jump.isImpulseSound).toBe(false);
    expect(jump.jumpHeight.u).toBeNull();
  });
});

test('common practice, from memory: the DEC real 4080 0000 is 1, C080 0000 is -1, 0 is 0', () => {
  const numbers = c3dNumbers(Uint8Array.from([0x80, 0x40, 0, 0, 0x80, 0xc0, 0, 0, 0, 0, 0, 0]), 'dec');
  expect([0, 4, 8].map(numbers.real)).toEqual([1, -1, 0]);
});

const plate = (type: number, channels: number, extra: MadeC3d['parameters'] = []): MadeC3d => ({
  order: 'intel',
  isReal: true,
  points: 1,
  channels,
  samplesPerFrame: 2,
  scale: 1,
  frames: [
    [1, 2, 3, 0, ...Array.from({ length: 2 * channels }, (_, i) => -(i + 1))],
    [1, 2, 3, -1, ...Array.from({ length: 2 * channels }, (_, i) => -(i + 1))],
  ],
  parameters: [
    ['POINT', 'RATE', 'real', [], [100]],
    ['POINT', 'LABELS', 'text', [4, 1], ['HEAD']],
    ['ANALOG', 'SCALE', 'real', [channels], Array.from({ length: channels }, () => 1)],
    ['FORCE_PLATFORM', 'USED', 'word', [], [1]],
    ['FORCE_PLATFORM', 'TYPE', 'word', [1], [type]],
    ['FORCE_PLATFORM', 'CHANNEL', 'word', [channels, 1], Array.from({ length: channels }, (_, i) => i + 1)],
    ...extra,
  ],
});

describe('what the open samples do not hold, in files written by the public description', () => {
  test.each([
    ['intel', true],
    ['intel', false],
    ['dec', true],
    ['dec', false],
    ['mips', true],
    ['mips', false],
  ] as const)('%s, real: %s', (order, isReal) => {
    const file = readC3d(writeC3d({ ...plate(2, 6), order, isReal, scale: isReal ? 1 : 0.5 }));
    const half = isReal ? 1 : 0.5;
    expect(file.point(0, 0)).toEqual([1 * half, 2 * half, 3 * half]);
    expect(file.point(1, 0)).toBeNull();
    expect(Array.from(file.analog[2] ?? [])).toEqual([-3, -9, -3, -9]);
  });

  test('the vertical force of every type of plate, up positive', () => {
    expect(of(plate(1, 6))).toEqual([3, 9]);
    expect(of(plate(2, 6))).toEqual([3, 9]);
    // Four sensors, the fifth channel to the eighth: 5 + 6 + 7 + 8 and 13 + 14 + 15 + 16.
    expect(of(plate(3, 8))).toEqual([26, 58]);
    expect(of(plate(4, 6, [['FORCE_PLATFORM', 'CAL_MATRIX', 'real', [6, 6, 1], matrix(6)]]))).toEqual([210, 570]);
    expect(of(plate(5, 8, [['FORCE_PLATFORM', 'CAL_MATRIX', 'real', [6, 8, 1], matrix(8)]]))).toEqual([360, 1000]);
  });

  test.each([
    ['type 4 without its matrix', plate(4, 6), /calibration matrix is not/],
    ['a type nobody has heard of', plate(9, 6), /type 9/],
    ['channels in volts', plate(2, 6, [['ANALOG', 'UNITS', 'text', [1, 6], ['V', 'V', 'V', 'V', 'V', 'V']]]), /in V/],
  ])('%s: no force, and why', (_what, made, reason) => {
    const [found] = c3dPlates(readC3d(writeC3d(made)));
    expect(found?.verticalN).toBeNull();
    expect(found?.reason).toMatch(reason);
  });

  test('unsigned samples, and the mean of a stretch without load taken off', () => {
    const unsigned = plate(2, 6, [
      ['ANALOG', 'FORMAT', 'text', [8], ['UNSIGNED']],
      ['ANALOG', 'OFFSET', 'word', [6], [32_768, 32_768, 32_768, 32_768, 32_768, 32_768]],
    ]);
    const file = readC3d(
      writeC3d({ ...unsigned, isReal: false, frames: [[0, 0, 0, 0, ...Array.from({ length: 12 }, () => 40_000)]] }),
    );
    expect(file.analog[0]?.[0]).toBe(40_000 - 32_768);
    const still = plate(2, 6, [['FORCE_PLATFORM', 'ZERO', 'word', [2], [1, 2]]]);
    expect(
      Array.from(c3dPlates(readC3d(writeC3d(still)))[0]?.verticalN ?? []).reduce((sum, one) => sum + one, 0),
    ).toBeCloseTo(0, 9);
  });

  test('a text renamed .c3d, a file cut off, a byte order nobody has: refused with what was needed', () => {
    const whole = writeC3d(plate(2, 6));
    expect(() => readC3d(new TextEncoder().encode('time,fz\n'.repeat(200)))).toThrow(/needs a C3D file/);
    expect(() => readC3d(whole.subarray(0, whole.length - 8))).toThrow(/cut off or damaged/);
    expect(() => readC3d(Uint8Array.from(whole, (byte, at) => (at === 515 ? 99 : byte)))).toThrow(/byte order/);
  });
});

test('fuzz: a damaged C3D is read or refused, and never anything else (more by FUZZ)', () => {
  const runs = Number(process.env['FUZZ'] ?? 10_000);
  const whole = writeC3d(
    plate(4, 6, [['FORCE_PLATFORM', 'CAL_MATRIX', 'real', [6, 6, 1], Array.from({ length: 36 }, () => 1)]]),
  );
  let seed = 20_261_125;
  // Park & Miller's generator: the same files every time.
  const below = (most: number) => {
    seed = (seed * 48_271) % 2_147_483_647;
    return seed % most;
  };
  let refused = 0;
  for (let run = 0; run < runs; run++) {
    const bytes = whole.slice(0, below(4) === 0 ? below(whole.length) : whole.length);
    for (let n = below(12); n >= 0; n--) bytes[below(Math.max(1, bytes.length))] = below(256);
    try {
      const file = readC3d(bytes);
      c3dPlates(file);
      file.point(0, 0);
    } catch (thrown) {
      if (!(thrown instanceof DomainError)) throw thrown;
      refused++;
    }
  }
  expect(refused).toBeGreaterThan(runs / 50);
});
