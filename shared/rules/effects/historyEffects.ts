import type { HistoryEffect } from '../../assess/assessment.ts';
import { counted } from '../../format/number.ts';
import type { ConditionEntry } from '../../knowledge/condition.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { regionsTouch } from '../../knowledge/regions.ts';
import type { Condition, Injury } from '../../model/injury.ts';
import { EFFECTS, type Effect, type InjuryEffect, type Rule } from '../rule.ts';
import { daysSince } from './daysSince.ts';
import { hasEnded, liftedBy } from './liftedBy.ts';

/** How a limit written down with an injury begins where it stands among changes. */
export const RESTRICTION = 'Restriction on file: ';

export interface EffectsOfHistory {
  /** One for each injury the rule or its region has to do with, by injury id. */
  readonly effects: readonly HistoryEffect[];
  /** Limits in force that were written down in words, for regions this rule loads. */
  readonly restrictions: readonly string[];
  readonly trace: readonly string[];
}

/**
 * What the history does to one rule. A change that would itself be unsafe for another injury on file becomes a stop:
 * two limits never cancel each other. An injury of the same limb that the rule says nothing about asks for agreement
 * first, so that silence is not taken for permission. In the first days after an injury whatever it would change is left
 * out; a clearance earlier than is usual is asked about; a restriction in words holds as long as it is written down.
 * @param asOf the day the case speaks for; null: time since an injury cannot count
 */
export function historyEffects(rule: Rule, history: readonly Injury[], asOf: string | null): EffectsOfHistory {
  const inForce = new Set(
    history.filter((injury) => liftedBy(injury, asOf) === null).map((injury) => injury.condition),
  );
  const effects: HistoryEffect[] = [];
  const restrictions: string[] = [];
  const trace: string[] = [];

  for (const injury of history.toSorted((a, b) => (a.id < b.id ? -1 : 1))) {
    const stated = strictestFor(rule, injury.condition);
    const touches = regionsTouch(injury.region, rule.region);
    // Only what is suggested needs anybody's agreement.
    const isSuggesting = rule.kind === 'intervention' || rule.kind === 'monitor';
    if (stated === null && !(isSuggesting && touches)) continue;
    const entry = conditionEntry(injury.condition);
    const name = nameOf(injury, entry.label);
    const lifted = liftedBy(injury, asOf);
    if (touches && injury.restrictions.trim() !== '') restrictions.push(`${RESTRICTION}${injury.restrictions.trim()}`);
    if (lifted !== null) {
      const doubts = [earlyClearance(injury, entry), clearedInPart(injury)].filter((words) => words !== null).join(' ');
      const isChanged = isSuggesting && doubts !== '';
      effects.push(effectOf(injury, isChanged ? 'modify' : 'keep', isChanged ? doubts : ''));
      trace.push(`${name}: ${lifted}, so its limits are lifted.${doubts === '' ? '' : ` ${doubts}`}`);
      continue;
    }
    const sinceDays = daysSince(injury.onset, asOf);
    if (
      isSuggesting &&
      entry.early !== undefined &&
      sinceDays !== null &&
      sinceDays < entry.early.days &&
      stated !== null &&
      stated.effect !== 'keep'
    ) {
      const { days, source } = entry.early;
      effects.push(effectOf(injury, 'stop', `Nothing that loads it in the first ${days} days: ask ${entry.clears}.`));
      trace.push(
        `${name}: perhaps only ${counted(sinceDays, 'day')} old, so this waits (first ${days} days; ${source.cite}).`,
      );
      continue;
    }
    if (stated === null) {
      effects.push(effectOf(injury, 'modify', `Agree this first with ${entry.clears}: ${name} is on file.`));
      trace.push(`${name}: no effect is stated for it here, so this is to be agreed first.`);
      continue;
    }
    const clash = stated.unsafeFor.find((condition) => condition !== injury.condition && inForce.has(condition));
    if (clash !== undefined && stated.effect !== 'stop') {
      effects.push(
        effectOf(
          injury,
          'stop',
          `Nothing here is safe for both ${entry.label} and ${conditionEntry(clash).label}: ask ${entry.clears}.`,
        ),
      );
      trace.push(
        `${name}: what would be done instead is not safe for ${conditionEntry(clash).label}, so nothing is suggested.`,
      );
      continue;
    }
    effects.push(effectOf(injury, stated.effect, stated.change, stated.plain));
    trace.push(`${name}: ${EFFECT_WORDS[stated.effect]}${whyStillInForce(injury, asOf)}`);
  }
  return { effects, restrictions, trace };
}

/** What to say of a clearance given sooner after the injury than is usual; null: nothing. */
function earlyClearance({ onset, clearedOn }: Injury, { usualClearance, clears }: ConditionEntry): string | null {
  const after = daysSince(onset, clearedOn);
  if (usualClearance === undefined || after === null || after >= usualClearance.days) return null;
  const { days, source } = usualClearance;
  return `Cleared ${counted(after, 'day')} after the injury, sooner than the ${days} days that are usual (${source.cite}): ask ${clears} again first.`;
}

/** A clearance for something in particular lifts no more than that, and what it covers only a person can read. */
function clearedInPart({ clearedFor }: Injury): string | null {
  return clearedFor.trim() === '' ? null : `Cleared for “${clearedFor.trim()}”: what goes beyond that waits.`;
}

function effectOf(injury: Injury, effect: Effect, change: string, plain = change): HistoryEffect {
  const { clears } = conditionEntry(injury.condition);
  return { injuryId: injury.id, condition: injury.condition, effect, change, plain, clears };
}

const EFFECT_WORDS: Record<Effect, string> = {
  stop: 'stops this.',
  replace: 'replaces this.',
  modify: 'changes this.',
  keep: 'leaves this as it is.',
};

/** Two statements for one condition: the stricter holds. */
export function strictestFor(rule: Pick<Rule, 'effects'>, condition: Condition): InjuryEffect | null {
  let strictest: InjuryEffect | null = null;
  for (const effect of rule.effects) {
    if (effect.condition !== condition) continue;
    if (strictest === null || EFFECTS.indexOf(effect.effect) < EFFECTS.indexOf(strictest.effect)) strictest = effect;
  }
  return strictest;
}

function nameOf(injury: Injury, label: string): string {
  const side = injury.side === 'none' ? '' : `, ${injury.side}`;
  const since = injury.onset === null ? '' : `, since ${injury.onset}`;
  return `${injury.condition === 'other' && injury.diagnosis !== '' ? injury.diagnosis : label}${side}${since}`;
}

function whyStillInForce(injury: Injury, asOf: string | null): string {
  if (injury.status !== 'resolved') return '';
  if (hasEnded(injury, asOf) && injury.clearedBy.trim() !== '') {
    return ` Its clearance held until ${injury.clearedUntil}.`;
  }
  return ' It is called resolved, but no clearance with name and date is on file.';
}
