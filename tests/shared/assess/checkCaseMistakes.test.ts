import { expect, test } from 'vitest';
import { assessCase } from '../../../shared/assess/assessCase.ts';
import type { CaseCheck } from '../../../shared/assess/assessment.ts';
import { MISTAKES } from '../../../shared/kernel/check/mistakes.ts';
import { analyseForceTrace } from '../../../shared/kernel/jump/analyseForceTrace.ts';
import { toForceSummary } from '../../../shared/kernel/jump/toForceSummary.ts';
import type { ForceSummary, JumpTest, JumpTrial } from '../../../shared/model/jump.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { sampleCase, sampleId } from '../../support/sampleCase.ts';
import { BALL, FRAMES, inventedTrial, TAKEOFF } from '../kernel/trial/inventedTrial.ts';
import { dossierForceN } from '../../support/dossierJump.ts';

// A case for each mistake of ../shared/reference/mechanics.md, section 6, that a case can hold. What each check says and
// its numbers are tested with the kernel; here, that a case asks it and that a right number passes.

type Entered = CaseFile['enteredMeasures'][number];
const TRIAL = sampleId(70);
const deg = (value: number) => (value * Math.PI) / 180;

function typed(measureId: string, valueSi: number, more: Partial<Entered> = {}, n = 60): Entered {
  return {
    id: sampleId(n),
    caseId: sampleId(1),
    trialId: null,
    measureId,
    phase: null,
    side: 'none',
    takenOn: '2026-11-18',
    valueSi,
    uSi: null,
    flag: null,
    note: '',
    ...more,
  };
}
const ofTrial = (measureId: string, valueSi: number, more: Partial<Entered> = {}) =>
  typed(measureId, valueSi, { trialId: TRIAL, ...more });

const bare = (): CaseFile => ({
  ...sampleCase(),
  jumpTests: [],
  jumpTrials: [],
  movementTrials: [],
  landmarkTracks: [],
  trialEvents: [],
  findingDecisions: [],
});

/**
 * The invented figure and its ball of known release, as a trial of the case; a target 4.225 m away at 3.05 m. Released at
 * 1.929 m: entry atan(tan 52° − 2 · 1.121/4.225) = 36.8°, least speed at 45° + ½ atan(1.121/4.225) = 52.4°.
 */
function filmed(
  change: (trial: CaseFile['movementTrials'][number]) => Partial<CaseFile['movementTrials'][number]> = () => ({}),
): CaseFile {
  const { trial, tracks, events, movement } = inventedTrial();
  const own = {
    ...trial,
    id: TRIAL,
    caseId: sampleId(1),
    movementId: movement.id,
    targetDistanceM: 4.225,
    targetHeightM: 3.05,
    targetDistanceUM: null,
    targetHeightUM: null,
  };
  return {
    ...bare(),
    movementTrials: [{ ...own, ...change(own) }],
    landmarkTracks: tracks.map((track, i) => ({ ...track, id: sampleId(100 + i), trialId: TRIAL })),
    trialEvents: events.map((event, i) => ({ ...event, id: sampleId(200 + i), trialId: TRIAL })),
  };
}

const TEST: JumpTest = { ...(sampleCase().jumpTests[0] as JumpTest), id: sampleId(20) };
const JUMP: JumpTrial = { ...(sampleCase().jumpTrials[0] as JumpTrial), isSetAside: false };

/** J7 of the dossier: 70 kg, take-off at 2.6465 m/s. */
function force(change: Partial<ForceSummary> = {}): ForceSummary {
  const plates = [dossierForceN()];
  const analysis = analyseForceTrace({ rateHz: 1000, plates, massKg: null, kind: 'countermovement' });
  return { ...toForceSummary(analysis, 1000, ['fz']), ...change };
}
const onPlate = (summary: ForceSummary): Partial<CaseFile> => ({
  jumpTests: [{ ...TEST, method: 'force-plate' }],
  jumpTrials: [{ ...JUMP, flightTimeS: null, force: summary }],
});

const releaseSpeed = BALL.speed;
const horizontal = BALL.speed * Math.cos(BALL.angle);
const trialTyped = (one: Entered) => ({ ...filmed(), enteredMeasures: [one] });
const sides = (left: readonly number[], right: readonly number[]): Partial<CaseFile> => ({
  enteredMeasures: [
    ...left.map((value, i) => typed('hop.distance', value, { side: 'left' }, 300 + i)),
    ...right.map((value, i) => typed('hop.distance', value, { side: 'right' }, 310 + i)),
  ],
});
const reachTest = (n: number, shoes: boolean, standingReachM: number): JumpTest => ({
  ...TEST,
  id: sampleId(n),
  method: 'jump-and-reach',
  shoes,
  standingReachM,
  heldOn: n === 20 ? '2026-11-18' : '2026-09-01',
});
const upsideDown = (): CaseFile => {
  const file = filmed();
  return {
    ...file,
    landmarkTracks: file.landmarkTracks.map((track) => ({
      ...track,
      samples: track.samples.map(([frame, x, y]) => [frame, x, -y] as [number, number, number]),
    })),
  };
};
/** The thigh foreshortened from the frame of release on, by moving the knee towards the hip. */
const turned = (): CaseFile => {
  const file = filmed();
  const hip = file.landmarkTracks.find(({ point }) => point === 'hip-left')?.samples ?? [];
  return {
    ...file,
    landmarkTracks: file.landmarkTracks.map((track) =>
      track.point !== 'knee-left'
        ? track
        : {
            ...track,
            samples: track.samples.map(([frame, x, y], i) => {
              const [, hx = 0, hy = 0] = hip[i] ?? [];
              const share = frame >= FRAMES.release - 4 && frame <= FRAMES.release + 4 ? 0.75 : 1;
              return [frame, hx + share * (x - hx), hy + share * (y - hy)] as [number, number, number];
            }),
          },
    ),
  };
};
const landed = (knee: number): Partial<CaseFile> => ({
  jumpTests: [TEST],
  jumpTrials: [JUMP],
  movementTrials: filmed(() => ({ movementId: 'countermovement-jump', filmedOn: TEST.heldOn })).movementTrials,
  enteredMeasures: [
    { ...ofTrial('knee.flexAtTakeoff', deg(5), { phase: 'propulsion' }) },
    { ...ofTrial('knee.flexAtContact', deg(knee), { phase: 'landing' }), id: sampleId(61) },
  ],
});
const tap = (measureId: string, valueSi: number): Partial<CaseFile> => ({
  enteredMeasures: [typed(measureId, valueSi)],
});

/** [mistake, id of its check, a case that makes it, a case that does not] */
const CASES: readonly [number, string, () => Partial<CaseFile>, () => Partial<CaseFile>][] = [
  [1, 'weight-as-mass-times-ten', () => tap('body.weight', 684), () => tap('body.weight', 671)],
  [
    2,
    'slowed-seconds',
    () => ({ jumpTests: [TEST], jumpTrials: [{ ...JUMP, flightTimeS: 1.2 }] }),
    () => ({ jumpTests: [TEST], jumpTrials: [JUMP] }),
  ],
  [2, 'rates-swapped', () => filmed(() => ({ playbackRateHz: 960 })), () => filmed(() => ({ playbackRateHz: 30 }))],
  [
    3,
    'unlike-heights-compared',
    () => ({
      jumpTests: [TEST, { ...TEST, id: sampleId(90), heldOn: '2026-09-01', arms: 'free' }],
      jumpTrials: [JUMP, { ...JUMP, id: sampleId(91), testId: sampleId(90) }],
    }),
    () => ({
      jumpTests: [TEST, { ...TEST, id: sampleId(90), heldOn: '2026-09-01' }],
      jumpTrials: [JUMP, { ...JUMP, id: sampleId(91), testId: sampleId(90) }],
    }),
  ],
  [4, 'body-weight-as-force-needed', () => tap('jump.forceToLeave', 671), () => tap('jump.forceToLeave', 1400)],
  [5, 'segment-turned', turned, filmed],
  [
    6,
    'body-weight-not-subtracted',
    () => onPlate(force({ takeoffVelocityMPerS: { value: 9.119, u: null } })),
    () => onPlate(force()),
  ],
  [6, 'body-weight-not-subtracted', () => tap('jump.takeoffVelocity', 9.119), () => tap('jump.takeoffVelocity', 2.65)],
  [
    7,
    'peak-velocity-as-takeoff',
    () => ({ ...onPlate(force()), ...tap('jump.takeoffVelocity', 2.79) }),
    () => ({ ...onPlate(force()), ...tap('jump.takeoffVelocity', 2.65) }),
  ],
  [
    8,
    'height-without-the-eighth',
    () => ({ jumpTests: [TEST], jumpTrials: [{ ...JUMP, flightTimeS: 0.5 }], ...tap('jump.height.flightTime', 1.226) }),
    () => ({ jumpTests: [TEST], jumpTrials: [{ ...JUMP, flightTimeS: 0.5 }], ...tap('jump.height.flightTime', 0.306) }),
  ],
  [
    9,
    'bent-landing',
    () => onPlate(force({ jumpHeightFlightTimeM: { value: 0.43, u: 0.002 } })),
    () => onPlate(force()),
  ],
  [9, 'bent-landing', () => landed(35), () => landed(8)],
  [
    10,
    'speed-from-distance-over-time',
    () => trialTyped(ofTrial('ball.releaseSpeed', horizontal)),
    () => trialTyped(ofTrial('ball.releaseSpeed', releaseSpeed)),
  ],
  [
    11,
    'entry-taken-as-release',
    () => trialTyped(ofTrial('ball.entryAngle', BALL.angle)),
    () => trialTyped(ofTrial('ball.entryAngle', deg(37))),
  ],
  [
    12,
    'forty-five-is-best',
    () => trialTyped(ofTrial('ball.leastSpeedAngle', deg(45))),
    () => trialTyped(ofTrial('ball.leastSpeedAngle', deg(52.4))),
  ],
  [12, 'release-angle-without-target', () => filmed(() => ({ targetDistanceM: null })), filmed],
  [
    13,
    'angle-from-forearm',
    () => trialTyped(ofTrial('ball.releaseAngle', deg(66))),
    () => trialTyped(ofTrial('ball.releaseAngle', BALL.angle)),
  ],
  [14, 'impossible-release', () => filmed(() => ({ targetDistanceM: 30 })), filmed],
  [16, 'image-y-down', upsideDown, filmed],
  [
    19,
    'degrees-as-radians',
    () => tap('shoulder.ir', 52),
    () => trialTyped(ofTrial('arm.elevation', deg(100), { phase: 'release', side: 'right' })),
  ],
  [
    20,
    'inside-angle-as-flexion',
    () => trialTyped(ofTrial('elbow.flexAtRelease', deg(71.663), { phase: 'release', side: 'right' })),
    () => trialTyped(ofTrial('elbow.flexAtRelease', deg(180 - 71.663), { phase: 'release', side: 'right' })),
  ],
  [
    21,
    'metres-in-centimetre-equation',
    () => ({
      jumpTests: [TEST],
      jumpTrials: [{ ...JUMP, flightTimeS: 0.57123 }],
      ...tap('jump.peakPowerEstimated', 60.7 * 0.4 + 45.3 * 68.4 - 2055),
    }),
    () => ({
      jumpTests: [TEST],
      jumpTrials: [{ ...JUMP, flightTimeS: 0.57123 }],
      ...tap('jump.peakPowerEstimated', 60.7 * 40 + 45.3 * 68.4 - 2055),
    }),
  ],
  [22, 'power-beyond-band', () => tap('jump.peakPower', 7617), () => tap('jump.peakPower', 3600)],
  [
    23,
    'strength-indices-mixed',
    () => ({ ...drop(), ...tap('jump.rsi', 2.672) }),
    () => ({ ...drop(), ...tap('jump.rsi', 1.75) }),
  ],
  [
    24,
    'asymmetry-unnamed',
    () => tap('force.asymmetry', 0.084),
    () => ({ enteredMeasures: [typed('force.asymmetry', 0.084, { side: 'left' })] }),
  ],
  [
    25,
    'asymmetry-within-variation',
    () => sides([1.4, 1.5, 1.6], [1.42, 1.52, 1.6]),
    () => sides([1.49, 1.5, 1.51], [1.19, 1.2, 1.21]),
  ],
  [
    28,
    'hip-as-centre-of-mass',
    hipsLagging,
    () => trialTyped(ofTrial('com.riseInSkill', TAKEOFF.vy ** 2 / (2 * 9.80665))),
  ],
  [
    33,
    'events-without-uncertainty',
    () => {
      const file = filmed();
      return { ...file, trialEvents: file.trialEvents.map((event) => ({ ...event, uS: 0 })) };
    },
    filmed,
  ],
  [
    34,
    'reach-in-other-shoes',
    () => ({ jumpTests: [reachTest(20, true, 2.31), reachTest(90, false, 2.31)] }),
    () => ({ jumpTests: [reachTest(20, true, 2.34), reachTest(90, false, 2.31)] }),
  ],
  [36, 'drag-ignored', () => filmed(() => ({ ballId: null })), () => filmed(() => ({ ballId: 'basketball-7' }))],
];

/** I1 and I2: 0.35 m in the air and 0.200 s on the ground. */
function drop(): Partial<CaseFile> {
  const flightTimeS = Math.sqrt((8 * 0.35) / 9.80665);
  return { jumpTests: [{ ...TEST, kind: 'drop' }], jumpTrials: [{ ...JUMP, flightTimeS, contactTimeS: 0.2 }] };
}

/** How far hips and legs lag behind the rest of the body in flight, m: up to 12 cm at landing. */
const lag = (frame: number) =>
  0.12 * Math.min(1, Math.max(0, (frame - FRAMES.takeoff) / (FRAMES.landing - FRAMES.takeoff)));

/** Hips and legs rise less than the centre of mass; the rise of the hip is typed. */
function hipsLagging(): CaseFile {
  const file = trialTyped(ofTrial('com.riseInSkill', TAKEOFF.vy ** 2 / (2 * 9.80665) - 0.08));
  return {
    ...file,
    landmarkTracks: file.landmarkTracks.map((track) =>
      /^(hip|knee|ankle|heel|toe)/.test(track.point)
        ? {
            ...track,
            samples: track.samples.map(([frame, x, y]) => [frame, x, y - lag(frame)] as [number, number, number]),
          }
        : track,
    ),
  };
}

const checksOf = (change: Partial<CaseFile>): readonly CaseCheck[] => assessCase({ ...bare(), ...change }).checks;

test.each(CASES)(
  'mistake %d: a case that makes it is questioned, one that does not is not (%s)',
  (_n, id, wrong, right) => {
    const made = checksOf(wrong()).filter((check) => check.id === id);
    expect(made.map(({ verdict }) => verdict)).toContain('questioned');
    for (const check of made) expect(check.about).toMatch(/[0-9a-f]{12}/);
    const passed = checksOf(right()).filter((check) => check.id === id);
    expect(passed.length).toBeGreaterThan(0);
    expect(passed.map(({ verdict }) => verdict)).not.toContain('questioned');
  },
);

const kebab = (name: string) => name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

test('every check said to be asked of a case has a case here', () => {
  const asked = MISTAKES.filter(({ askedOf }) => askedOf === 'case').map(({ check }) => kebab(check.name));
  expect([...new Set(CASES.map(([, id]) => id))].toSorted()).toEqual(asked.toSorted());
});
