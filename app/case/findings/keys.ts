/** What can be done to a finding from the keyboard. */
export type FindingAction = 'before' | 'after' | 'accept' | 'edit' | 'set-aside' | 'take-back' | 'why';

const ACTIONS: Readonly<Record<string, FindingAction>> = {
  ArrowUp: 'before',
  ArrowDown: 'after',
  a: 'accept',
  e: 'edit',
  s: 'set-aside',
  t: 'take-back',
  y: 'why',
};

/** By the key pressed on a finding; null for a key without a meaning there. */
export function actionOfKey(key: string): FindingAction | null {
  return ACTIONS[key.length === 1 ? key.toLowerCase() : key] ?? null;
}

/** The same for people, in the list of keys. */
export const FINDING_KEYS = [
  ['Arrow up, arrow down', 'From finding to finding'],
  ['A', 'On a finding: accept it'],
  ['E', 'On a finding: edit the words'],
  ['S', 'On a finding: set it aside'],
  ['T', 'On a finding: take the decision back'],
  ['Y', 'On a finding: why'],
] as const;
