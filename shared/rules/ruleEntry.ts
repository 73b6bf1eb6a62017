import { DRILLS, type DrillId } from '../knowledge/drills/index.ts';
import { SOURCES } from '../knowledge/sources/index.ts';
import { LOADS, type LoadId } from './loads/index.ts';
import { EFFECTS, type InjuryEffect, type Rule } from './rule.ts';

export type SourceId = keyof typeof SOURCES;

/** A rule as it is written in its file: data only, sources and loads by name. */
export interface RuleEntry extends Omit<Rule, 'sources' | 'effects' | 'drill'> {
  readonly drill: DrillId | null;
  readonly sources: readonly SourceId[];
  /** What the intervention asks of the body. Brings the effects of every condition that this reaches. */
  readonly loads: readonly LoadId[];
  /** Effects of its own; they stand in place of what the loads say of the same condition. */
  readonly effects: readonly InjuryEffect[];
}

/** The rule with its sources, drill and effects written out. */
export function toRule({ loads, ...entry }: RuleEntry): Rule {
  return {
    ...entry,
    drill: entry.drill === null ? null : DRILLS[entry.drill],
    effects: effectsOf(loads, entry.effects),
    sources: entry.sources.map((id) => SOURCES[id]),
  };
}

/** What the loads bring, and a rule's own effects in their place. Where two loads speak of one condition the stricter holds. */
export function effectsOf(loads: readonly LoadId[], own: readonly InjuryEffect[]): InjuryEffect[] {
  const effects = new Map<string, InjuryEffect>();
  for (const effect of loads.flatMap((load): readonly InjuryEffect[] => LOADS[load].effects)) {
    const held = effects.get(effect.condition);
    if (held === undefined || EFFECTS.indexOf(effect.effect) < EFFECTS.indexOf(held.effect)) {
      effects.set(effect.condition, effect);
    }
  }
  for (const effect of own) effects.set(effect.condition, effect);
  return [...effects.values()];
}
