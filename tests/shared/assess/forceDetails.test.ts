import { expect, test } from 'vitest';
import { detailWords, forceDetails } from '../../../shared/assess/forceDetails.ts';
import { analyseForceTrace } from '../../../shared/kernel/jump/analyseForceTrace.ts';
import { toForceSummary } from '../../../shared/kernel/jump/toForceSummary.ts';
import { forceSummary } from '../../../shared/model/jump.ts';
import { dossierForceN } from '../../support/dossierJump.ts';

/** J7 of the mechanics dossier, 70 kg, shared out 3 to 2 over two plates. */
const fz = dossierForceN();
const plates = [0.6, 0.4].map((share) => fz.map((force) => share * force));
const summary = toForceSummary(
  analyseForceTrace({ rateHz: 1000, plates, massKg: null, kind: 'countermovement' }),
  1000,
  ['left', 'right'],
);
const textOf = (label: string) => {
  const found = forceDetails(summary).find((row) => row.label.startsWith(label));
  return found === undefined ? '' : detailWords(found);
};
const numberIn = (text: string) => Number.parseFloat(text.replace('−', '-'));

test('J7 (closed form, computed): phases of 300, 124 and 236 ms, push-off 38.2 cm, 4393.9 N/s, beside the trace', () => {
  expect(forceSummary.parse(summary)).toEqual(summary);
  // The onset is looked for 30 ms before force leaves body weight, so unweighting may begin that much early.
  expect(Math.abs(numberIn(textOf('Unweighting')) - 300)).toBeLessThan(35);
  expect(numberIn(textOf('Braking'))).toBeCloseTo(423.97 - 300, -1);
  expect(numberIn(textOf('Propulsion'))).toBeCloseTo(660 - 423.97, -1);
  expect(Math.abs(numberIn(textOf('Push-off')) - 38.181)).toBeLessThan(0.5);
  expect(Math.abs(numberIn(textOf('Rate of force')) / 4393.9 - 1)).toBeLessThan(0.01);
});

test('definition of the bilateral index: 60 against 40 is 20 %, named, and says which side', () => {
  expect(textOf('Difference')).toContain('20');
  expect(textOf('Difference')).toContain('more on left');
  expect(forceDetails(summary).at(-1)?.label).toMatch(/index/i);
});

test('a difference that reads 0 % names no side', () => {
  const even = [0.5004, 0.4996].map((share) => fz.map((force) => share * force));
  const found = analyseForceTrace({ rateHz: 1000, plates: even, massKg: null, kind: 'countermovement' });
  expect(forceDetails(toForceSummary(found, 1000, ['left', 'right'])).at(-1)?.remark).toBe('even');
});

test('a summary kept by an earlier version shows nothing rather than guesses', () => {
  const { details, ...before } = summary;
  expect(details).toBeDefined();
  expect(forceDetails(forceSummary.parse(before))).toEqual([]);
});
