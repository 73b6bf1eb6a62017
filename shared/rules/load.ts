import type { InjuryEffect } from './rule.ts';

/**
 * What an intervention asks of the body, and what each condition that this reaches does to it. Rules name their loads,
 * so that one wording serves every rule of the kind. Modifications are worded as limits, never as permissions: they
 * stay true beside whatever another injury puts in place of the intervention.
 */
export interface Load {
  readonly id: string;
  /** What it asks, in words. */
  readonly means: string;
  readonly effects: readonly InjuryEffect[];
}
