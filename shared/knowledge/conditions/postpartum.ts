import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const postpartum = {
  id: 'postpartum',
  label: 'After birth',
  regions: ['whole-body'],
  clears: 'the obstetric provider or a pelvic-health physiotherapist',
  limits: 'No running or impact before about three months, or later with heaviness, leaking, bleeding or pain.',
  tolerated: 'Pelvic-floor rehabilitation, walking, progressive strength.',
  evidence: 'expert',
  sources: [SOURCES.goom2019],
} as const satisfies ConditionEntry;
