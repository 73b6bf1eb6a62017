import type { Test } from '../rules/rule.ts';
import type { Source } from '../quantity.ts';
import { SOURCES } from './sources/index.ts';

/** What the literature flags, so that no rule may call it in order, whoever writes it. */
export const NEVER_PRAISED: readonly { readonly test: Test; readonly because: string; readonly source: Source }[] = [
  {
    test: { measure: 'fppa', comparator: '>', threshold: 13, unit: 'deg' },
    because: 'a knee that moves inward beyond the usual range',
    source: SOURCES.herrington2010,
  },
  {
    test: { measure: 'landing.errors', comparator: '>=', threshold: 5, unit: '{errors}' },
    because: 'five or more landing errors',
    source: SOURCES.padua2015,
  },
  {
    test: { measure: 'cut.score', comparator: '>=', threshold: 7, unit: '{points}' },
    because: 'a cutting score in the high-fault band',
    source: SOURCES.dosSantos2021,
  },
  {
    test: { measure: 'throw.weeklyRise', comparator: '>', threshold: 60, unit: '%' },
    because: 'a jump in throwing load of more than 60 %',
    source: SOURCES.moller2017,
  },
  ...[
    'pain.nrs',
    'pain.jumpTest',
    'pain.upper-limb',
    'pain.trunk',
    'pain.lower-limb',
    'pain.whole-body',
    'pain.head-neck',
  ].map((measure) => ({
    test: { measure, comparator: '>=', threshold: 1, unit: '{score}' } as const,
    because: 'pain',
    source: SOURCES.bahr2016,
  })),
  {
    test: { measure: 'pain.squeezeNrs', comparator: '>=', threshold: 3, unit: '{score}' },
    because: 'moderate or marked groin pain on the squeeze',
    source: SOURCES.thorborg2017,
  },
];
