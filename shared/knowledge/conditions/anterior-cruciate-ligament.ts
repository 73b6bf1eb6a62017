import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const anteriorCruciateLigament = {
  id: 'anterior-cruciate-ligament',
  label: 'Knee, anterior cruciate ligament',
  regions: ['hip-groin', 'thigh', 'knee', 'lower-leg', 'ankle', 'foot'],
  clears: 'the surgeon and a physiotherapist',
  limits:
    'No pivoting, contact, unplanned cuts or maximal single-leg landing until nine months, strength and hop of at least 90 % and the team agrees.',
  tolerated: 'Closed-chain strength, bicycle, later planned jumps.',
  early: { days: 14, source: SOURCES.convention },
  // Nine months: fewer second injuries with each month waited up to then.
  usualClearance: { days: 274, source: SOURCES.grindem2016 },
  evidence: 'moderate',
  sources: [SOURCES.grindem2016, SOURCES.grindem2020, SOURCES.welling2018],
} as const satisfies ConditionEntry;
