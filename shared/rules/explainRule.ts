import { BASIS_WORDS, EVIDENCE_WORDS } from '../assess/words.ts';
import { counted } from '../format/number.ts';
import { conditionEntry } from '../knowledge/conditions/index.ts';
import { measureById } from '../knowledge/measures/index.ts';
import { movementById } from '../knowledge/movements/index.ts';
import { askedWords, gradeWords, limitWords } from './checks/words.ts';
import { byReader } from './byReader.ts';
import { EFFECTS, type Reader, type Rule, type Test } from './rule.ts';

/** One rule in words, for people who want to know why the program says what it says. */
export interface RuleInWords {
  readonly looksAt: string;
  readonly tests: readonly string[];
  readonly says: Readonly<Record<Reader, string>>;
  readonly suggests: Readonly<Record<Reader, string>> | null;
  /** How much of it, and how it gets harder. */
  readonly dose: string | null;
  readonly doseFrom: string | null;
  readonly retest: string | null;
  readonly basis: string;
  readonly evidence: string;
  readonly sources: readonly string[];
  /** Strictest first. */
  readonly effects: readonly string[];
  readonly decides: readonly string[];
}

export function explainRule(rule: Rule): RuleInWords {
  const { retest } = rule;
  const isSilent = rule.wording.practitioner.intervention === '';
  return {
    looksAt: `${placeWords(rule)}; load on the ${rule.region.replaceAll('-', ' ')}`,
    tests: rule.all.map(testWords),
    says: byReader((reader) => rule.wording[reader].finding),
    suggests: isSilent ? null : byReader((reader) => rule.wording[reader].intervention),
    dose: rule.drill === null ? null : `${rule.drill.label}: ${rule.drill.dose}. ${rule.drill.progression}`,
    doseFrom: rule.drill === null ? null : `${rule.drill.source.cite} (${rule.drill.source.status})`,
    retest: retest === null ? null : `${labelOf(retest.measure)} after ${counted(retest.afterDays, 'day')}`,
    basis: BASIS_WORDS[rule.basis],
    evidence: EVIDENCE_WORDS[rule.evidence],
    sources: rule.sources.map(({ cite, status }) => `${cite} (${status})`),
    effects: rule.effects.toSorted((a, b) => EFFECTS.indexOf(a.effect) - EFFECTS.indexOf(b.effect)).map(effectWords),
    decides: rule.defersTo,
  };
}

function placeWords({ movement, phase }: Rule): string {
  if (movement === 'any') return phase === 'profile' ? 'the athlete’s profile' : 'anything done in the session';
  const known = movementById(movement);
  const ofPhase = known?.phases.find((one) => one.id === phase)?.label ?? 'whole movement';
  return `${known?.label ?? movement}, ${ofPhase.toLowerCase()}`;
}

function testWords({ measure, comparator, threshold, unit }: Test): string {
  return `${labelOf(measure)}: ${limitsInWords()}`;

  function limitsInWords(): string {
    if (typeof threshold === 'boolean') return threshold ? 'yes' : 'no';
    if (typeof threshold === 'string') return gradeWords(threshold);
    // Only flags and grades have no unit.
    if (unit === null) return JSON.stringify(threshold);
    if (typeof threshold === 'number') return askedWords(comparator, [threshold], unit);
    if ('female' in threshold)
      return `${askedWords(comparator, [threshold.female], unit)} (women), ${limitWords(threshold.male, unit)} (men)`;
    return askedWords(comparator, threshold, unit);
  }
}

function labelOf(measure: string): string {
  return measureById(measure)?.label ?? measure;
}

function effectWords({ condition, effect, change, unsafeFor }: Rule['effects'][number]): string {
  const name = conditionEntry(condition).label;
  if (effect === 'keep') return `${name}: leaves it as it is`;
  const verb = { stop: 'stops it', replace: 'replaces it', modify: 'changes it' }[effect];
  const others = unsafeFor.map((one) => conditionEntry(one).label).join('; ');
  return `${name}: ${verb}. ${change}${others === '' ? '' : ` Stops it where also on file: ${others}.`}`;
}
