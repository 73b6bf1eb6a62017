import { blankInjury } from '../../shared/model/blank.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { InventedCase } from './inventedCase.ts';
import type { RandomSource } from './randomSource.ts';
import { bothSides, filmedJumps, type InventedResult, screening } from './records.ts';

const HELD_ON = '2026-09-07';
/** Before the summer: one player was seen then as well. */
const BEFORE_ON = '2026-05-18';
const RATER = 'Intake team (invented)';

/** Who differs from the rest, and how. */
const STORIES: Readonly<
  Record<
    string,
    {
      readonly story?: InventedResult[];
      readonly jump: number;
      readonly injury?: true;
      readonly before?: { readonly results: InventedResult[]; readonly flightTimesS: readonly number[] };
    }
  >
> = {
  Alder: {
    jump: 0.53,
    before: {
      results: [
        { item: 'overhead-squat', grade: 'met-with-compensation' },
        ...bothSides('weight-bearing-lunge', 15.5, 12.5),
        ...bothSides('shoulder-internal-rotation', 57, 60),
      ],
      flightTimesS: [0.492, 0.488, 0.496],
    },
  },
  Birch: { jump: 0.5, story: bothSides('weight-bearing-lunge', 11, 6.5) },
  Cedar: { jump: 0.56 },
  Elm: {
    jump: 0.47,
    story: [
      {
        item: 'single-leg-squat',
        side: 'left',
        grade: 'not-met',
        painNrs: 6,
        note: 'Sharp pain below the kneecap on the way down; stopped there.',
      },
    ],
  },
  Hazel: { jump: 0.51 },
  Larch: {
    jump: 0.55,
    story: [{ item: 'overhead-squat', grade: 'not-met', note: 'Heels lift, arms fall forward.' }],
  },
  Maple: { jump: 0.49, injury: true },
  Willow: { jump: 0.52 },
};

/** Eight players of one squad on one afternoon. One has pain in a test and must stop and be seen. */
export const squad: readonly InventedCase[] = Object.entries(STORIES).map(
  ([name, { jump, story = [], injury, before }], i) => ({
    purpose: 'intake',
    openedOn: HELD_ON,
    athlete: {
      name: `Player ${name}`,
      birthDate: `${2000 + (i % 6)}-0${1 + i}-1${i}`,
      referenceSex: i % 2 === 0 ? 'female' : 'male',
      massKg: 64 + 3 * i,
      massUKg: 0.1,
      massOn: HELD_ON,
      statureM: 1.7 + 0.02 * i,
      statureUM: 0.005,
      statureOn: HELD_ON,
      dominantSide: i === 3 ? 'left' : 'right',
      sport: 'Volleyball',
      level: 'Regional squad (invented)',
      consentFor: 'Screening and jump test on intake day',
      consentOn: HELD_ON,
      consentToImages: false,
      hasRedFlags: false,
    },
    case: { practitioner: RATER, question: 'Who can start the season’s training, and who must be seen first?' },
    records: (caseId: string, athleteId: string, random: RandomSource): Edit[] => [
      ...(injury === true ? [sprainedAnkle(athleteId, random)] : []),
      ...screening(caseId, HELD_ON, RATER, resultsOf(story, random), random),
      ...filmedJumps(
        caseId,
        HELD_ON,
        [0, 1, 2].map(() => jump + random.normal(0.006)),
        random,
      ),
      ...(before === undefined
        ? []
        : [
            ...screening(caseId, BEFORE_ON, RATER, before.results, random),
            ...filmedJumps(caseId, BEFORE_ON, before.flightTimesS, random),
          ]),
    ],
  }),
);

/** The usual results, with a story's in their place. */
function resultsOf(story: readonly InventedResult[], random: RandomSource): InventedResult[] {
  const near = (value: number, sd: number, step: number) => Math.round((value + random.normal(sd)) / step) * step;
  const reach = near(11.5, 1, 0.5);
  const usual: readonly InventedResult[] = [
    { item: 'pain-bending-back', isPositive: false },
    { item: 'pain-raising-arm', side: 'right', isPositive: false },
    { item: 'pain-raising-arm', side: 'left', isPositive: false },
    { item: 'overhead-squat', grade: 'met' },
    { item: 'single-leg-squat', side: 'right', grade: 'met' },
    { item: 'single-leg-squat', side: 'left', grade: 'met' },
    ...bothSides('weight-bearing-lunge', reach, reach - 0.5),
    ...bothSides('shoulder-internal-rotation', near(58, 4, 1), near(62, 4, 1)),
    ...bothSides('shoulder-external-rotation', near(98, 4, 1), near(94, 4, 1)),
  ];
  const isTold = (result: InventedResult) =>
    story.some(({ item, side }) => item === result.item && (side ?? 'none') === (result.side ?? 'none'));
  return [...usual.filter((result) => !isTold(result)), ...story];
}

function sprainedAnkle(athleteId: string, random: RandomSource): Edit {
  return {
    op: 'create',
    kind: 'injury',
    record: {
      ...blankInjury({ id: random.id(), athleteId }, { region: 'ankle', side: 'left' }),
      condition: 'ankle-sprain',
      diagnosis: 'Sprain of the outer ligaments',
      onset: '2026-07',
      mechanism: 'Landed on another player’s foot.',
      status: 'recovering',
      episodes: 2,
      timeLossDays: 24,
      hadSurgery: false,
      restrictions: 'Brace for all jumping.',
      clearedBy: '',
      clearedOn: null,
      note: '',
    },
  };
}
