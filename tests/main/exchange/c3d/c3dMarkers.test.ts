import fs from 'node:fs';
import { describe, expect, test } from 'vitest';
import { c3dMarkers, markerTrial } from '../../../../main/exchange/c3d/c3dMarkers.ts';
import { readC3d } from '../../../../main/exchange/c3d/readC3d.ts';
import type { MarkerReading } from '../../../../shared/exchange/markerReading.ts';
import { proposeEvents } from '../../../../shared/kernel/trial/proposeEvents.ts';
import { measureTrial } from '../../../../shared/kernel/trial/measureTrial.ts';
import { scene, type TrialInput } from '../../../../shared/kernel/trial/scene.ts';
import { trialCurve } from '../../../../shared/kernel/trial/trialCurves.ts';
import { movementById } from '../../../../shared/knowledge/movements/index.ts';
import { EXAMPLES, id } from '../../../conformance/examples.ts';
import { isKnown } from '../../../../shared/quantity.ts';
import { describeOpenData } from '../../../support/openData.ts';
import { type MadeC3d, writeC3d } from './writeC3d.ts';

const LABELS = ['LSHO', 'LHEE', 'RKNE', 'RKNE', 'WAND'];

/** Five markers, of which the fourth is seen or (−1) not. */
const frame = (x: number, fourth: number) =>
  [
    [x, 10, 150, 0],
    [x + 5, 12, 2, 0],
    [x, 30, 50, 0],
    [x, 40, 52, fourth],
    [0, 0, 300, 0],
  ].flat();

/** Five markers, in centimetres, walking along −x with z up; the second knee marker is hidden in the second of three frames. */
function walker(more: Partial<MadeC3d> = {}, unit = 'cm'): Uint8Array {
  return writeC3d({
    order: 'intel',
    isReal: true,
    points: 5,
    channels: 0,
    samplesPerFrame: 0,
    scale: 1,
    frames: [frame(0, 0), frame(-100, -1), frame(-200, 0)],
    parameters: [
      ['POINT', 'RATE', 'real', [], [100]],
      ['POINT', 'LABELS', 'text', [4, 5], LABELS],
      ['POINT', 'UNITS', 'text', [2, 1], [unit]],
    ],
    ...more,
  });
}

describe('a file written by the public description', () => {
  const file = readC3d(walker());
  const { suggested } = c3dMarkers(file);

  test('closed form: up is from heel to shoulder, forward the way it walks, centimetres are metres, a middle needs both', () => {
    expect(suggested).toEqual({
      points: ['shoulder-left', 'heel-left', 'knee-right', 'knee-right', null],
      forward: '-x',
      up: '+z',
      unit: 'cm',
    });
    const { tracks, words } = markerTrial(file, { ...suggested, points: [...suggested.points.slice(0, 4), 'wand'] });
    const samples = Object.fromEntries(tracks.map((track) => [track.point, track.samples]));
    expect(samples['shoulder-left']).toEqual([
      [0, 0, 1.5],
      [1, 1, 1.5],
      [2, 2, 1.5],
    ]);
    expect(samples['heel-left']).toEqual([
      [0, -0.05, 0.02],
      [1, 0.95, 0.02],
      [2, 1.95, 0.02],
    ]);
    expect(samples['knee-right']).toEqual([
      [0, 0, 0.51],
      [2, 2, 0.51],
    ]);
    expect(samples['wand']?.map(([, x, y]) => [x, y])).toEqual([
      [0, 3],
      [0, 3],
      [0, 3],
    ]);
    expect(words).toContain('Knee right is the middle of RKNE and RKNE.'.replace('Knee right', 'Knee, right'));
    expect(words).toContain('Knee, right is not seen in 1 of 3 frames.');
    expect(words[0]).toContain('what is along y is left out');
    expect(words.join(' ')).toContain('The lowest point is 0.02 m above');
  });

  test('closed form: what is across the plane is said: 1 m aside, a part straight at the camera stands 90° out', () => {
    const aside = readC3d(
      walker({
        frames: [0, 1].map((n) => [0, 0, 50, 0, 0, 40 + 100 * n, 50, 0, ...Array.from({ length: 12 }, () => 0)]),
        parameters: [
          ['POINT', 'RATE', 'real', [], [100]],
          ['POINT', 'LABELS', 'text', [4, 5], ['RKNE', 'RANK', 'a', 'b', 'c']],
          ['POINT', 'UNITS', 'text', [1, 1], ['m']],
        ],
      }),
    );
    const reading: MarkerReading = {
      points: ['knee-right', 'ankle-right', null, null, null],
      forward: '+x',
      up: '+z',
      unit: 'cm',
    };
    const words = markerTrial(aside, reading).words.join(' ');
    expect(words).toContain('0.00 m along the plane, 0.00 m up and down in it, and 0.50 m across it');
    expect(words).toContain('right shank, by up to 90°');
  });

  test('without a unit, without a point, with an answer for another file: refused with what is needed', () => {
    expect(c3dMarkers(readC3d(walker({}, '??'))).suggested.unit).toBeNull();
    expect(() => markerTrial(file, { ...suggested, unit: null })).toThrow(/needs the unit of length/);
    expect(() => markerTrial(file, { ...suggested, points: LABELS.map(() => null) })).toThrow(/at least one marker/);
    expect(() =>
      markerTrial(
        readC3d(walker({ scale: 1, frames: [[1e6, 0, 0, 0, ...Array.from({ length: 16 }, () => 0)]] })),
        suggested,
      ),
    ).toThrow(/within 1000 m of the file’s zero, got 1.00e\+4 m for shoulder, left/);
    expect(() => markerTrial(file, { ...suggested, points: [null] })).toThrow(/an answer for each of 5 markers, got 1/);
    const hidden = readC3d(walker({ frames: [[0, 0, 0, -1, 0, 0, 0, -1, 0, 0, 0, -1, 0, 0, 0, -1, 1, 1, 1, 0]] }));
    expect(() => markerTrial(hidden, suggested)).toThrow(/not one was ever seen/);
    expect(() =>
      c3dMarkers(readC3d(walker({ points: 0, frames: [[]], parameters: [['POINT', 'RATE', 'real', [], [100]]] }))),
    ).toThrow(/needs markers; there are none/);
  });
});

interface Expected {
  readonly files: Record<
    string,
    {
      readonly units: string;
      readonly spot_values: readonly { point_index: number; frame_index: number; xyz: readonly number[] | null }[];
    }
  >;
  readonly extra: Record<string, number>;
}

describeOpenData('c3d-samples', 'open C3D samples, places of an independent numpy reader', (data) => {
  const { files, extra } = data.json('expected.json') as Expected;
  const opened = (name: string) => readC3d(fs.readFileSync(data.path(name)));
  const inMetres = Object.entries(files ?? {}).filter(([, { units }]) => units === 'mm');

  test.each(inMetres)(
    '%s: each marker as a point of its own lies where it should, forward and up, in metres',
    (name, expected) => {
      const file = opened(name);
      const { suggested } = c3dMarkers(file);
      const reading = { ...suggested, points: file.pointLabels.map((_, p) => `marker ${p}`) };
      const tracks = new Map(markerTrial(file, reading).tracks.map((track) => [track.point, track.samples]));
      const step = file.storedAs === 'integer' ? Math.abs(file.parameters.get('POINT:SCALE')?.numbers[0] ?? 0) / 2 : 0;
      for (const { point_index, frame_index, xyz } of expected.spot_values) {
        const [, x, y] = tracks.get(`marker ${point_index}`)?.find(([frame]) => frame === frame_index) ?? [];
        if (xyz === null) expect([x, y]).toEqual([undefined, undefined]);
        else {
          const along = (axis: string) =>
            (axis.startsWith('-') ? -1 : 1) * (xyz['xyz'.indexOf(axis.slice(1))] ?? Number.NaN);
          expect(Math.abs(1000 * (x ?? Number.NaN) - along(reading.forward))).toBeLessThanOrEqual(0.011 + step);
          expect(Math.abs(1000 * (y ?? Number.NaN) - along(reading.up))).toBeLessThanOrEqual(0.011 + step);
        }
      }
    },
  );

  test('every place marked invalid: refused in words', () => {
    expect(() => c3dMarkers(opened('basketball_all_points_invalid_real_le.c3d'))).toThrow(
      /every place of its 22\smarkers in 34\sframes as not seen/,
    );
  });

  test('the jump: points by their labels; the sacrum rises as numpy has it; the body rises as much and falls as all things do', () => {
    const file = opened('jump_51markers_2plates_type4_real_le.c3d');
    const { suggested } = c3dMarkers(file);
    expect([suggested.forward, suggested.up, suggested.unit]).toEqual(['+y', '+z', 'mm']);
    const points = suggested.points.map((point, p) => (p === extra['sacrum_marker_VSAC_index'] ? 'sacrum' : point));
    const { tracks } = markerTrial(file, { ...suggested, points });
    const movement = movementById('countermovement-jump');
    if (movement === null) return expect.fail('the movement');
    const trial = {
      ...EXAMPLES.movementTrial,
      captureRateHz: file.pointRateHz,
      frameTimesS: null,
      calibration: { kind: 'metres' as const, pointUM: 0.002 },
    };
    const input: TrialInput = {
      trial,
      tracks: tracks.map((track, i) => ({ ...EXAMPLES.landmarkTrack, ...track, id: id(7000 + i), origin: 'imported' })),
      events: [],
      movement,
      massKg: null,
      statureM: null,
      referenceSex: null,
    };
    const view = scene(input);
    if ('unknown' in view) return expect.fail(view.unknown);
    const sacrum = trialCurve(view, 'height:sacrum')?.raw ?? [];
    expect(sacrum[0]?.[1]).toBeCloseTo((extra['sacrum_z_first_frame_mm'] as number) / 1000, 5);
    expect(Math.max(...sacrum.map(([, y]) => y))).toBeCloseTo((extra['sacrum_z_max_mm'] as number) / 1000, 5);
    // Off the plates and on again as they say: in between the body falls as everything does.
    const events = (['take-off', 'landing'] as const).map((event, i) => ({
      ...EXAMPLES.trialEvent,
      id: id(7100 + i),
      event,
      timeS: extra[event === 'take-off' ? 'takeoff_s' : 'landing_s'] as number,
      uS: 0.003,
    }));
    const { measures } = measureTrial({ ...input, events });
    const rise = measures.find(({ measure }) => measure === 'com.riseInSkill')?.reading;
    if (rise === undefined || !isKnown(rise)) return expect.fail(JSON.stringify(rise));
    expect(Math.abs(rise.value - (extra['sacrum_rise_takeoff_to_apex_m'] as number))).toBeLessThan(2 * (rise.u ?? 0));
    // Markers sit on the foot, not under it, and rise while the toes still push: proposed within twice what is said of it.
    for (const { event, timeS } of events) {
      const proposed = proposeEvents(input).find((one) => one.event === event);
      const off = Math.abs((proposed?.timeS ?? Number.NaN) - timeS);
      expect([event, off, off <= 2 * (proposed?.uS ?? 0)]).toEqual([event, off, true]);
      expect(proposed?.because).toMatch(/the centre of mass falls with (9|10)\.\d m\/s²/);
    }
    return undefined;
  });
});
