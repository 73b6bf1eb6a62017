import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../shared/assess/assessment.ts';
import { evaluateRules } from '../../../shared/rules/evaluate.ts';
import { ADULT_MAN, ADULT_WOMAN, fact, injury, rule } from './build.ts';

// Expectations are those of the design ("Promises" 3 and 4) and of the evaluation order in ../shared/reference/rules-draft.json.

const jump = { movement: 'countermovement-jump', phase: 'landing', side: 'left' } as const;
const knee = (deg: number, u?: number) =>
  fact('landing.kneeFlexPeak', deg, { ...jump, ...(u === undefined ? {} : { u }) });
const noPain = fact('pain.nrs', 0, { movement: 'countermovement-jump' });
const ok = rule({
  id: 'test/soft',
  kind: 'confirmation',
  intervention: '',
  finding: 'Soft.',
  all: [{ measure: 'landing.kneeFlexPeak', comparator: '>=', threshold: 45, unit: 'deg' }],
});
const outcomes = (findings: readonly Finding[]) => findings.map((one) => `${one.ruleId} ${one.outcome}`);

describe('one rule, one fact', () => {
  test('fires past the limit, and puts value, limit and side into the wording', () => {
    const [finding] = evaluateRules([rule()], [knee(30)], [], ADULT_WOMAN);
    expect(finding?.outcome).toBe('intervention');
    expect(finding?.finding).toBe('The left knee bends to 30.0°, less than 45°.');
    expect(finding?.intervention).toBe('Land softly.');
    expect(finding?.trialId).toBe('trial');
  });

  test('is silent on the other side of the limit', () => {
    expect(evaluateRules([rule()], [knee(60)], [], ADULT_WOMAN)).toEqual([]);
  });

  test('says "not assessed", once and with what is needed, where nothing is recorded', () => {
    const findings = evaluateRules([rule(), ok], [noPain], [], ADULT_WOMAN);
    expect(outcomes(findings)).toEqual(['test/stiff not-assessed']);
    expect(findings[0]?.needed).toBe('Knee flexion, deepest after landing: not recorded.');
    expect(findings[0]?.intervention).toBeNull();
  });

  test('says nothing of a movement that was never filmed', () => {
    expect(evaluateRules([rule()], [fact('hop.lsi', 95)], [], ADULT_WOMAN)).toEqual([]);
  });

  test('an unknown fact keeps its reason', () => {
    const lost = fact('landing.kneeFlexPeak', { kind: 'unknown', reason: 'the ankle is out of the picture' }, jump);
    expect(evaluateRules([rule()], [lost], [], ADULT_WOMAN)[0]?.needed).toContain('the ankle is out of the picture');
  });

  test('refuses a reading that is not finite', () => {
    const bad = knee(30);
    const nan = { ...bad, value: { kind: 'number', reading: { ...readingOf(bad), value: Number.NaN } } } as const;
    expect(() => evaluateRules([rule()], [nan], [], ADULT_WOMAN)).toThrow(/finite/);
  });
});

describe('close to the limit', () => {
  test('within the error of the test, 4.24°: borderline, provisional, with the chance', () => {
    const [finding] = evaluateRules([rule()], [knee(43)], [], ADULT_WOMAN);
    expect(finding?.outcome).toBe('borderline');
    expect(finding?.intervention).toBe('Land softly.');
    // Normal with SD 4.24 / 1.96 = 2.163°: z = 2 / 2.163 = 0.925, table value about 0.82.
    expect(finding?.tests[0]?.chance).toBeCloseTo(0.822, 2);
    expect(finding?.trace.at(-1)).toContain('measure again');
  });

  test('a wider uncertainty of its own counts instead: 1.96 × 5°', () => {
    const [finding] = evaluateRules([rule()], [knee(36, 5)], [], ADULT_WOMAN);
    expect(finding?.outcome).toBe('borderline');
    expect(finding?.tests[0]?.words).toContain('its own uncertainty');
  });

  test('a confirmation close to the limit is borderline too', () => {
    expect(outcomes(evaluateRules([ok], [knee(46), noPain], [], ADULT_WOMAN))).toEqual(['test/soft borderline']);
  });

  test('a caution is borderline by its own uncertainty, and then silences nothing', () => {
    const doubt = rule({
      id: 'test/clip',
      kind: 'caution',
      phase: 'whole',
      all: [{ measure: 'ball.gravityFound', comparator: 'outside', threshold: [8.8, 10.8], unit: 'm/s2' }],
    });
    const judge = (u: number) => {
      const found = fact('ball.gravityFound', 12.4, { movement: 'countermovement-jump', u });
      return outcomes(evaluateRules([ok, doubt], [knee(60), noPain, found], [], ADULT_WOMAN));
    };
    expect(judge(0.1)).toEqual(['test/clip caution']);
    expect(judge(2)).toEqual(['test/clip borderline', 'test/soft confirmed']);
  });

  test('a referral is never softened', () => {
    const referral = rule({ id: 'test/pain', kind: 'referral' });
    expect(evaluateRules([referral], [knee(44)], [], ADULT_WOMAN)[0]?.outcome).toBe('referral');
  });
});

describe('who is judged', () => {
  const bySex = rule({ all: [{ measure: 'fppa', comparator: '>', threshold: { female: 13, male: 8 }, unit: 'deg' }] });
  const inward = fact('fppa', 25, jump);

  test('sex-specific limits follow the reference values chosen', () => {
    const between = fact('fppa', 10, jump);
    expect(evaluateRules([bySex], [between], [], ADULT_MAN)).toHaveLength(1);
    expect(evaluateRules([bySex], [between], [], ADULT_WOMAN)).toHaveLength(0);
  });

  test.each([null, 'no-reference'] as const)(
    'with reference values %s there is no verdict, and both bands are named',
    (referenceSex) => {
      const [finding] = evaluateRules([bySex], [inward], [], { referenceSex, birthDate: null, asOf: null });
      expect(finding?.outcome).toBe('not-assessed');
      expect(finding?.needed).toContain('female reference more than 13°, male more than 8°');
    },
  );

  test('under 16 adult reference values are off, by the day of the reading', () => {
    const [young] = evaluateRules([bySex], [inward], [], {
      referenceSex: 'female',
      birthDate: '2010-11-19',
      asOf: null,
    });
    expect(young?.outcome).toBe('not-assessed');
    expect(young?.needed).toContain('under 16');
    const [sixteen] = evaluateRules([bySex], [inward], [], {
      referenceSex: 'female',
      birthDate: '2010-11-18',
      asOf: null,
    });
    expect(sixteen?.outcome).toBe('intervention');
  });
});

describe('injuries', () => {
  const knees = rule({
    effects: [
      { condition: 'bone-stress', effect: 'stop', change: 'No impact.', unsafeFor: [] },
      {
        condition: 'patellar-tendinopathy',
        effect: 'replace',
        change: 'Slow heavy work.',
        unsafeFor: ['anterior-cruciate-ligament'],
      },
      { condition: 'anterior-cruciate-ligament', effect: 'modify', change: 'Two legs only.', unsafeFor: [] },
      { condition: 'groin', effect: 'keep', change: '', unsafeFor: [] },
    ],
  });
  const judge = (...history: Parameters<typeof evaluateRules>[2]) => {
    const [finding] = evaluateRules([knees], [knee(30)], history, ADULT_WOMAN);
    if (finding === undefined) throw new Error('nothing found');
    return finding;
  };

  test('stop: nothing is suggested, and what was held back is kept with the reason and who clears it', () => {
    const finding = judge(injury('bone-stress'));
    expect(finding).toMatchObject({ outcome: 'stopped', intervention: null, adjustments: [] });
    expect(finding.withheld).toMatchObject({
      text: 'Land softly.',
      because: [{ condition: 'bone-stress', change: 'No impact.', clears: 'a sports doctor' }],
    });
  });

  test('replace: the other text is printed instead', () => {
    const finding = judge(injury('patellar-tendinopathy'));
    expect(finding).toMatchObject({ outcome: 'replaced', intervention: 'Slow heavy work.' });
    expect(finding.withheld?.text).toBe('Land softly.');
  });

  test('modify: both are printed', () => {
    const finding = judge(injury('anterior-cruciate-ligament'));
    expect(finding).toMatchObject({
      outcome: 'modified',
      intervention: 'Land softly.',
      adjustments: ['Two legs only.'],
    });
  });

  test('keep: nothing changes, and the trace says so', () => {
    const finding = judge(injury('groin'));
    expect(finding.outcome).toBe('intervention');
    expect(finding.trace.join(' ')).toContain('Groin, right, since 2025-03: leaves this as it is.');
  });

  test('the strictest wins: stop before replace', () => {
    expect(judge(injury('patellar-tendinopathy'), injury('bone-stress')).outcome).toBe('stopped');
  });

  test('a replacement that is unsafe for another injury on file becomes a stop', () => {
    const finding = judge(injury('patellar-tendinopathy'), injury('anterior-cruciate-ligament'));
    expect(finding).toMatchObject({ outcome: 'stopped', intervention: null });
    expect(finding.trace.join(' ')).toContain('not safe for Knee, anterior cruciate ligament');
  });

  test('cleared by someone, on a day: the limits are lifted, and the trace says by whom', () => {
    const cleared = { status: 'resolved', clearedBy: 'Dr Example', clearedOn: '2026-01-10' } as const;
    const finding = judge(injury('bone-stress', cleared));
    expect(finding.outcome).toBe('intervention');
    expect(finding.trace.join(' ')).toContain('cleared by Dr Example on 2026-01-10');
  });

  test.each([
    ['no clearance', { status: 'resolved' }],
    ['no name', { status: 'resolved', clearedBy: ' ', clearedOn: '2026-01-10' }],
    ['no day', { status: 'resolved', clearedBy: 'Dr Example' }],
    ['a clearance older than the injury', { status: 'resolved', clearedBy: 'Dr Example', clearedOn: '2025-02-01' }],
    ['a clearance while still recovering', { status: 'recovering', clearedBy: 'Dr Example', clearedOn: '2026-01-10' }],
  ] as const)('resolved with %s lifts nothing', (_, more) => {
    expect(judge(injury('bone-stress', more)).outcome).toBe('stopped');
  });

  test('an injury of the same limb that the rule does not name asks for agreement first', () => {
    const finding = judge(injury('other', { region: 'ankle', diagnosis: 'old fracture' }));
    expect(finding).toMatchObject({ outcome: 'modified', intervention: 'Land softly.' });
    expect(finding.adjustments[0]).toContain('Agree this first');
    expect(finding.adjustments[0]).toContain('old fracture');
  });

  test('an injury of another limb has no say', () => {
    expect(judge(injury('other', { region: 'wrist-hand' })).outcome).toBe('intervention');
  });

  test('restrictions in force are printed beside what is suggested', () => {
    const finding = judge(injury('groin', { restrictions: 'No jumps on hard floors.' }));
    expect(finding).toMatchObject({
      outcome: 'modified',
      adjustments: ['Restriction on file: No jumps on hard floors.'],
    });
  });
});

describe('referrals come first', () => {
  const flag = rule({
    id: 'test/flag',
    kind: 'referral',
    movement: 'any',
    phase: 'session',
    region: 'ankle',
    all: [{ measure: 'flag.focalBonePain', comparator: 'is', threshold: true, unit: null }],
    finding: 'Bone pain.',
    intervention: 'Refer.',
  });
  const hurts = fact('flag.focalBonePain', true);

  test('a referral of the leg holds back what the knee would be advised, and says why', () => {
    const findings = evaluateRules([rule(), flag], [knee(30), hurts], [], ADULT_WOMAN);
    expect(outcomes(findings)).toEqual(['test/flag referral', 'test/stiff stopped']);
    expect(findings[1]?.withheld?.referral).toBe('Bone pain.');
  });

  test('a referral of the arm does not', () => {
    const arm = { ...flag, region: 'elbow' } as const;
    expect(outcomes(evaluateRules([rule(), arm], [knee(30), hurts], [], ADULT_WOMAN))).toContain(
      'test/stiff intervention',
    );
  });

  test('a referral within another movement does not', () => {
    const other = { ...flag, movement: 'handball-jump-throw', phase: 'release' };
    const there = fact('flag.focalBonePain', true, { movement: 'handball-jump-throw', record: 'throw' });
    expect(outcomes(evaluateRules([rule(), other], [knee(30), there], [], ADULT_WOMAN))).toContain(
      'test/stiff intervention',
    );
  });
});

const drift = (phase: string) => fact('landing.drift', 40, { ...jump, phase, side: 'none' });

const drifts = (phase: string) =>
  rule({
    id: 'test/other',
    phase,
    all: [{ measure: 'landing.drift', comparator: '>', threshold: 10, unit: 'cm' }],
  });
const driftIn = (phase: string) => [knee(60), noPain, drift(phase)];

describe('confirmations', () => {
  test('stand where the measure is in order and pain was recorded as 0', () => {
    expect(outcomes(evaluateRules([ok], [knee(60), noPain], [], ADULT_WOMAN))).toEqual(['test/soft confirmed']);
  });

  test('are not assessed where pain was not recorded', () => {
    const [finding] = evaluateRules([ok], [knee(60)], [], ADULT_WOMAN);
    expect(finding?.outcome).toBe('not-assessed');
    expect(finding?.needed).toContain('Pain');
  });

  test('read the pain of a jump test as they read that of a film: 0 lets them stand, any more does not', () => {
    const outcomes = [0, 1].map((nrs) => {
      const pain = fact('pain.jumpTest', nrs, { movement: 'countermovement-jump' });
      return evaluateRules([ok], [knee(60), pain], [], ADULT_WOMAN).map((one) => one.outcome);
    });
    expect(outcomes).toEqual([['confirmed'], []]);
  });

  test('fall silent with pain', () => {
    const pain = fact('pain.nrs', 1, { movement: 'countermovement-jump' });
    expect(evaluateRules([ok], [knee(60), pain], [], ADULT_WOMAN)).toEqual([]);
  });

  test('fall silent where anything else fired in the phase, and not for another phase', () => {
    expect(outcomes(evaluateRules([ok, drifts('landing')], driftIn('landing'), [], ADULT_WOMAN))).toEqual([
      'test/other intervention',
    ]);
    expect(outcomes(evaluateRules([ok, drifts('flight')], driftIn('flight'), [], ADULT_WOMAN))).toEqual([
      'test/other intervention',
      'test/soft confirmed',
    ]);
  });

  test('fall silent in every movement while a referral for the whole body stands', () => {
    const alarm = rule({
      id: 'test/alarm',
      kind: 'referral',
      movement: 'any',
      phase: 'session',
      region: 'whole-body',
      all: [{ measure: 'pain.nrs', comparator: '>', threshold: 5, unit: '{score}' }],
    });
    const elsewhere = fact('pain.nrs', 7, { movement: 'handball-jump-throw', record: 'throw' });
    expect(outcomes(evaluateRules([ok, alarm], [knee(60), noPain, elsewhere], [], ADULT_WOMAN))).toEqual([
      'test/alarm referral',
    ]);
  });

  test('fall silent where an injury stops or replaces them', () => {
    const guarded = {
      ...ok,
      effects: [{ condition: 'bone-stress', effect: 'stop', change: 'No.', unsafeFor: [] }],
    } as const;
    expect(evaluateRules([guarded], [knee(60), noPain], [injury('bone-stress')], ADULT_WOMAN)).toEqual([]);
  });
});

describe('what is judged against what', () => {
  test('each trial by itself', () => {
    const second = fact('landing.kneeFlexPeak', 30, { ...jump, record: 'trial-2' });
    const findings = evaluateRules([rule()], [knee(60), second], [], ADULT_WOMAN);
    expect(findings.map((one) => one.trialId)).toEqual(['trial-2']);
  });

  test('each side by itself', () => {
    const right = fact('landing.kneeFlexPeak', 60, { ...jump, side: 'right' });
    expect(evaluateRules([rule()], [knee(30), right], [], ADULT_WOMAN).map((one) => one.side)).toEqual(['left']);
  });

  test('outside movements only the newest reading counts', () => {
    const hop = rule({
      id: 'test/hop',
      movement: 'any',
      phase: 'profile',
      all: [{ measure: 'hop.lsi', comparator: '<', threshold: 90, unit: '%' }],
    });
    const old = fact('hop.lsi', 70, { record: 'march', takenOn: '2026-03-01' });
    const now = fact('hop.lsi', 99, { record: 'june', takenOn: '2026-06-01' });
    expect(evaluateRules([hop], [old, now], [], ADULT_WOMAN)).toEqual([]);
    expect(evaluateRules([hop], [old], [], ADULT_WOMAN)).toHaveLength(1);
  });

  test('a second measure is read on the side of the first', () => {
    const both = rule({
      all: [
        { measure: 'wblt.distance', comparator: '<', threshold: 9, unit: 'cm' },
        { measure: 'hop.distance', comparator: '<', threshold: 100, unit: 'cm' },
      ],
      movement: 'any',
      phase: 'profile',
    });
    const facts = [
      fact('wblt.distance', 5, { side: 'left' }),
      fact('hop.distance', 150, { side: 'left' }),
      fact('hop.distance', 50, { side: 'right' }),
    ];
    expect(evaluateRules([both], facts, [], ADULT_WOMAN)).toEqual([]);
  });

  test('a superseded rule is not used', () => {
    expect(evaluateRules([rule({ supersededBy: 'test/newer' })], [knee(30)], [], ADULT_WOMAN)).toEqual([]);
  });
});

function readingOf(one: ReturnType<typeof fact>) {
  if (one.value.kind !== 'number') throw new Error('not a number');
  return one.value.reading;
}
