import type { Condition } from '../model/injury.ts';

export type NamedLoadId = 'throwing' | 'support' | 'impact';

/**
 * Words in an intervention that give away what it asks of the body, and the conditions that may then not be left out
 * or waved through. Catches a drill that slips in a throw or a landing which its rule does not answer for.
 */
export const NAMED_LOADS: readonly {
  readonly id: NamedLoadId;
  /** With its article, as the end of `it asks for …`. */
  readonly load: string;
  readonly words: RegExp;
  readonly conditions: readonly Condition[];
}[] = [
  {
    id: 'throwing',
    load: 'an overhead throw, hit or shot',
    words: /\b(throws?|throwing|serves?|serving|spikes?|spiking|hits?|hitting|swings?|shots?|shooting)\b/i,
    conditions: [
      'anterior-shoulder-instability',
      'posterior-shoulder-instability',
      'multidirectional-shoulder-instability',
      'rotator-cuff',
      'superior-labrum',
      'elbow-ulnar-collateral-ligament',
    ],
  },
  {
    id: 'support',
    load: 'weight on the hands',
    words: /\b(push-ups?|planks?|on the hands)\b/i,
    conditions: ['posterior-shoulder-instability', 'multidirectional-shoulder-instability', 'acromioclavicular-joint'],
  },
  {
    id: 'impact',
    load: 'a jump, a landing or a run',
    words: /\b(jumps?|jumping|landings?|hops?|hopping|sprints?|sprinting|cuts?|run|runs|running)\b/i,
    conditions: ['bone-stress', 'patellar-tendinopathy', 'anterior-cruciate-ligament', 'ankle-sprain', 'postpartum'],
  },
];

/** What is left out is not asked: `without a ball`, `no jump`, `before more hopping`, `less sprinting`. */
const LEFT_OUT = /\b(without|no|never|not|before|less|fewer|leave out|in place of)\b[^,.;:]*/gi;

/** Loads that a wording asks for. */
export function loadsNamedIn(text: string): (typeof NAMED_LOADS)[number][] {
  const asked = text.replaceAll(LEFT_OUT, '');
  return NAMED_LOADS.filter(({ words }) => words.test(asked));
}
