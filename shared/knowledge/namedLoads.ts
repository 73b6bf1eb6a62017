import type { Condition } from '../model/injury.ts';

/**
 * Words in an intervention that give away what it asks of the body, and the conditions that may then not be left out
 * or waved through. Catches a drill that slips in a throw or a landing which its rule does not answer for.
 */
export const NAMED_LOADS: readonly {
  readonly load: string;
  readonly words: RegExp;
  readonly conditions: readonly Condition[];
}[] = [
  {
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
    load: 'weight on the hands',
    words: /\b(push-ups?|planks?|on the hands)\b/i,
    conditions: ['posterior-shoulder-instability', 'multidirectional-shoulder-instability', 'acromioclavicular-joint'],
  },
  {
    load: 'a jump, a landing or a run',
    words: /\b(jumps?|jumping|landings?|hops?|hopping|sprints?|sprinting|cuts?|run|runs|running)\b/i,
    conditions: ['bone-stress', 'patellar-tendinopathy', 'anterior-cruciate-ligament', 'ankle-sprain', 'postpartum'],
  },
];

/** What is left out is not asked: `without a ball`, `no jump`, `before more hopping`, `less sprinting`. */
export const LEFT_OUT = /\b(without|no|never|not|before|less|fewer)\b[^,.;:]*/gi;
