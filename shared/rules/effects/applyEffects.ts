import type { Finding, HistoryEffect } from '../../assess/assessment.ts';
import type { EffectsOfHistory } from './historyEffects.ts';

export type Suggestion = Pick<Finding, 'intervention' | 'adjustments' | 'withheld'> & {
  readonly effect: 'stop' | 'replace' | 'modify' | 'keep';
};

/** What may be suggested once the injuries have had their say: the strictest effect wins, and every limit is kept. */
export function applyEffects(intervention: string, history: EffectsOfHistory): Suggestion {
  const { effects, restrictions } = history;
  const stops = effects.filter((one) => one.effect === 'stop');
  const replacements = effects.filter((one) => one.effect === 'replace');
  const modifications = effects.filter((one) => one.effect === 'modify');
  const because = [...stops, ...replacements];
  if (stops.length > 0) {
    return { effect: 'stop', intervention: null, adjustments: [], withheld: { text: intervention, because } };
  }
  const adjustments = [...changesOf(modifications), ...new Set(restrictions)];
  if (replacements.length > 0) {
    const text = changesOf(replacements).join(' ');
    return { effect: 'replace', intervention: text, adjustments, withheld: { text: intervention, because } };
  }
  return { effect: adjustments.length > 0 ? 'modify' : 'keep', intervention, adjustments, withheld: null };
}

/** Each wording once, in an order that does not depend on the order of the history. */
export function changesOf(effects: readonly HistoryEffect[]): string[] {
  return [...new Set(effects.map((one) => one.change))].filter((change) => change !== '').toSorted();
}
