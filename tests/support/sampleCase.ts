import type { Assessment, Fact, Finding, HistoryEffect, TestResult } from '../../shared/assess/assessment.ts';
import { readsAs } from '../../shared/assess/standing.ts';
import { flightHeight } from '../../shared/kernel/jump/flightHeight.ts';
import { measureById } from '../../shared/knowledge/measures/index.ts';
import { SOURCES } from '../../shared/knowledge/sources/index.ts';
import { UNSAID, blankAthlete, blankCase, blankInjury } from '../../shared/model/blank.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { measured, type Quantity } from '../../shared/quantity.ts';
import type { Unit } from '../../shared/units.ts';
import { KERNEL_VERSION, RULES_VERSION } from '../../shared/versions.ts';
import { byReader } from '../../shared/rules/byReader.ts';

/** An invented handball player, and everything a report can show of her. No real person stands behind any of it. */

/** A well-formed identifier from a small number. */
export function sampleId(n: number): string {
  return `00000000-0000-4000-8000-${n.toString(16).padStart(12, '0')}`;
}

const CASE = sampleId(1);
const ATHLETE = sampleId(2);
const TRIAL = sampleId(30);
const JUMP_TEST = sampleId(20);
const SESSION = sampleId(10);

export function sampleCase(): CaseFile {
  return {
    revision: 42,
    judgedBy: { shared: [], held: null },
    case: {
      ...blankCase({ id: CASE, athleteId: ATHLETE }, '2026-014', 'intake', '2026-11-18'),
      practitioner: 'R. Example, strength coach (invented)',
      question: 'Can she return to full jump throws, and what should the gym work be until then?',
      addressee: '',
      urgency: null,
      urgencyReason: '',
      note: '',
      isInvented: true,
      archivedOn: null,
    },
    athlete: {
      ...blankAthlete(ATHLETE),
      name: 'Tern',
      isPseudonym: true,
      birthDate: '2003-05-14',
      referenceSex: 'female',
      massKg: 68.4,
      massUKg: 0.1,
      massOn: '2026-11-18',
      statureM: 1.763,
      statureUM: 0.005,
      statureOn: '2026-11-18',
      dominantSide: 'right',
      sport: 'handball',
      position: 'left back',
      level: 'second league',
      goals: 'Throw without fear from nine metres by the start of the spring round.',
      consentFor: 'assessment, report',
      consentOn: '2026-11-18',
      consentToImages: true,
      hasRedFlags: false,
      redFlagsClearedBy: '',
      note: '',
    },
    injuries: [
      {
        ...blankInjury({ id: sampleId(3), athleteId: ATHLETE }, { region: 'shoulder', side: 'right' }),
        condition: 'posterior-shoulder-instability',
        diagnosis: 'subluxation, treated without surgery',
        onset: '2025-02',
        mechanism: 'Blocked shot, arm forward and across.',
        status: 'recovering',
        episodes: 2,
        timeLossDays: 61,
        hadSurgery: false,
        restrictions: 'No straight-arm blocking, no push-ups.',
        clearedBy: '',
        clearedOn: null,
        note: '',
      },
      {
        ...blankInjury({ id: sampleId(4), athleteId: ATHLETE }, { region: 'ankle', side: 'left' }),
        condition: 'ankle-sprain',
        diagnosis: '',
        onset: '2023',
        mechanism: '',
        status: 'resolved',
        episodes: 1,
        timeLossDays: 12,
        hadSurgery: false,
        restrictions: '',
        clearedBy: 'the team physiotherapist',
        clearedOn: '2023-11-02',
        note: '',
      },
    ],
    bodyMeasurements: [],
    shoulderRecords: [],
    instabilityEvents: [],
    neurovascularChecks: [],
    provocationTests: [],
    questionnaireTotals: [],
    screeningSessions: [
      {
        id: SESSION,
        caseId: CASE,
        heldOn: '2026-11-18',
        rater: 'R. Example',
        batteryId: 'general',
        batteryVersion: '1',
        note: '',
        battery: null,
      },
    ],
    screeningResults: [
      result(11, 'pain-bending-back', 'none', { isPositive: false, painNrs: 0 }),
      result(12, 'pain-raising-arm', 'left', { isPositive: false, painNrs: 0 }),
      result(13, 'pain-raising-arm', 'right', { isPositive: true, painNrs: 3, note: 'at the top' }),
      result(14, 'overhead-squat', 'none', { grade: 'met-with-compensation', painNrs: 0 }),
      result(15, 'weight-bearing-lunge', 'left', { valueSi: 0.091, painNrs: 0 }),
      result(16, 'weight-bearing-lunge', 'right', { valueSi: 0.118, painNrs: 0 }),
      result(17, 'single-leg-squat', 'left', { grade: 'not-met' }),
      result(18, 'single-leg-squat', 'right', { grade: 'met', painNrs: 0 }),
    ],
    jumpTests: [
      {
        id: JUMP_TEST,
        caseId: CASE,
        heldOn: '2026-11-18',
        kind: 'countermovement',
        method: 'flight-time',
        arms: 'hips',
        shoes: true,
        device: 'phone video',
        frameRateHz: 240,
        standingReachM: null,
        dropHeightM: null,
        note: '',
        warmUp: '',
      },
    ],
    jumpTrials: [0.512, 0.521, 0.496].map((flightTimeS, i) => ({
      id: sampleId(21 + i),
      testId: JUMP_TEST,
      number: i + 1,
      flightTimeS,
      contactTimeS: null,
      jumpReachM: null,
      force: null,
      mediaSha256: null,
      painNrs: i === 2 ? null : 0,
      isSetAside: i === 2,
      note: i === 2 ? 'landed with bent knees' : '',
      movementTrialId: null,
    })),
    ownMovements: [],
    ownRules: [],
    movementTrials: [
      {
        id: TRIAL,
        caseId: CASE,
        movementId: 'handball-jump-throw',
        filmedOn: '2026-11-18',
        label: 'Third throw, side view',
        side: 'right',
        captureRateHz: 240,
        playbackRateHz: 30,
        clipSha256: null,
        captureRateFrom: null,
        calibration: null,
        calibrationDraft: null,
        frameTimesS: null,
        ballId: 'handball-2',
        targetDistanceM: 9,
        targetHeightM: 1.5,
        targetDistanceUM: null,
        targetHeightUM: null,
        painNrs: 1,
        note: '',
      },
    ],
    landmarkTracks: [],
    pointRepeats: [],
    stills: [],
    trialEvents: (
      [
        ['approach-start', 0],
        ['plant', 0.604],
        ['take-off', 0.792],
        ['cocked', 0.921],
        ['release', 0.967],
        ['landing', 1.25],
        ['end', 1.492],
      ] as const
    ).map(([event, timeS], i) => ({
      id: sampleId(31 + i),
      trialId: TRIAL,
      event,
      timeS,
      uS: 0.0021,
      origin: 'by-hand' as const,
    })),
    enteredMeasures: [],
    findingDecisions: [
      {
        id: sampleId(50),
        caseId: CASE,
        findingKey: kneeFinding.key,
        decision: 'reworded',
        wording: 'Split squats with a slow way down, three sets of six, twice a week; stop two short of tired.',
        reason: '',
        decidedOutcome: kneeFinding.outcome,
        decidedText: readsAs(kneeFinding),
      },
      {
        id: sampleId(51),
        caseId: CASE,
        findingKey: leanFinding.key,
        decision: 'set-aside',
        wording: '',
        reason: 'The camera stood oblique to the run; the lean cannot be read from this clip.',
        decidedOutcome: leanFinding.outcome,
        decidedText: readsAs(leanFinding),
      },
    ],
    reports: [],
    media: [],
  };
}

function result(
  n: number,
  itemId: string,
  side: 'left' | 'right' | 'none',
  found: Partial<CaseFile['screeningResults'][number]>,
): CaseFile['screeningResults'][number] {
  return {
    id: sampleId(n),
    sessionId: SESSION,
    itemId,
    side,
    valueSi: null,
    grade: null,
    isPositive: null,
    painNrs: null,
    note: '',
    ...UNSAID,
    ...found,
  };
}

const shoulder: HistoryEffect = {
  injuryId: sampleId(3),
  condition: 'posterior-shoulder-instability',
  effect: 'replace',
  change: 'Rows and external rotation at the side, two sets of ten, without pain.',
  plain: 'Rows, and turning the arm out with the elbow at your side, two sets of ten, without pain.',
  clears: 'a physiotherapist, and the surgeon if it was operated on',
};

function test(measure: string, factKey: string | null, more: Partial<TestResult>): TestResult {
  return {
    measure,
    label: measureById(measure)?.label ?? measure,
    factKey,
    comparator: '<',
    threshold: 0,
    unit: 'deg',
    result: 'met',
    isBorderline: false,
    chance: null,
    words: '',
    ...more,
  };
}

function finding(key: string, phase: string, more: Partial<Finding>): Finding {
  const { finding: found = '', intervention = null, adjustments = [] } = more;
  return {
    key,
    ruleId: key,
    kind: 'intervention',
    outcome: 'intervention',
    movement: 'handball-jump-throw',
    phase,
    side: 'none',
    trialId: TRIAL,
    takenOn: '2026-11-18',
    finding: '',
    intervention: null,
    adjustments: [],
    wording: byReader(() => ({ finding: found, intervention, adjustments })),
    drill: null,
    withheld: null,
    effects: [],
    tests: [],
    needed: null,
    sources: [SOURCES.convention],
    evidence: 'convention',
    basis: 'convention',
    defersTo: ['the coach'],
    retest: null,
    trace: [],
    ...more,
  };
}

const kneeFinding = finding('throw/landing-knee', 'follow-through-and-landing', {
  outcome: 'modified',
  side: 'left',
  finding: 'The landing knee bends 41°, less than the 50° looked for: the landing is stiff.',
  intervention: 'Drop landings from a low box, quiet feet, three sets of five.',
  adjustments: ['Keep the arm below shoulder height while landing.'],
  effects: [{ ...shoulder, effect: 'modify', change: 'Keep the arm below shoulder height while landing.' }],
  tests: [
    test('landing.kneeFlexPeak', 'landing.kneeFlexPeak/t', {
      threshold: 50,
      words: '41.3° against a limit of 50°.',
      chance: 0.99,
    }),
  ],
  evidence: 'limited',
  sources: [SOURCES.asker2020],
  retest: { measure: 'landing.kneeFlexPeak', label: 'Knee flexion, deepest in the landing', afterDays: 42 },
});

const leanFinding = finding('throw/trunk-lean', 'take-off', {
  finding: 'The trunk leans 8° back at take-off.',
  intervention: 'Run-up drills with a tall last step.',
});

/** Findings as the rules could have written them, one of each outcome. */
const findings: readonly Finding[] = [
  finding('throw/contact-time', 'take-off', {
    kind: 'confirmation',
    outcome: 'confirmed',
    finding: 'Ground contact at take-off lies in the range usual for the jump throw. Nothing needs changing.',
    tests: [
      test('takeoff.contactTime', 'takeoff.contactTime/t', {
        comparator: 'between',
        threshold: [0.15, 0.25],
        unit: 's',
        words: 'inside 0.15 s to 0.25 s.',
      }),
    ],
    evidence: 'limited',
    basis: 'published',
  }),
  leanFinding,
  finding('throw/elevation', 'cocking', {
    outcome: 'stopped',
    side: 'right',
    finding: 'The arm is raised 74°, less than the 90° looked for.',
    withheld: {
      text: 'Overhead catches and straight-arm wall push-ups to build reach.',
      because: [{ ...shoulder, effect: 'stop' }],
    },
    effects: [{ ...shoulder, effect: 'stop' }],
    tests: [test('arm.elevation', 'arm.elevation/t', { threshold: 90, words: '74° ± 3° against a limit of 90°.' })],
    defersTo: ['a physiotherapist'],
  }),
  finding('throw/separation', 'acceleration', {
    outcome: 'replaced',
    side: 'right',
    finding: 'The trunk and arm start forward together; the arm does the work alone.',
    intervention: shoulder.change,
    withheld: { text: 'Medicine-ball throws across the body.', because: [shoulder] },
    effects: [shoulder],
    defersTo: ['a physiotherapist'],
    retest: { measure: 'arm.elevation', label: 'Arm elevation', afterDays: 28 },
  }),
  finding('throw/elbow', 'release', {
    outcome: 'borderline',
    side: 'right',
    finding: 'The elbow is bent 29° at release, within its measurement error of the 30° looked for. Test again.',
    tests: [
      test('elbow.flexAtRelease', 'elbow.flexAtRelease/t', {
        comparator: '>',
        threshold: 30,
        words: '29° ± 3° against a limit of 30°.',
        isBorderline: true,
        chance: 0.37,
      }),
    ],
  }),
  finding('throw/release-angle', 'release', {
    outcome: 'not-assessed',
    finding: 'The release angle was not judged.',
    needed: 'a scale: a known length in the plane of the throw',
    tests: [test('ball.releaseAngle', null, { result: 'undetermined' })],
  }),
  kneeFinding,
  finding('profile/shoulder-pain', 'session', {
    kind: 'referral',
    outcome: 'referral',
    movement: 'any',
    side: 'right',
    trialId: null,
    finding: 'Raising the right arm sideways hurts (3 of 10). Be seen by a clinician before loading the shoulder.',
    defersTo: ['a physician or physiotherapist'],
  }),
];

const degrees = (value: number) => (value * Math.PI) / 180;

function numberFact(
  key: string,
  reading: Quantity,
  displayUnit: Unit,
  from: Fact['from'],
  phase: string | null = null,
): Fact {
  const measure = key.split('/')[0] ?? key;
  return {
    key,
    measure,
    label: measureById(measure)?.label ?? measure,
    movement: from.kind === 'movementTrial' ? 'handball-jump-throw' : null,
    phase,
    side: 'none',
    value: { kind: 'number', reading },
    displayUnit,
    height: null,
    takenOn: '2026-11-18',
    from,
    provenance: 'computed from what was recorded',
    takenAs: null,
  };
}

const entered = (name: string, value: number, unit: Unit, u: number) => measured('x', name, value, unit, u);

export function sampleAssessment(): Assessment {
  const trial = { kind: 'movementTrial', id: TRIAL } as const;
  const facts: Fact[] = [
    numberFact('arm.elevation/t', entered('arm elevation', degrees(74), 'rad', degrees(3)), 'deg', trial, 'cocking'),
    numberFact(
      'elbow.flexAtRelease/t',
      entered('elbow flexion at release', degrees(29), 'rad', degrees(3)),
      'deg',
      trial,
      'release',
    ),
    numberFact(
      'landing.kneeFlexPeak/t',
      entered('knee flexion, deepest', degrees(41.3), 'rad', degrees(2.9)),
      'deg',
      trial,
    ),
    numberFact('takeoff.contactTime/t', entered('contact time at take-off', 0.188, 's', 0.003), 's', trial, 'take-off'),
    ...[0.512, 0.521, 0.496].map((t, i) =>
      numberFact(
        `jump.height.flightTime/${i}`,
        flightHeight(measured('t_f', `flight time, trial ${i + 1}`, t, 's', 0.0017)),
        'cm',
        { kind: 'jumpTrial', id: sampleId(21 + i) },
      ),
    ),
    {
      ...numberFact('ball.releaseAngle/t', entered('', 0, 'rad', 0), 'deg', trial, 'release'),
      value: { kind: 'unknown', reason: 'the clip has no scale' },
    },
  ];
  return {
    facts,
    findings,
    checks: [
      {
        id: 'unlike-heights',
        verdict: 'questioned',
        sentence: 'Two jump heights from different methods stand side by side; they may not be compared.',
        numbers: [
          { label: 'flight time', value: 0.333, unit: 'm' },
          { label: 'reach', value: 0.41, unit: 'm' },
        ],
        about: null,
        source: null,
      },
    ],
    sections: [],
    stops: [{ words: 'Pain on raising the right arm, 3 of 10: stop and be seen.', about: sampleId(13) }],
    missing: ['the athlete’s own account of the two episodes'],
    kernelVersion: KERNEL_VERSION,
    rulesVersion: RULES_VERSION,
  };
}

export const SAMPLE_CREATED_AT = '2026-11-25T09:30:00.000Z';
export const SAMPLE_SHA256 = '5f2c7d8e9a0b1c2d3e4f5a6b7c8d9e0f1a2b3c4d5e6f708192a3b4c5d6e7f809';
