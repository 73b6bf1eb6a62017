import { describe, expect, test } from 'vitest';
import { conditionEntry } from '../../../shared/knowledge/conditions/index.ts';
import { daysSince } from '../../../shared/rules/effects/daysSince.ts';
import { historyEffects } from '../../../shared/rules/effects/historyEffects.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { liftedBy } from '../../../shared/rules/effects/liftedBy.ts';
import type { Injury } from '../../../shared/model/injury.ts';
import { EXAMPLES } from '../../conformance/examples.ts';
import { injury } from './build.ts';

// Time since injury, clearance and restrictions count (promise 4; nine months: Grindem 2016, Br J Sports Med 50:804;
// the first days: conventions of this program).

const landing = SHIPPED_RULES.find(({ id }) => id === 'drop-landing/little-bend');
if (landing === undefined) throw new Error('no rule');
const effectsOf = (...args: [Parameters<typeof injury>[0], Parameters<typeof injury>[1], (string | null)?]) =>
  historyEffects(landing, [injury(args[0], args[1])], args[2] === undefined ? '2026-11-18' : args[2]);

describe('time since an injury', () => {
  test.each([
    ['2026-11-16', 'stop'],
    ['2026-11-13', 'modify'],
    ['2026-11', 'stop'],
    ['2026-10', 'modify'],
    ['2026', 'modify'],
    [null, 'modify'],
  ] as const)('an ankle sprained %s, judged on 18 November 2026: %s', (onset, effect) => {
    expect(effectsOf('ankle-sprain', { onset }).effects[0]?.effect).toBe(effect);
  });

  test('says how long, and whom to ask', () => {
    const { effects, trace } = effectsOf('ankle-sprain', { onset: '2026-11-16' });
    expect(effects[0]?.change).toContain(conditionEntry('ankle-sprain').clears);
    expect(trace.join(' ')).toMatch(/2\sdays old/);
  });

  test('cannot count where the day is not known', () => {
    expect(effectsOf('ankle-sprain', { onset: '2026-11-16' }, null).effects[0]?.effect).toBe('modify');
  });

  test('days of a month are counted from its end: at least so many have passed', () => {
    expect(daysSince('2026-10', '2026-11-18')).toBe(18);
    expect(daysSince('2024-02', '2024-03-01')).toBe(1);
    expect(daysSince('2026-11-18', '2026-11-18')).toBe(0);
    expect(daysSince('2026-11-19', '2026-11-18')).toBeNull();
  });
});

describe('clearance', () => {
  const cleared = { status: 'resolved', clearedBy: 'Dr Example' } as const;
  test('nine months after a cruciate ligament injury lifts its limits', () => {
    const { effects } = effectsOf('anterior-cruciate-ligament', {
      ...cleared,
      onset: '2025-03-01',
      clearedOn: '2025-12-01',
    });
    expect(effects).toMatchObject([{ effect: 'keep', change: '' }]);
  });

  test('sooner is asked about', () => {
    const { effects } = effectsOf('anterior-cruciate-ligament', {
      ...cleared,
      onset: '2025-03-01',
      clearedOn: '2025-08-01',
    });
    expect(effects[0]?.effect).toBe('modify');
    expect(effects[0]?.change).toMatch(/153\sdays after the injury, sooner than the 274/);
  });

  test('a restriction still written down holds beside a clearance', () => {
    const { restrictions } = effectsOf('ankle-sprain', {
      ...cleared,
      clearedOn: '2025-12-01',
      restrictions: 'No beach courts.',
    });
    expect(restrictions).toEqual(['Restriction on file: No beach courts.']);
  });
});

describe('a clearance is as long and as wide as it says (dossier on the unstable shoulder, section 13: who, role, for what, from when, until when)', () => {
  const cleared: Injury = {
    ...EXAMPLES.injury,
    status: 'resolved',
    onset: '2024',
    clearedBy: 'A physician',
    clearedOn: '2026-01-05',
    clearedUntil: null,
    clearedFor: '',
  };

  test.each([
    ['without an end', null, '2030-01-01', true],
    ['on its last day', '2026-06-30', '2026-06-30', true],
    ['the day after', '2026-06-30', '2026-07-01', false],
    ['on a day that is not known', '2026-06-30', null, false],
  ])('%s', (_when, clearedUntil, day, isLifted) => {
    expect(liftedBy({ ...cleared, clearedUntil }, day) !== null).toBe(isLifted);
  });

  test('one for something in particular asks for care with every suggestion of its region, and says for what', () => {
    const rule = SHIPPED_RULES.find(
      (one) => one.kind === 'intervention' && one.effects.some(({ condition }) => condition === cleared.condition),
    );
    if (rule === undefined) throw new Error('no such rule');
    const said = historyEffects(rule, [{ ...cleared, clearedFor: 'running' }], '2026-11-25').effects;
    expect(said).toMatchObject([{ effect: 'modify', change: expect.stringContaining('“running”') as string }]);
    expect(historyEffects(rule, [cleared], '2026-11-25').effects).toMatchObject([{ effect: 'keep' }]);
  });
});
