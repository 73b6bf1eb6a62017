import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const patellarTendinopathy = {
  id: 'patellar-tendinopathy',
  label: 'Knee, patellar tendon',
  regions: ['hip-groin', 'thigh', 'knee', 'lower-leg', 'ankle', 'foot'],
  clears: 'a physiotherapist',
  limits: 'No jump and landing volume, deep fast loading or sudden blocks of jumping.',
  tolerated:
    'Isometric, then slow heavy, then spring-type loading, then sport, with pain about 3 of 10 or less and settled the next day.',
  evidence: 'moderate',
  sources: [SOURCES.malliaras2015, SOURCES.breda2021],
} as const satisfies ConditionEntry;
