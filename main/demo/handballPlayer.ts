import { blankInjury } from '../../shared/model/blank.ts';
import { dragFactor } from '../../shared/kernel/flight/dragFactor.ts';
import type { TrialFile } from '../../shared/exchange/trialFile.ts';
import { handball3 } from '../../shared/knowledge/balls/handball-3.ts';
import { ask } from '../cli/ask.ts';
import type { InventedCase } from './inventedCase.ts';
import { filmJumpThrow, RATE_HZ } from './jumpThrow.ts';
import { jumpTraceCsv } from './jumpTrace.ts';
import type { RandomSource } from './randomSource.ts';
import { bothSides, jumpTest, screening } from './records.ts';

const ASSESSED_ON = '2026-09-14';
const RATER = 'Club performance staff (invented)';
const BODY = { massKg: 88.4, statureM: 1.88 };
const POINT_U_M = 0.004;
/** Half a frame either way, rectangular: one frame over √12, to a microsecond as one writes it. */
const HALF_FRAME_U_S = Number((1 / (RATE_HZ * Math.sqrt(12))).toFixed(6));

/** A right-handed back-court player whose shoulder slipped backwards two seasons ago and is not cleared for everything. */
export const handballPlayer: InventedCase = {
  purpose: 'study',
  openedOn: ASSESSED_ON,
  athlete: {
    name: 'Player Sorrel',
    birthDate: '2002-03-14',
    referenceSex: 'male',
    ...BODY,
    massUKg: 0.1,
    massOn: ASSESSED_ON,
    statureUM: 0.005,
    statureOn: ASSESSED_ON,
    dominantSide: 'right',
    sport: 'Handball',
    position: 'Left back',
    level: 'Second division (invented)',
    goals: 'Throw from nine metres over the block again, every match, without thinking of the shoulder.',
    consentFor: 'Assessment, film of one throw and this report',
    consentOn: ASSESSED_ON,
    consentToImages: true,
    hasRedFlags: false,
  },
  case: {
    practitioner: RATER,
    question: 'What in the jump throw needs changing, and what may be trained with this shoulder?',
  },
  records: (caseId, athleteId, random) => [
    {
      op: 'create',
      kind: 'injury',
      record: {
        ...blankInjury({ id: random.id(), athleteId }, { region: 'shoulder', side: 'right' }),
        condition: 'posterior-shoulder-instability',
        diagnosis: 'Posterior subluxation, treated without an operation',
        onset: '2024-10',
        mechanism: 'Arm forward and across in a block, pushed back by an opponent.',
        status: 'recovering',
        episodes: 2,
        timeLossDays: 64,
        hadSurgery: false,
        restrictions: 'No loaded pushing with the arm forward and across.',
        clearedBy: '',
        clearedOn: null,
        note: 'Cleared for throwing by the team physician in June 2025; not for straight-arm pushing.',
      },
    },
    ...screening(
      caseId,
      ASSESSED_ON,
      RATER,
      [
        { item: 'pain-bending-back', isPositive: false },
        { item: 'pain-raising-arm', side: 'right', isPositive: false },
        { item: 'pain-raising-arm', side: 'left', isPositive: false },
        { item: 'overhead-squat', grade: 'met-with-compensation', note: 'Arms drift forward in the last third.' },
        { item: 'single-leg-squat', side: 'right', grade: 'met' },
        { item: 'single-leg-squat', side: 'left', grade: 'met' },
        ...bothSides('weight-bearing-lunge', 11.5, 11),
        ...bothSides('shoulder-internal-rotation', 41, 63),
        ...bothSides('shoulder-external-rotation', 99, 92),
        ...bothSides('single-leg-hop', 198, 204),
      ],
      random,
    ),
  ],
  async importFiles(service, caseId, random) {
    const testId = random.id();
    const device = 'Two force plates, 1000 samples a second';
    await ask(service, 'case.edit', {
      caseId,
      edits: [jumpTest({ id: testId, caseId, heldOn: ASSESSED_ON, method: 'force-plate', device })],
    });
    for (const [i, takeoffVelocityMPerS] of [2.61, 2.68, 2.64].entries()) {
      const jump = { massKg: BODY.massKg, takeoffVelocityMPerS, depthM: 0.31 + 0.01 * i, leftShare: 0.51 };
      const file = {
        fileName: `jump-${i + 1}.csv`,
        text: jumpTraceCsv(jump, random),
        columns: [],
        rateHz: null,
        massKg: null,
      };
      await ask(service, 'jump.importForce', { caseId, testId, file });
    }
    const text = JSON.stringify(throwFile(random));
    await ask(service, 'trial.import', { caseId, fileName: 'jump-throw.json', text });
  },
};

/** A picture 1920 pixels wide that holds the run-up, the jump and the first metres of the ball's flight. */
const PIXELS_PER_M = 190;
const FLOOR_PX = { xPx: 420, yPx: 960 };
/** What the picture is scaled by, lying in the plane of motion; its ends are read to about two millimetres. */
const STICK = { lengthM: 2, lengthUM: 0.003 };

/** Pixels, y down, of a place in metres, y up; to a hundredth of a pixel. */
function toPixels(xM: number, yM: number): { xPx: number; yPx: number } {
  return { xPx: hundredths(FLOOR_PX.xPx + PIXELS_PER_M * xM), yPx: hundredths(FLOOR_PX.yPx - PIXELS_PER_M * yM) };
}

function hundredths(value: number): number {
  return Math.round(100 * value) / 100;
}

/** The throw as a trial file: one camera from the side, points digitised in pixels, a two-metre stick for the scale. */
function throwFile(random: RandomSource): TrialFile {
  // Taped on the floor, and aimed at: the corner was met to about a ball's breadth.
  const target = { distanceM: 8.4, heightM: 1.2, distanceUM: 0.03, heightUM: 0.1 };
  const film = filmJumpThrow(
    {
      statureM: BODY.statureM,
      rise: 2.62,
      run: 2.3,
      releaseBeforeApexS: 0.035,
      ballSpeedMPerS: 22.8,
      ballDragPerM: dragFactor(handball3).value,
      targetDistanceM: target.distanceM,
      targetHeightM: target.heightM,
      forearmBackDeg: -40,
      noiseM: POINT_U_M,
    },
    random,
  );
  return {
    format: 'caseframe-trial',
    version: 1,
    movement: 'handball-jump-throw',
    label: 'Three-step run-up, high right corner',
    filmedOn: ASSESSED_ON,
    side: 'right',
    captureRateHz: RATE_HZ,
    playbackRateHz: null,
    frameTimesS: null,
    calibration: {
      kind: 'length',
      from: toPixels(0, 0),
      to: toPixels(STICK.lengthM, 0),
      lengthM: STICK.lengthM,
      lengthUM: STICK.lengthUM,
      pointUPx: POINT_U_M * PIXELS_PER_M,
      tiltDeg: 0,
    },
    ball: handball3.id,
    target,
    painNrs: 0,
    points: Object.fromEntries(
      [...film.tracks].map(([point, samples]) => [
        point,
        samples.map(([frame, x, y]): [number, number, number] => {
          const { xPx, yPx } = toPixels(x, y);
          return [frame, xPx, yPx];
        }),
      ]),
    ),
    events: Object.entries(film.events).map(([event, timeS]) => ({ event, timeS, uS: HALF_FRAME_U_S })),
    measures: [],
    note: 'Invented: a figure of stiff parts moved by a program, not a person.',
  };
}
