import type { Finding, FindingWords, HistoryEffect } from '../../assess/assessment.ts';
import { byReader } from '../byReader.ts';
import type { Effect, Reader } from '../rule.ts';
import type { EffectsOfHistory } from './historyEffects.ts';

/** What to do, for one reader. */
export type Advice = Omit<FindingWords, 'finding'>;

export interface Suggestion {
  readonly effect: Effect;
  readonly advice: Readonly<Record<Reader, Advice>>;
  readonly withheld: Finding['withheld'];
}

/** What may be suggested once the injuries have had their say: the strictest effect wins, and every limit is kept. */
export function applyEffects(texts: Readonly<Record<Reader, string>>, history: EffectsOfHistory): Suggestion {
  const { effects, restrictions } = history;
  const stops = effects.filter((one) => one.effect === 'stop');
  const replacements = effects.filter((one) => one.effect === 'replace');
  const modifications = effects.filter((one) => one.effect === 'modify');
  const because = [...stops, ...replacements];
  const withheld = because.length === 0 ? null : { text: texts.practitioner, because };
  if (stops.length > 0) {
    return { effect: 'stop', advice: byReader(() => ({ intervention: null, adjustments: [] })), withheld };
  }
  const advice = byReader((reader) => ({
    intervention: replacements.length > 0 ? changesOf(replacements, reader).join(' ') : texts[reader],
    adjustments: [...changesOf(modifications, reader), ...new Set(restrictions)],
  }));
  const isChanged = advice.practitioner.adjustments.length > 0;
  return { effect: replacements.length > 0 ? 'replace' : isChanged ? 'modify' : 'keep', advice, withheld };
}

/** Each wording once, in an order that does not depend on the order of the history. */
export function changesOf(effects: readonly HistoryEffect[], reader: Reader): string[] {
  const words = effects.map((one) => (reader === 'athlete' ? one.plain : one.change));
  return [...new Set(words)].filter((change) => change !== '').toSorted();
}
