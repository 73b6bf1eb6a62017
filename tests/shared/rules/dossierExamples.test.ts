import { describe, expect, test } from 'vitest';
import { evaluateRules, type JudgingOptions } from '../../../shared/rules/evaluate.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import type { Fact } from '../../../shared/assess/assessment.ts';
import type { Injury } from '../../../shared/model/injury.ts';
import { ADULT_MAN, ADULT_WOMAN, fact, injury } from './build.ts';

// The five worked examples of ../shared/reference/rules-draft.json ("examples"), with the draft's rule ids in the titles.

const judge = (facts: readonly Fact[], history: readonly Injury[] = [], options: JudgingOptions = ADULT_MAN) =>
  evaluateRules(SHIPPED_RULES, facts, history, options).filter((one) => one.outcome !== 'not-assessed');
const ids = (findings: ReturnType<typeof judge>) => findings.map((one) => one.ruleId);

describe('rules-draft.json, examples', () => {
  test('js-09: jump shot, arm at 95° at release, anterior instability: the replacement and the deferral are printed, the intervention is not', () => {
    const arm = fact('arm.elevation', 95, { movement: 'basketball-jump-shot', phase: 'release' });
    const finding = judge([arm], [injury('anterior-shoulder-instability')]).find(
      (one) => one.ruleId === 'basketball-jump-shot/low-arm-at-release',
    );
    expect(finding?.outcome).toBe('replaced');
    expect(finding?.intervention).toContain('Work in front of the body and below shoulder height');
    expect(finding?.intervention).not.toContain('Reach-up finish');
    expect(finding?.withheld?.text).toContain('Reach-up finish');
    expect(finding?.defersTo).toContain('a physiotherapist or athletic trainer');
  });

  test('dl-04: two-foot landing, knee projection 14°, female: fires as borderline (13 ± 6.3), provisional', () => {
    const knee = fact('fppa', 14, { movement: 'drop-landing', phase: 'absorption' });
    const finding = judge([knee], [], ADULT_WOMAN).find((one) => one.ruleId === 'drop-landing/knee-inward');
    expect(finding?.outcome).toBe('borderline');
    expect(finding?.intervention).not.toBeNull();
    expect(finding?.tests[0]?.words).toContain('6.3°');
  });

  test('oh-10: rotation deficit 22°, arc deficit 1°: a monitor to be re-tested; neither the intervention nor the confirmation fires', () => {
    const findings = judge([
      fact('shoulder.irDeficit', 22),
      fact('shoulder.arcDeficit', 1),
      fact('athlete.throws', true),
      fact('pain.upper-limb', 0),
    ]);
    expect(ids(findings)).toEqual(['any/rotation-lost-arc-kept']);
    expect(findings[0]).toMatchObject({ kind: 'monitor', outcome: 'borderline' });
  });

  test('any-06: an emergency sign: it alone is printed, every intervention is hidden', () => {
    const findings = judge([
      fact('flag.emergency', true),
      fact('knee.flexPeak', 20, { movement: 'basketball-jump-shot', phase: 'preparation' }),
      fact('ball.releaseAngle', 40, { movement: 'basketball-jump-shot', phase: 'release' }),
    ]);
    const printed = findings.filter((one) => one.intervention !== null);
    expect(ids(printed)).toEqual(['any/emergency-sign']);
    expect(findings.filter((one) => one.outcome === 'stopped').map((one) => one.withheld?.referral)).toEqual([
      'An emergency sign is recorded.',
      'An emergency sign is recorded.',
    ]);
  });

  test('sc-08: squeeze pain 7 with a groin injury: referral with the groin stop text; the milder rules do not fire', () => {
    const findings = judge([fact('pain.squeezeNrs', 7)], [injury('groin')]);
    expect(ids(findings)).toEqual(['any/squeeze-severe']);
    expect(findings[0]?.outcome).toBe('referral');
    expect(findings[0]?.adjustments).toEqual(['No running, cutting or kicking until it has been assessed.']);
  });
});
