import { compareHeights, type HeightComparison } from '../kernel/jump/compareHeights.ts';
import type { JumpHeight } from '../kernel/jump/unlikeness.ts';
import { isKnown, type Quantity } from '../quantity.ts';
import type { Fact } from './assessment.ts';

export interface AgainstBest {
  /** The height in this trial. */
  readonly here: Fact;
  /** The highest other height of the athlete that is like it, and the two compared; null: there is none. */
  readonly best: { readonly fact: Fact; readonly comparison: HeightComparison } | null;
  /** Heights that were not compared, each with the reason. */
  readonly unlike: readonly { readonly label: string; readonly why: string }[];
}

/**
 * Each known jump height of a trial against the athlete's own best. Only like is compared with like: same reference,
 * method and use of the arms.
 * @param facts of the case
 */
export function againstBest(facts: readonly Fact[], trialId: string): readonly AgainstBest[] {
  const heights = facts.filter((fact) => heightOf(fact) !== null);
  const own = heights.filter(({ from }) => from.id === trialId);
  const others = heights.filter(({ from }) => from.id !== trialId);
  return own.map((here) => {
    const compared = others.map((fact) => ({ fact, comparison: compareHeights(known(fact), known(here)) }));
    const alike = compared.flatMap(({ fact, comparison }) => ('unknown' in comparison ? [] : [{ fact, comparison }]));
    const why = new Map(
      compared.flatMap(({ fact, comparison }) =>
        'unknown' in comparison ? [[fact.label, comparison.unknown] as const] : [],
      ),
    );
    return {
      here,
      best: alike.toSorted((a, b) => known(b.fact).quantity.value - known(a.fact).quantity.value)[0] ?? null,
      unlike: [...why].map(([label, words]) => ({ label, why: words })),
    };
  });
}

function known(fact: Fact): JumpHeight {
  const height = heightOf(fact);
  if (height === null) throw new TypeError('only facts with a height come here');
  return height;
}

function heightOf({ value, height }: Fact): JumpHeight | null {
  if (height === null || value.kind !== 'number' || !isKnown(value.reading) || value.reading.unit !== 'm') return null;
  return { quantity: value.reading as Quantity<'m'>, ...height };
}
