import { blankInjury } from '../../shared/model/blank.ts';
import type { InventedCase } from './inventedCase.ts';
import { bothSides, screening } from './records.ts';

const SEEN_ON = '2026-09-10';
const RATER = 'Climbing-centre physiotherapist (invented)';

/** A climber whose shoulder has slipped three times: history, a functional test or two, and a question for a clinic. */
export const climber: InventedCase = {
  purpose: 'referral',
  openedOn: SEEN_ON,
  athlete: {
    name: 'Climber Juniper',
    birthDate: '1999-11-02',
    referenceSex: 'female',
    massKg: 57.8,
    massUKg: 0.2,
    massOn: SEEN_ON,
    statureM: 1.67,
    statureUM: 0.005,
    statureOn: SEEN_ON,
    dominantSide: 'right',
    sport: 'Climbing',
    position: 'Bouldering',
    level: 'Competes nationally (invented)',
    goals: 'Hang and reach overhead without the shoulder slipping.',
    consentFor: 'Assessment and this letter to the shoulder clinic',
    consentOn: SEEN_ON,
    consentToImages: false,
    hasRedFlags: false,
  },
  case: {
    practitioner: RATER,
    addressee: 'Shoulder clinic (invented)',
    question:
      'Three anterior subluxations in seven months, the last one reaching overhead. Is imaging wanted before rehabilitation goes on, and may she hang meanwhile?',
    urgency: 'soon',
    urgencyReason: 'Recurrent instability with apprehension; neurovascular check normal today, no locked joint.',
  },
  records: (caseId, athleteId, random) => [
    {
      op: 'create',
      kind: 'injury',
      record: {
        ...blankInjury({ id: random.id(), athleteId }, { region: 'shoulder', side: 'left' }),
        condition: 'anterior-shoulder-instability',
        diagnosis: 'Recurrent anterior subluxation, direction by history; not imaged',
        onset: '2026-02',
        mechanism: 'First time: caught a swing with the arm out and back. Reduced by itself each time.',
        status: 'current',
        episodes: 3,
        timeLossDays: 40,
        hadSurgery: false,
        restrictions: 'No hanging on one arm and no reach behind the head until seen.',
        clearedBy: '',
        clearedOn: null,
        note: 'Frequency: about every ten weeks. Direction: forward. Pain 2 of 10 at rest, apprehension apart from pain.',
      },
    },
    ...screening(
      caseId,
      SEEN_ON,
      RATER,
      [
        { item: 'pain-bending-back', isPositive: false },
        { item: 'pain-raising-arm', side: 'left', isPositive: true, painNrs: 4, note: 'From shoulder height on.' },
        { item: 'pain-raising-arm', side: 'right', isPositive: false },
        ...bothSides('shoulder-internal-rotation', 60, 58),
        ...bothSides('shoulder-external-rotation', 96, 108),
      ],
      random,
    ),
  ],
};
