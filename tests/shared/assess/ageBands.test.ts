import { UNSAID } from '../../../shared/model/blank.ts';
import { describe, expect, test } from 'vitest';
import { assessCase } from '../../../shared/assess/assessCase.ts';
import { MEASURES } from '../../../shared/knowledge/measures/index.ts';
import { AGE_BANDS, type Athlete } from '../../../shared/model/athlete.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { sampleCase } from '../../support/sampleCase.ts';

// The dossier (screening): adult reference bands are off under 16. From 65 on: a convention of the house, the groups behind
// the bands are students, athletes and working-age adults. Whole cases are judged, not the test of a rule alone.

const TAKEN_ON = '2026-11-18';

/** Her arms' rotation, far outside every band, with touches far below it; nothing on file that would leave them out. */
function judged(who: Partial<Athlete>) {
  const file = sampleCase();
  const session = file.screeningSessions[0]?.id ?? '';
  const blank = { sessionId: session, grade: null, isPositive: null, painNrs: 0, note: '', ...UNSAID };
  const degrees = (n: number, itemId: string, side: 'left' | 'right' | 'none', deg: number) => ({
    ...blank,
    id: `00000000-0000-4000-8000-0000000009${n}`,
    itemId,
    side,
    valueSi: itemId === 'closed-chain-touches' ? deg : (deg * Math.PI) / 180,
  });
  const screeningResults = [
    degrees(11, 'shoulder-internal-rotation', 'left', 70),
    degrees(12, 'shoulder-internal-rotation', 'right', 20),
    degrees(13, 'shoulder-external-rotation', 'left', 100),
    degrees(14, 'shoulder-external-rotation', 'right', 80),
    degrees(15, 'closed-chain-touches', 'none', 6),
  ];
  const screeningSessions = file.screeningSessions.map((one) => ({ ...one, heldOn: TAKEN_ON }));
  return assessCase({
    ...file,
    injuries: [],
    screeningSessions,
    screeningResults,
    athlete: { ...file.athlete, dominantSide: 'right', birthDate: null, ageBand: null, ...who },
  });
}

const adultsOnly = new Set(MEASURES.filter((measure) => measure.adultsOnly).map(({ id }) => id));
const rulesOfAdults = new Map(
  SHIPPED_RULES.filter((rule) => rule.all.some(({ measure }) => adultsOnly.has(measure))).map((rule) => [
    rule.id,
    rule,
  ]),
);
const verdicts = (who: Partial<Athlete>) => judged(who).findings.filter(({ ruleId }) => rulesOfAdults.has(ruleId));
/** Findings that say something about the athlete rather than that nothing can be said. */
const told = (who: Partial<Athlete>) => verdicts(who).filter(({ outcome }) => outcome !== 'not-assessed');

const bornAt = (age: number, days: string) => `${2026 - age}-${days}`;

describe('adult reference bands, through the whole judging of a case', () => {
  test('there is something to see: at 30 the rotation lost and the few touches are found', () => {
    expect(told({ birthDate: bornAt(30, '01-01') }).length).toBeGreaterThan(1);
  });
  test.each([
    ['15, the day before the birthday', bornAt(16, '11-19'), 'under 16'],
    ['9', bornAt(9, '01-01'), 'under 16'],
    ['65, on the birthday', bornAt(65, '11-18'), 'from 65 on'],
    ['81', bornAt(81, '01-01'), 'from 65 on'],
  ])('at %s no verdict rests on them, and each says why', (_age, birthDate, why) => {
    expect(told({ birthDate })).toEqual([]);
    const known = new Set(told({ birthDate: bornAt(30, '01-01') }).map(({ ruleId }) => ruleId));
    const asked = verdicts({ birthDate }).filter(({ ruleId }) => known.has(ruleId));
    expect(asked).toHaveLength(known.size);
    for (const { needed } of asked) expect(needed).toContain(why);
  });
  test.each([
    ['16, on the birthday', bornAt(16, '11-18')],
    ['64, the day before the birthday', bornAt(65, '11-19')],
  ])('at %s they are used', (_age, birthDate) => {
    expect(told({ birthDate }).length).toBe(told({ birthDate: bornAt(30, '01-01') }).length);
  });
  test.each(AGE_BANDS.map((band) => [band, ['16-17', '18-39', '40-64'].includes(band)] as const))(
    'where only the band %s is known the same holds (used: %s)',
    (ageBand, isUsed) => {
      expect(told({ ageBand }).length > 0).toBe(isUsed);
    },
  );
});
