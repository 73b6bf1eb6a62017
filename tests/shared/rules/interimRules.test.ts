import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { asOf } from '../../../shared/assess/asOf.ts';
import type { Finding } from '../../../shared/assess/assessment.ts';
import { collectFacts } from '../../../shared/assess/collectFacts.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { liftedBy } from '../../../shared/rules/effects/liftedBy.ts';
import { evaluateRules } from '../../../shared/rules/evaluate.ts';
import { interimRules } from '../../../shared/rules/interimRules.ts';
import { keptRules } from '../../../shared/rules/rulePack.ts';
import { EFFECTS, type Rule } from '../../../shared/rules/rule.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { seededCases } from '../../bench/seededCases.ts';

// Laws of promise 4 while an update waits: whatever the earlier rules were, nothing is laxer than the new rules are.

const cases = seededCases(40).map((file) => ({ file, facts: collectFacts(file) }));
const judge = (rules: readonly Rule[], { file, facts }: (typeof cases)[number]): Finding[] =>
  evaluateRules(rules, facts, file.injuries, {
    referenceSex: file.athlete.referenceSex,
    birthDate: file.athlete.birthDate,
    asOf: asOf(file),
  });
const isAlert = ({ kind }: { readonly kind: string }) => kind === 'referral' || kind === 'caution';

/** Rules as they may once have been: some missing, some limits elsewhere, some effects of injuries other. */
const earlier = fc
  .array(
    fc.record({
      fate: fc.constantFrom('same', 'gone', 'moved', 'other effects'),
      shift: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
      effect: fc.constantFrom(...EFFECTS),
    }),
    {
      minLength: SHIPPED_RULES.length,
      maxLength: SHIPPED_RULES.length,
    },
  )
  .map((fates) =>
    SHIPPED_RULES.flatMap((rule, i): Rule[] => {
      const { fate, shift, effect } = fates[i] ?? { fate: 'same', shift: 1, effect: 'keep' };
      if (fate === 'gone') return [];
      if (fate === 'moved') {
        return [
          {
            ...rule,
            all: rule.all.map((one) =>
              typeof one.threshold === 'number' ? { ...one, threshold: one.threshold * shift } : one,
            ),
          },
        ];
      }
      if (fate === 'other effects') {
        return [
          {
            ...rule,
            effects: rule.effects.map((one) => ({ ...one, effect, change: effect === 'keep' ? '' : 'As it was.' })),
          },
        ];
      }
      return [rule];
    }),
  );

test('rules that are kept read back as they were', () => {
  expect(keptRules(JSON.parse(JSON.stringify(SHIPPED_RULES)))).toEqual(
    SHIPPED_RULES.map((rule) => ({ eases: [], replaces: null, ...rule })),
  );
  expect(keptRules([{ id: 'x' }])).toBeNull();
});

test('with the same rules before and after, nothing differs', () => {
  for (const one of cases)
    expect(judge(interimRules(SHIPPED_RULES, SHIPPED_RULES), one)).toEqual(judge(SHIPPED_RULES, one));
});

test('100 earlier sets of rules: every referral and caution of the new ones and of the earlier ones speaks', () => {
  fc.assert(
    fc.property(earlier, fc.constantFrom(...cases), (held, one) => {
      const spoken = new Set(
        judge(interimRules(held, SHIPPED_RULES), one)
          .filter(isAlert)
          .map(({ key }) => key),
      );
      for (const rules of [SHIPPED_RULES, held]) {
        const alerts = judge(rules, one).filter((found) => isAlert(found) && found.outcome !== 'not-assessed');
        for (const { key } of alerts) expect(spoken).toContain(key);
      }
    }),
    { numRuns: 100 },
  );
});

test('100 earlier sets of rules: no advice is printed that the new rules or the earlier ones stop for an injury', () => {
  fc.assert(
    fc.property(earlier, fc.constantFrom(...cases), (held, one) => {
      const inForce = conditionsOf(one.file);
      for (const found of judge(interimRules(held, SHIPPED_RULES), one)) {
        if (isAlert(found) || found.outcome === 'not-assessed') continue;
        const stated = [...held, ...SHIPPED_RULES]
          .filter(({ id }) => id === found.ruleId)
          .flatMap(({ effects }) => effects)
          .filter(({ condition }) => inForce.has(condition));
        if (stated.some(({ effect }) => effect === 'stop')) expect(found.intervention).toBeNull();
        if (stated.some(({ effect }) => effect === 'stop' || effect === 'replace')) {
          expect(found.outcome).not.toBe('confirmed');
          expect(found.drill).toBeNull();
        }
      }
    }),
    { numRuns: 100 },
  );
});

function conditionsOf(file: CaseFile): ReadonlySet<string> {
  return new Set(file.injuries.filter((one) => liftedBy(one, asOf(file)) === null).map(({ condition }) => condition));
}
