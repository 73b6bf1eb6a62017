import type { RuleBody } from '../../shared/model/ownRule.ts';

/** Any field of a rule that may not be finished. */
export type Loose = Readonly<Record<string, RuleBody[string]>>;

export function asObject(value: unknown): Loose {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Loose) : {};
}

export function textOf(value: unknown): string {
  return typeof value === 'string' ? value : '';
}
