import { UNSAID } from '../../../shared/model/blank.ts';
import { describe, expect, test } from 'vitest';
import type { Fact } from '../../../shared/assess/assessment.ts';
import { collectFacts } from '../../../shared/assess/collectFacts.ts';
import type { JumpTest, JumpTrial } from '../../../shared/model/jump.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { convert } from '../../../shared/units.ts';
import { sampleCase, sampleId } from '../../support/sampleCase.ts';

const factsOf = (change: (file: CaseFile) => Partial<CaseFile>): Fact[] => {
  const file = sampleCase();
  return collectFacts({ ...file, ...change(file) });
};
const find = (facts: readonly Fact[], measure: string, fromId?: string) =>
  facts.find((fact) => fact.measure === measure && (fromId === undefined || fact.from.id === fromId));
/** Value in display unit. */
const value = (fact: Fact | undefined) => {
  if (fact?.value.kind !== 'number' || !isKnown(fact.value.reading)) throw new Error(JSON.stringify(fact?.value));
  const { reading } = fact.value;
  return convert(reading.value, reading.unit, fact.displayUnit ?? reading.unit);
};
const why = (fact: Fact | undefined) => {
  if (fact?.value.kind === 'unknown') return fact.value.reason;
  return fact?.value.kind === 'number' && !isKnown(fact.value.reading) ? fact.value.reading.unknown : null;
};

const jumpTest = (more: Partial<JumpTest>): JumpTest => {
  const [first] = sampleCase().jumpTests;
  if (first === undefined) throw new Error('the sample has a jump test');
  return { ...first, frameRateHz: null, ...more };
};
const jump = (n: number, more: Partial<JumpTrial>): JumpTrial => {
  const [first] = sampleCase().jumpTrials;
  if (first === undefined) throw new Error('the sample has a jump');
  return { ...first, id: sampleId(100 + n), number: n, flightTimeS: null, painNrs: null, isSetAside: false, ...more };
};

const flag = (more: object) =>
  find(
    factsOf((file) => ({ athlete: { ...file.athlete, ...more } })),
    'flag.preparticipation',
  )?.value;

describe('the athlete', () => {
  test('3rd CGPM 1901 standard gravity: 72 kg weigh 706.08 N', () => {
    const facts = factsOf((file) => ({ athlete: { ...file.athlete, massKg: 72 } }));
    expect(value(find(facts, 'body.weight'))).toBeCloseTo(706.0788, 3);
  });

  test('age counts whole years on the day of the newest recording', () => {
    const facts = factsOf((file) => ({ athlete: { ...file.athlete, birthDate: '2003-11-19' } }));
    expect(value(find(facts, 'body.age'))).toBe(22);
  });

  test.each([
    ['Handball', true],
    ['beach volleyball', true],
    ['Table tennis', false],
    ['Climbing', false],
    ['', false],
  ])('common practice, no source: whether “%s” throws or hits overhead is yes or not known, never no', (sport, yes) => {
    const of = (more: object) =>
      find(
        factsOf((file) => ({ athlete: { ...file.athlete, sport }, ...more })),
        'athlete.throws',
      )?.value;
    expect(of({ movementTrials: [] })).toEqual(
      yes
        ? { kind: 'flag', flag: true }
        : { kind: 'unknown', reason: expect.stringMatching(sport === '' ? /no sport/ : /not among/) },
    );
    const [first] = sampleCase().movementTrials;
    expect(of({ movementTrials: [{ ...first, movementId: 'tennis-serve' }] })).toEqual({ kind: 'flag', flag: true });
  });

  test('a red flag not asked is unknown, one cleared by name is not up', () => {
    expect(flag({ hasRedFlags: null })).toMatchObject({ kind: 'unknown' });
    expect(flag({ hasRedFlags: true })).toEqual({ kind: 'flag', flag: true });
    expect(flag({ hasRedFlags: true, redFlagsClearedBy: 'Dr Example' })).toEqual({ kind: 'flag', flag: false });
  });

  test('weeks since birth: 2026-09-09 to 2026-11-18 are ten', () => {
    const facts = factsOf((file) => ({
      injuries: file.injuries.map((one) => ({
        ...one,
        condition: 'postpartum',
        onset: '2026-09-09',
        status: 'current',
      })),
    }));
    expect(value(find(facts, 'history.weeksSincePostpartum'))).toBe(10);
  });
});

describe('jumps', () => {
  test('mechanics.md I1, I2: 0.35 m and 0.200 s give an index of 1.750 and a ratio of 2.672', () => {
    const flightTimeS = Math.sqrt((8 * 0.35) / 9.80665);
    const facts = factsOf(() => ({
      jumpTests: [jumpTest({ kind: 'drop', dropHeightM: 0.3 })],
      jumpTrials: [jump(1, { flightTimeS, contactTimeS: 0.2 })],
    }));
    expect(value(find(facts, 'jump.rsi', sampleId(101)))).toBeCloseTo(1.75, 3);
    expect(value(find(facts, 'jump.rsr', sampleId(101)))).toBeCloseTo(2.672, 3);
  });

  test('by definition: reach 2.62 m less standing reach 2.21 m is 41 cm, tagged as from standing', () => {
    const facts = factsOf(() => ({
      jumpTests: [jumpTest({ method: 'jump-and-reach', standingReachM: 2.21 })],
      jumpTrials: [jump(1, { jumpReachM: 2.62 })],
    }));
    const height = find(facts, 'jump.height.reach');
    expect(value(height)).toBeCloseTo(41, 6);
    expect(height?.height).toEqual({ reference: 'standing', method: 'jump-and-reach', arms: 'hips' });
  });

  test('mechanics.md 2.5: 40 cm and 72 kg give 3589.8 W by the countermovement equation', () => {
    const facts = factsOf((file) => ({
      athlete: { ...file.athlete, massKg: 72 },
      jumpTests: [jumpTest({ method: 'jump-and-reach', standingReachM: 2.2 })],
      jumpTrials: [jump(1, { jumpReachM: 2.6 })],
    }));
    expect(value(find(facts, 'jump.peakPowerEstimated'))).toBeCloseTo(3589.8, 1);
  });

  test('a reach below standing reach becomes unknown with the reason, never an error', () => {
    const facts = factsOf(() => ({
      jumpTests: [jumpTest({ method: 'jump-and-reach', standingReachM: 2.2 })],
      jumpTrials: [jump(1, { jumpReachM: 2.1 })],
    }));
    expect(why(find(facts, 'jump.height.reach'))).toContain('standing reach');
  });

  test('law: height goes with the square of flight time, 0.52 s against 0.56 s is −13.8 %', () => {
    const facts = factsOf(() => ({
      jumpTests: [jumpTest({ id: sampleId(90), heldOn: '2026-09-01' }), jumpTest({ id: sampleId(91) })],
      jumpTrials: [
        jump(1, { testId: sampleId(90), flightTimeS: 0.56 }),
        jump(2, { testId: sampleId(91), flightTimeS: 0.52 }),
      ],
    }));
    expect(value(find(facts, 'cmj.changePct'))).toBeCloseTo(100 * ((0.52 / 0.56) ** 2 - 1), 6);
  });

  test.each([
    ['arms', { arms: 'free' }],
    ['arms not recorded', { arms: null }],
    ['shoes', { shoes: false }],
    ['device', { device: 'mat' }],
  ] as const)('tests that differ in %s are not compared', (_, more) => {
    const facts = factsOf(() => ({
      jumpTests: [jumpTest({ id: sampleId(90), heldOn: '2026-09-01', ...more }), jumpTest({ id: sampleId(91) })],
      jumpTrials: [
        jump(1, { testId: sampleId(90), flightTimeS: 0.56 }),
        jump(2, { testId: sampleId(91), flightTimeS: 0.52 }),
      ],
    }));
    expect(why(find(facts, 'cmj.changePct'))).toContain('held in the same way');
  });

  test('a jump set aside does not count in the mean, its pain does', () => {
    const facts = factsOf(() => ({
      jumpTests: [jumpTest({})],
      jumpTrials: [
        jump(1, { flightTimeS: 0.5, painNrs: 0 }),
        jump(2, { flightTimeS: 0.4, painNrs: 4, isSetAside: true }),
      ],
    }));
    const test = sampleId(20);
    expect(value(find(facts, 'jump.height.flightTime', test))).toBeCloseTo(30.6458, 3);
    expect(value(find(facts, 'pain.jumpTest', test))).toBe(4);
  });

  test('by definition: 30, 32 and 34 cm scatter by 2 / 32 = 6.25 %', () => {
    const trials = [0.3, 0.32, 0.34].map((h, i) => jump(i, { flightTimeS: Math.sqrt((8 * h) / 9.80665) }));
    const facts = factsOf(() => ({ jumpTests: [jumpTest({})], jumpTrials: trials }));
    expect(value(find(facts, 'cmj.trialSpread'))).toBeCloseTo(6.25, 6);
  });
});

const rotation = (dominantSide: CaseFile['athlete']['dominantSide']) => (file: CaseFile) => ({
  athlete: { ...file.athlete, dominantSide },
  screeningResults: (
    [
      ['shoulder-internal-rotation', 'right', 35],
      ['shoulder-internal-rotation', 'left', 60],
      ['shoulder-external-rotation', 'right', 100],
      ['shoulder-external-rotation', 'left', 95],
    ] as const
  ).map(([itemId, side, deg], i) => ({
    id: sampleId(70 + i),
    sessionId: sampleId(10),
    itemId,
    side,
    valueSi: convert(deg, 'deg', 'rad'),
    grade: null,
    isPositive: null,
    painNrs: 0,
    note: '',
    ...UNSAID,
  })),
});

const hop = (left: number, right: number) =>
  factsOf((file) => ({
    screeningResults: (
      [
        ['left', left],
        ['right', right],
      ] as const
    ).map(([side, valueSi], i) => ({
      id: sampleId(80 + i),
      sessionId: sampleId(10),
      itemId: 'single-leg-hop',
      side,
      valueSi,
      grade: null,
      isPositive: null,
      painNrs: 0,
      note: '',
      ...UNSAID,
    })),
    injuries: file.injuries.filter((one) => one.region === 'ankle'),
  }));

describe('screening', () => {
  test('pain is a fact of its own, of the region of its test', () => {
    const pain = find(collectFacts(sampleCase()), 'pain.upper-limb', sampleId(13));
    expect(value(pain)).toBe(3);
    expect(pain?.label).toBe('Pain in raising the arm sideways');
  });

  test('by definition: 9.1 and 11.8 cm differ by 2.7 cm', () => {
    expect(value(find(collectFacts(sampleCase()), 'wblt.diff'))).toBeCloseTo(2.7, 6);
  });

  test('the error found for a difference itself stands, not that of both sides together', () => {
    const reading = find(collectFacts(sampleCase()), 'wblt.diff')?.value;
    // Chisholm et al. 2012: smallest detectable difference between the sides 1.5 cm, which is 1.96 √2 standard errors.
    const u = 0.015 / (1.96 * Math.SQRT2);
    expect(reading).toMatchObject({ kind: 'number', reading: { u: expect.closeTo(u, 4) } });
    expect(JSON.stringify(reading)).toContain('the error found for it');
  });

  test('not met on one side is the lowest grade, whatever is still open', () => {
    expect(find(collectFacts(sampleCase()), 'grade.lowest')?.value).toEqual({ kind: 'grade', grade: 'not-met' });
  });

  test('all met so far, one side open: the lowest grade is not known yet', () => {
    const facts = factsOf((file) => ({
      screeningResults: file.screeningResults
        .filter((one) => one.grade !== null && one.side !== 'left')
        .map((one) => ({ ...one, grade: 'met' as const })),
    }));
    expect(why(find(facts, 'grade.lowest'))).toContain('single-leg squat');
  });

  test('by definition: 35/100 against 60/95 is 25° of rotation, 20° of arc, 5° gained outward', () => {
    const facts = factsOf(rotation('right'));
    expect(value(find(facts, 'shoulder.irDeficit'))).toBeCloseTo(25, 9);
    expect(value(find(facts, 'shoulder.arcDeficit'))).toBeCloseTo(20, 9);
    expect(value(find(facts, 'shoulder.erGain'))).toBeCloseTo(5, 9);
  });

  test('law: with the other arm dominant the differences turn round', () => {
    expect(value(find(factsOf(rotation('left')), 'shoulder.irDeficit'))).toBeCloseTo(-25, 9);
  });

  test.each(['both', null] as const)('dominant side %s: the differences are not known, and why', (side) => {
    expect(why(find(factsOf(rotation(side)), 'shoulder.irDeficit'))).toContain('dominant');
  });

  test('hop symmetry: the injured side over the other, and never more than 100 %', () => {
    // The sample's ankle injury is on the left.
    expect(value(find(hop(1.2, 1.5), 'hop.lsi'))).toBeCloseTo(80, 9);
    expect(value(find(hop(1.5, 1.2), 'hop.lsi'))).toBe(100);
  });
});

const typed = (more: Partial<CaseFile['enteredMeasures'][number]>) => (file: CaseFile) => ({
  enteredMeasures: [
    {
      id: sampleId(60),
      caseId: file.case.id,
      trialId: sampleId(30),
      measureId: 'arm.elevation',
      phase: 'cocking',
      side: 'right' as const,
      takenOn: '2026-11-18',
      valueSi: convert(88, 'deg', 'rad'),
      uSi: null,
      flag: null,
      note: '',
      ...more,
    },
  ],
});

describe('typed values', () => {
  test('one for a trial is judged with the trial, and stands in place of a computed one', () => {
    const facts = factsOf(typed({})).filter(
      (fact) => fact.measure === 'arm.elevation' && fact.phase === 'cocking' && fact.side === 'right',
    );
    expect(facts).toHaveLength(1);
    expect(value(facts[0])).toBeCloseTo(88, 9);
    expect(facts[0]?.from).toEqual({ kind: 'movementTrial', id: sampleId(30) });
  });

  test('an impossible one is unknown, with the reason', () => {
    expect(why(find(factsOf(typed({ valueSi: 88 })), 'arm.elevation'))).toContain('possible');
  });

  test('one of a measure nobody knows is kept, and unknown', () => {
    expect(why(find(factsOf(typed({ measureId: 'arm.magic' })), 'arm.magic'))).toContain('does not know');
  });
});

test('every fact has a key of its own', () => {
  const keys = collectFacts(sampleCase()).map((fact) => fact.key);
  expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
});
