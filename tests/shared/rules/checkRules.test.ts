import { describe, expect, test } from 'vitest';
import { DRILLS } from '../../../shared/knowledge/drills/index.ts';
import { checkRules } from '../../../shared/rules/checkRules.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import type { Rule } from '../../../shared/rules/rule.ts';
import { type Bent, bend, rule } from './build.ts';

// What the checker must refuse is listed in the brief of the judging (knowledge as data): source, measure, unit,
// coverage, contradiction, missing effect, length. Broken copies are made of one rule; nothing else is checked here.

const kneeConditions = [
  'anterior-cruciate-ligament',
  'patellar-tendinopathy',
  'ankle-sprain',
  'hamstring',
  'groin',
  'bone-stress',
  'concussion',
  'pregnancy',
  'postpartum',
  'cardiac-red-flag',
] as const;
const sound = rule({
  intervention: 'Bend further, slowly.',
  drill: DRILLS['deeper-dip'],
  retest: { measure: 'landing.kneeFlexPeak', afterDays: 28 },
  effects: kneeConditions.map((condition) => ({ condition, effect: 'keep', change: '', unsafeFor: [] }) as const),
});
const problemsOf = (broken: Rule, ...others: Rule[]) =>
  checkRules([broken, ...others], []).map(({ about, problem }) => `${about}: ${problem}`);

test('the rules that come with the program pass', () => {
  expect(checkRules(SHIPPED_RULES)).toEqual([]);
  expect(SHIPPED_RULES.length).toBeGreaterThanOrEqual(30);
});

/** Movements are not under test here but for the place of a rule, so the list is the real one. */
const inPlace = (broken: Rule) =>
  checkRules([broken])
    .filter(({ about }) => about === broken.id)
    .map(({ problem }) => problem);

test('a sound rule has nothing against it', () => {
  expect(inPlace(sound)).toEqual([]);
});

test('what a drill leaves out is not asked of the body', () => {
  expect(inPlace(bend(sound, { intervention: 'Squats without a jump, before any throwing; no sprints.' }))).toEqual([]);
});

describe('refuses, and says why', () => {
  test.each<[string, Bent, RegExp]>([
    ['a missing source', { sources: [] }, /no source/],
    [
      'a convention that is not called one',
      { sources: [{ cite: 'A paper', status: 'published' }] },
      /convention must be named/,
    ],
    ['a published basis without a published source', { basis: 'published' }, /no source is/],
    [
      'an unknown measure',
      { all: [{ measure: 'knee.magic', comparator: '<', threshold: 1, unit: 'deg' }] },
      /no measure "knee.magic"/,
    ],
    [
      'a unit of another kind',
      { all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: 1, unit: 'cm' }] },
      /measured in rad, its threshold in cm/,
    ],
    [
      'a number without unit',
      { all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: 1, unit: null }] },
      /no unit/,
    ],
    [
      'a flag held against a number',
      { all: [{ measure: 'flag.emergency', comparator: 'is', threshold: 3, unit: null }] },
      /is a flag/,
    ],
    [
      'a grade that does not exist',
      { all: [{ measure: 'squat.singleLegGrade', comparator: 'is', threshold: 'good', unit: null }] },
      /is a grade/,
    ],
    [
      'a range with one limit',
      { all: [{ measure: 'landing.kneeFlexPeak', comparator: 'between', threshold: 45, unit: 'deg' }] },
      /two limits/,
    ],
    [
      'a range the wrong way round',
      { all: [{ measure: 'landing.kneeFlexPeak', comparator: 'between', threshold: [50, 45], unit: 'deg' }] },
      /wrong way round/,
    ],
    ['no test at all', { all: [] }, /no test/],
    ['an unknown region', { region: 'wing' as never }, /no region "wing"/],
    [
      'an effect for an unknown condition',
      { effects: [...sound.effects, { condition: 'hiccups' as never, effect: 'keep', change: '', unsafeFor: [] }] },
      /no condition "hiccups"/,
    ],
    [
      'a limit that is not a number',
      { all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: Number.NaN, unit: 'deg' }] },
      /not a number/,
    ],
    ['an unknown movement', { movement: 'moon-walk' }, /no movement "moon-walk"/],
    ['a phase of another movement', { phase: 'cocking' }, /has no phase "cocking"/],
    ['a phase that "any" does not have', { movement: 'any', phase: 'landing' }, /no phase "landing"/],
    ['an unknown measure to test again', { retest: { measure: 'knee.magic', afterDays: 7 } }, /to test again/],
    ['a re-test on the same day', { retest: { measure: 'landing.drift', afterDays: 0 } }, /a day away/],
    ['a finding that is too long', { finding: 'x'.repeat(161) }, /longer than 160/],
    ['an intervention that is too long', { intervention: 'x'.repeat(281) }, /longer than 280/],
    ['shouting', { finding: 'Bend more!' }, /exclamation/],
    ['an unknown slot', { finding: 'The knee bends {much}.' }, /unknown slot \{much\}/],
    ['an intervention that says nothing', { intervention: ' ' }, /does not say to the .* what to do/],
    ['a confirmation that suggests something', { kind: 'confirmation' }, /suggests nothing/],
    ['a confirmation with a dose', { kind: 'confirmation', intervention: '' }, /a confirmation has no dose/],
    ['an intervention without a drill', { drill: null }, /names no drill/],
    ['a dose without a number', { drill: { ...DRILLS['deeper-dip'], dose: 'often' } }, /names no number/],
    ['a drill that never gets harder', { drill: { ...DRILLS['deeper-dip'], progression: '' } }, /gets harder/],
    ['an intervention without a re-test', { retest: null }, /what to measure again/],
    [
      'a trade word that the athlete is not told the meaning of',
      { wording: { ...sound.wording, athlete: { finding: 'Your dorsiflexion is low.', intervention: 'Bend.' } } },
      /the finding for the athlete does not explain “dorsiflexion”/,
    ],
    [
      'a trade word in what an injury puts in place of a drill',
      {
        effects: [
          ...sound.effects.slice(1),
          {
            condition: 'anterior-cruciate-ligament',
            effect: 'replace',
            change: 'Isometric work only.',
            unsafeFor: [],
          },
        ],
      },
      /the change for the athlete does not explain “Isometric”/,
    ],
    [
      'an examination of a clinician, coached',
      { intervention: 'Do the relocation test each morning.' },
      /coaches what only a clinician does: relocation test/,
    ],
    [
      'words for the clinician left out',
      { wording: { ...sound.wording, clinician: { finding: ' ', intervention: 'Bend.' } } },
      /says nothing to the clinician/,
    ],
    ['nobody who decides', { defersTo: [] }, /who decides/],
    [
      'silence about an injury of the region',
      { effects: sound.effects.slice(1) },
      /says nothing for Knee, anterior cruciate ligament/,
    ],
    ['two effects for one condition', { effects: [...sound.effects, ...sound.effects.slice(0, 1)] }, /has two effects/],
    [
      'an effect without wording',
      {
        effects: [
          ...sound.effects.slice(1),
          { condition: 'anterior-cruciate-ligament', effect: 'stop', change: '', unsafeFor: [] },
        ],
      },
      /needs a wording/,
    ],
    [
      'a change unsafe for its own condition',
      {
        effects: [
          ...sound.effects.slice(1),
          {
            condition: 'anterior-cruciate-ligament',
            effect: 'replace',
            change: 'Rest.',
            unsafeFor: ['anterior-cruciate-ligament'],
          },
        ],
      },
      /unsafe for it/,
    ],
    [
      'praise of a knee that moves inward',
      {
        kind: 'confirmation',
        intervention: '',
        finding: 'Good.',
        all: [{ measure: 'fppa', comparator: '>', threshold: 20, unit: 'deg' }],
      },
      /it confirms a knee that moves inward/,
    ],
    [
      'a throw slipped into the advice for a knee',
      { intervention: 'Land softly, then throw on the run.' },
      /asks for an overhead throw, hit or shot and does not limit it for Shoulder instability, posterior/,
    ],
    [
      'a landing waved through with a bone stress injury',
      { intervention: 'Quiet landings from a box.' },
      /asks for a jump, a landing or a run and does not limit it for Bone stress injury/,
    ],
    [
      'praise of pain',
      {
        kind: 'confirmation',
        intervention: '',
        finding: 'Good.',
        all: [{ measure: 'pain.nrs', comparator: '<=', threshold: 3, unit: '{score}' }],
      },
      /it confirms pain/,
    ],
  ])('%s', (_, broken, words) => {
    expect(inPlace(bend(sound, broken)).join('; ')).toMatch(words);
  });

  test('an id used twice', () => {
    expect(problemsOf(sound, sound).join('; ')).toMatch(/test\/stiff: the id is used twice/);
  });

  test('a confirmation of what another rule would change', () => {
    const praise = rule({
      id: 'test/praise',
      kind: 'confirmation',
      intervention: '',
      all: [{ measure: 'landing.kneeFlexPeak', comparator: '<=', threshold: 0.8, unit: 'rad' }],
    });
    expect(problemsOf(sound, praise).join('; ')).toMatch(/test\/praise: it confirms what test\/stiff would change/);
  });

  test('a phase without a rule', () => {
    const problems = checkRules(
      SHIPPED_RULES.filter((one) => one.movement !== 'handball-jump-throw' || one.phase !== 'cocking'),
    );
    expect(problems).toEqual([
      { about: 'handball-jump-throw/cocking', problem: 'the phase has no intervention' },
      { about: 'handball-jump-throw/cocking', problem: 'the phase has no confirmation' },
    ]);
  });
});
