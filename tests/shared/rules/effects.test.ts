import { describe, expect, test } from 'vitest';
import { conditionEntry } from '../../../shared/knowledge/conditions/index.ts';
import { daysSince } from '../../../shared/rules/effects/daysSince.ts';
import { historyEffects } from '../../../shared/rules/effects/historyEffects.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
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
