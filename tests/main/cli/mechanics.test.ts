import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { jumpTraceCsv } from '../../../main/demo/jumpTrace.ts';
import { randomSource } from '../../../main/demo/randomSource.ts';
import { advance, launch } from '../../../shared/kernel/flight/path.ts';
import { caseframe, valueOf } from './caseframe.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
const write = (name: string, text: string) => {
  const file = path.join(folder, name);
  fs.writeFileSync(file, text);
  return file;
};
const SHOT = '--speed 7.1973 --angle 52 --height 2.1 --to-distance 4.225 --to-height 3.05';
const HANDBALL = '--speed 22 --angle -3 --height 2.2 --to-distance 7 --to-height 1.3354';
const flight = (options: string) => caseframe('flight', '--json', ...options.split(' '));
afterAll(() => fs.rmSync(folder, { recursive: true }));

describe('jump time', () => {
  test('3rd CGPM 1901 standard gravity: 1 s of flight is 1.22583125 m, as one JSON document', () => {
    const { code, json, err } = caseframe('jump', 'time', '1', '--json');
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(json['jumpHeight']).toEqual({ value: expect.closeTo(1.22583125, 9) as number, unit: 'm', u: null });
    expect(json['jumpHeightUReason']).toContain('resolution');
  });

  test('law of a rectangular half-frame at both ends: u of the time is one frame over √6', () => {
    const { json } = caseframe('jump', 'time', '0.5', '--fps', '240', '--json');
    expect((json['flightTime'] as { u: number }).u).toBeCloseTo(1 / (240 * Math.sqrt(6)), 12);
  });

  test('an impossible time is bad input, a word that is no number is usage', () => {
    expect(caseframe('jump', 'time', '-1')).toMatchObject({ code: 3, out: '' });
    const wrong = caseframe('jump', 'time', '0,5', '--json');
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('decimal sign');
    expect(wrong.json['error']).toMatchObject({ code: 'usage' });
  });
});

describe('jump force', () => {
  const invented = { massKg: 84, takeoffVelocityMPerS: 2.6, depthM: 0.3, leftShare: 0.52 };
  const trace = write('jump.csv', jumpTraceCsv(invented, randomSource(3)));

  test('law h = v²/(2g): an invented record gives back the mass and velocity it was made with, within 2 u', () => {
    const { code, json } = caseframe(
      'jump',
      'force',
      trace,
      '--rate',
      '1000',
      '--columns',
      'fz_left_n,fz_right_n',
      '--json',
    );
    expect(code).toBe(0);
    const isWithin = (key: string, truth: number) => {
      const { value, u } = json[key] as { value: number; u: number };
      expect(Math.abs(value - truth), key).toBeLessThan(2 * u);
    };
    isWithin('mass', 84);
    isWithin('takeoffVelocity', 2.6);
    isWithin('jumpHeight', 2.6 ** 2 / (2 * 9.80665));
    isWithin('countermovementDepth', 0.3);
    expect(json['jumps']).toHaveLength(1);
    expect(json['warnings']).toEqual([]);
  });

  test('a file without force columns, and one that is not there, are bad input and say so', () => {
    const wrong = caseframe('jump', 'force', write('wrong.csv', 'time,angle\n0,1\n0.1,2\n'), '--json');
    expect(wrong.code).toBe(3);
    expect(wrong.err).toContain('angle');
    expect(wrong.json['error']).toMatchObject({ code: 'input-missing' });
    expect(caseframe('jump', 'force', path.join(folder, 'none.csv')).code).toBe(3);
  });

  test('a kind that does not exist is usage', () => {
    expect(caseframe('jump', 'force', trace, '--kind', 'leap')).toMatchObject({ code: 2, out: '' });
  });
});

describe('flight', () => {
  test('constant acceleration (Brancazio 1981), computed apart: least speed 7.1961 m/s at 51.336°, entry 39.701°, 0.9535 s', () => {
    const { code, json } = flight(SHOT);
    expect(code).toBe(0);
    expect(valueOf(json, 'leastSpeed')).toBeCloseTo(7.1961, 4);
    expect(valueOf(json, 'leastSpeedAngle')).toBeCloseTo(51.336, 3);
    expect(valueOf(json, 'entryAngle')).toBeCloseTo(39.701, 2);
    expect(valueOf(json, 'timeOfFlight')).toBeCloseTo(0.9535, 4);
    // The speed is rounded to 0.1 mm/s, which moves the apex by 0.02 mm.
    expect(valueOf(json, 'apexHeight')).toBeCloseTo(3.7401, 3);
    expect(Math.abs(valueOf(json, 'missDistance'))).toBeLessThan(1e-3);
    expect(json['margin']).toMatchObject({ slower: null, slowerReason: expect.any(String) as string });
  });

  test('constant acceleration, computed apart: 22 m/s at −3° from 2.20 m is 1.3354 m high after 7 m; through air it is lower', () => {
    expect(valueOf(flight(HANDBALL).json, 'missHeight')).toBeCloseTo(0, 4);
    expect(valueOf(flight(`${HANDBALL} --ball handball`).json, 'missHeight')).toBeLessThan(-0.01);
  });

  test('a release that still rises at the target has no speed to score, and the reason stands beside it', () => {
    const { code, json } = caseframe(
      'flight',
      '--speed',
      '5.1916',
      '--angle',
      '52',
      '--height',
      '2.2',
      '--to-distance',
      '1.25',
      '--to-height',
      '3.05',
      '--json',
    );
    expect(code).toBe(0);
    expect(json['speedToScore']).toBeNull();
    expect(json['speedToScoreReason']).toContain('rising');
  });

  test('a ball nobody knows, drag without a ball and a missing option are usage', () => {
    for (const wrong of ['--ball moon', '--drag on']) expect(flight(`${SHOT} ${wrong}`).code).toBe(2);
    expect(caseframe('flight', '--speed', '7').code).toBe(2);
  });
});

describe('flight, further', () => {
  test('JCGM 101:2008: with uncertainties of every input the answers carry one, by draws that say their seed', () => {
    const us = '--speed-u 0.03 --angle-u 1 --height-u 0.02 --to-distance-u 0.02 --to-height-u 0.005';
    const { json } = flight(`${SHOT} ${us} --ball basketball --drag off`);
    for (const key of ['entryAngle', 'missDistance', 'timeOfFlight', 'speedToScore', 'leastSpeed', 'apexHeight']) {
      expect((json[key] as { u: number }).u, key).toBeGreaterThan(0);
    }
    const drawn = json['monteCarlo'] as Record<string, unknown>;
    expect(drawn).toMatchObject({ seed: 1, coverage: 0.95, isStable: true });
    const [low, high] = (drawn['intervals'] as { entryAngle: [number, number] }).entryAngle;
    expect(low).toBeLessThan(39.7);
    expect(high).toBeGreaterThan(39.7);
    expect(valueOf(drawn, 'chance')).toBeGreaterThan(0.3);
    expect((flight(SHOT).json['monteCarlo'] as Record<string, unknown>)['chanceReason']).toContain('without one');
  });

  test('P1 (computed): from 35 cm higher the least speed is 6.9089 m/s at 49.041°; 40 ms later is worked out beside it', () => {
    const { json } = flight(`${SHOT} --higher 0.35 --later 0.04 --body-up 1 --body-forward 0.5`);
    const [higher = {}, later = {}] = json['instead'] as Record<string, unknown>[];
    expect(valueOf(higher, 'leastSpeed')).toBeCloseTo(6.9089, 4);
    expect(valueOf(higher, 'leastSpeedAngle')).toBeCloseTo(49.041, 3);
    // Closed form: 0.04 − 9.80665 · 0.04² / 2 up, 0.02 m nearer.
    expect(valueOf(later, 'height')).toBeCloseTo(2.132155, 6);
    expect(valueOf(later, 'distance')).toBeCloseTo(4.205, 9);
    expect(valueOf(later, 'speed')).toBeLessThan(7.1973);
  });

  test.each([
    ['goal', `${HANDBALL} --ball handball`, 'handball-goal'],
    ['net', '--speed 50 --angle -5 --height 2.75 --to-distance 11.885 --to-height 0.914 --ball tennis', 'tennis-net'],
    ['ring', `${SHOT} --ball custom:0.609:0.2435:0 --target basketball-ring`, 'basketball-ring'],
  ])('a %s gives room in speed and angle', (_kind, options, target) => {
    const { json } = flight(options);
    expect(json['target']).toBe(target);
    const margin = json['margin'] as Record<string, unknown>;
    for (const key of ['slower', 'faster', 'flatter', 'steeper']) expect(valueOf(margin, key), key).toBeGreaterThan(0);
  });

  test('--lift: law: backspin carries a shot farther, topspin brings it down sooner, none is as without; nonsense is refused', () => {
    const miss = (lift: string) => valueOf(flight(`${SHOT} --ball basketball-7${lift}`).json, 'missDistance');
    expect(miss(' --lift 0')).toBeCloseTo(miss(''), 6);
    expect(miss(' --lift 0.2')).toBeGreaterThan(miss(''));
    expect(miss(' --lift=-0.2')).toBeLessThan(miss(''));
    expect(flight(`${SHOT} --lift 0.2`).code).toBe(2);
    expect(flight(`${SHOT} --ball basketball-7 --lift 9`).code).toBe(3);
  });

  test('a ball of one’s own flies as the one on file with its figures; nonsense is usage', () => {
    const own = flight(`${HANDBALL} --ball custom:0.45:${0.59 / Math.PI}:0.5`).json;
    expect(valueOf(own, 'missHeight')).toBeCloseTo(
      valueOf(flight(`${HANDBALL} --ball handball-3`).json, 'missHeight'),
      5,
    );
    for (const wrong of ['--ball custom:0:1:1', '--ball custom:a', '--seed 1.5', '--target moon']) {
      expect(flight(`${SHOT} ${wrong}`).code, wrong).toBe(2);
    }
  });
});

/** So many frames of a flight at 100 Hz through air of 0.05 /m, as a table; every second one put down too high, m. */
const made = (frames: number, tooHigh: number) =>
  Array.from({ length: frames }, (_, i) => advance(launch(15, 0.5, 2), i / 100, { drag: 0.05, lift: 0 }))
    .map(({ t, x, y }, i) => `${t.toFixed(4)},${x.toFixed(4)},${(y + (i % 2) * tooHigh).toFixed(4)}`)
    .join('\n');

const fitted = (frames: number, tooHigh: number, ...more: string[]) =>
  caseframe(
    'flight',
    'fit',
    write('flight.csv', `t,x,y\n${made(frames, tooHigh)}\n`),
    '--columns',
    't,x,y',
    '--drag',
    'fitted',
    ...more,
    '--json',
  ).json;

describe('flight fit', () => {
  test('law of free fall: a path made with g 9.80665 and 20 m/s at 10° gives both back', () => {
    const [v, angle] = [20, (10 * Math.PI) / 180];
    const rows = Array.from({ length: 20 }, (_, i) => {
      const t = i / 120;
      return [t, v * Math.cos(angle) * t, 2 + v * Math.sin(angle) * t - (9.80665 * t * t) / 2].join(',');
    });
    const file = write('ball.csv', `t,x,y\n${rows.join('\n')}\n`);
    const { code, json } = caseframe('flight', 'fit', file, '--columns', 't,x,y', '--json');
    expect(code).toBe(0);
    expect(valueOf(json, 'releaseSpeed')).toBeCloseTo(20, 6);
    expect(valueOf(json, 'releaseAngle')).toBeCloseTo(10, 6);
    expect(valueOf(json, 'gravity')).toBeCloseTo(9.80665, 6);
    expect(json['verdict']).toBe('fine');
  });

  test('--drag fitted: the drag a long light flight was made with, within 2 u; a short one says it cannot tell', () => {
    const long = fitted(100, 0);
    expect(long['verdict']).toBe('cannot tell');
    const { value, u } = long['dragFactor'] as { value: number; u: number };
    expect(Math.abs(value - 0.05)).toBeLessThan(2 * u);
    expect(Math.abs(valueOf(long, 'releaseSpeed') - 15)).toBeLessThan(0.01);
    const short = fitted(6, 0.03, '--ball', 'volleyball');
    expect(short['dragFactor']).toBeNull();
    expect(short['dragFactorReason']).toContain('cannot tell drag from none');
    expect(short['drag']).toBe(true);
  });

  test('five frames are not enough; a hole in the table is named by line and column', () => {
    const few = write('few.csv', `t,x,y\n${[0, 1, 2, 3, 4].map((i) => `${i},${i},${i}`).join('\n')}\n`);
    expect(caseframe('flight', 'fit', few, '--columns', 't,x,y').code).toBe(3);
    const hole = write('hole.csv', 't,x,y\n0,1,2\n1,,2\n');
    const ran = caseframe('flight', 'fit', hole, '--columns', 't,x,y');
    expect(ran.code).toBe(3);
    expect(ran.err).toContain('line 3, column x');
  });
});

const quantity = (of: unknown) => of as { value: number; unit: string; u: number };
const still = (x: number, y: number) =>
  Array.from({ length: 60 }, (_, frame): [number, number, number] => [frame, x, y]);

const trialOf = (points: Record<string, [number, number, number][]>, events: { event: string; timeS: number }[]) =>
  write(
    'trial.json',
    JSON.stringify({
      format: 'caseframe-trial',
      version: 1,
      movement: 'overhead-throw',
      filmedOn: '2026-11-18',
      side: 'right',
      captureRateHz: 100,
      calibration: {
        kind: 'plane',
        // Five places of one plane, 200 px to the metre, y down; the fifth is put down 4 px too far to the right.
        points: [
          [100, 900, 0, 0],
          [500, 900, 2, 0],
          [500, 500, 2, 2],
          [100, 500, 0, 2],
          [304, 700, 1, 1],
        ].map(([x, y, xM, yM]) => ({ image: { xPx: x, yPx: y }, plane: { xM, yM } })),
        pointUPx: 1,
      },
      points,
      events,
    }),
  );

describe('trial', () => {
  /** A forearm of 50 px that turns steadily by 0.05 rad a frame, anticlockwise as seen, about an elbow at rest. */
  const turning = Array.from({ length: 60 }, (_, frame): [number, number, number] => {
    const phi = -1.5 + 0.05 * frame;
    return [frame, 300 + 50 * Math.cos(phi), 700 - 50 * Math.sin(phi)];
  });
  const { json } = caseframe(
    'trial',
    trialOf({ 'shoulder-right': still(300, 600), 'elbow-right': still(300, 700), 'wrist-right': turning }, [
      { event: 'release', timeS: 0.3 },
    ]),
    '--json',
  );

  test('a point put down 4 px off among five leaves a residual in metres; no point of the plane is farther off', () => {
    const residualsM = (json['calibration'] as { residualsM: number[] }).residualsM;
    expect(residualsM).toHaveLength(5);
    // 4 px are 0.02 m; least squares spreads some of it over the others.
    expect(Math.max(...residualsM)).toBeGreaterThan(0.005);
    expect(Math.max(...residualsM)).toBeLessThan(0.02);
  });

  test('A12 on a film: without a mass there are no loads, and the reason; with one, each static moment says what it carries', () => {
    expect(json['loads']).toBeNull();
    expect(json['loadsReason']).toContain('mass');
    const { json: weighed } = caseframe('trial', path.join(folder, 'trial.json'), '--mass', '72', '--json');
    const loads = weighed['loads'] as { meanPushOffForce: null; staticMoments: Record<string, unknown>[] };
    expect(loads.meanPushOffForce).toBeNull();
    expect(loads.staticMoments[0]).toMatchObject({
      event: 'release',
      joint: 'shoulder',
      side: 'right',
      carries: 'hanging',
    });
    // No knuckle is digitised, so what the hand weighs is not known.
    expect(loads.staticMoments[0]).toMatchObject({ moment: null, momentReason: 'not digitised: hand right' });
  });

  test('definition: steady turning of 5 rad/s is 286.5 °/s and a wrist 0.25 m away moves at 1.25 m/s, each with u', () => {
    const [release] = json['atEvents'] as {
      event: string;
      angles: Record<string, unknown>[];
      speeds: Record<string, unknown>[];
    }[];
    expect(release?.event).toBe('release');
    const elbow = release?.angles.find(({ id }) => id === 'elbow.flexion.right') ?? {};
    // A bent elbow that opens: the flexion falls as the forearm turns away from hanging.
    expect(Math.abs(quantity(elbow['angularVelocity']).value)).toBeCloseTo(5, 1);
    expect(quantity(elbow['angularVelocity']).unit).toBe('rad/s');
    expect(quantity(elbow['angularVelocity']).u).toBeGreaterThan(0);
    expect(Math.abs(quantity(elbow['angularAcceleration']).value)).toBeLessThan(
      3 * quantity(elbow['angularAcceleration']).u,
    );
    const wrist = release?.speeds.find(({ point }) => point === 'wrist-right') ?? {};
    expect(quantity(wrist['speed']).value).toBeCloseTo(1.25, 1);
    expect(quantity(wrist['speed']).u).toBeGreaterThan(0);
  });
});

describe('help and mistakes', () => {
  test('help names every command', () => {
    const { code, json } = caseframe('help', '--json');
    expect(code).toBe(0);
    const names = (json['commands'] as { name: string }[]).map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(['jump time', 'jump force', 'flight', 'flight fit']));
  });

  test('an unknown command and an unknown option are usage, with nothing on standard output', () => {
    expect(caseframe('fly')).toMatchObject({ code: 2, out: '' });
    expect(caseframe('jump', 'time', '0.5', '--colour')).toMatchObject({ code: 2, out: '' });
  });
});
