import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const multidirectionalShoulderInstability = {
  id: 'multidirectional-shoulder-instability',
  label: 'Shoulder instability, several directions',
  regions: ['shoulder', 'upper-arm', 'chest'],
  clears: 'a physiotherapist first; a surgeon only if that fails',
  limits: 'No stretching, hangs, heavy carries, dips, fast end-range work or loads on unstable tools.',
  tolerated: 'Control of the shoulder blade first, then cuff work in the mid-range, in stages over months.',
  evidence: 'moderate',
  sources: [SOURCES.watson2016, SOURCES.jaggi2017],
} as const satisfies ConditionEntry;
