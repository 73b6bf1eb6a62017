import type { BatteryBody, OwnItem } from '../../model/battery.ts';
import { siUnitOf } from '../../units.ts';
import { clinicianActsIn } from '../wording/clinicianOnly.ts';
import { whatCutsTheLink } from './readBattery.ts';
import { shippedItem } from './shipped.ts';

export interface BatteryProblem {
  /** Where in the battery: `items.3.possible`. */
  readonly path: readonly (string | number)[];
  readonly words: string;
}

/** What keeps a battery from being used, with its place. Empty: it may be. */
export function batteryProblems({ label, items }: Pick<BatteryBody, 'label' | 'items'>): BatteryProblem[] {
  const ids = items.map(({ id }) => id);
  const labels = items.map((item) => item.label.trim().toLowerCase());
  return [
    ...(label.trim() === '' ? [{ path: ['label'], words: 'the battery needs a name' }] : []),
    ...(items.length === 0 ? [{ path: ['items'], words: 'it needs an item' }] : []),
    ...items.flatMap((item, i) => {
      const problems = itemProblems(item);
      if (ids.indexOf(item.id) < i) problems.push(['id', 'another item has this id']);
      if (labels[i] !== '' && labels.indexOf(labels[i] ?? '') < i)
        problems.push(['label', 'another item is called so']);
      const twin = items.findIndex((one) => isSameLink(one, item));
      if (twin >= 0 && twin < i) problems.push(['from', 'the same item of the program is in the battery already']);
      return problems.map(([path, words]) => ({ path: ['items', i, path], words }));
    }),
  ];
}

type Problem = [path: keyof OwnItem, words: string];

function itemProblems(item: OwnItem): Problem[] {
  const { from, kind, label, unit, trials, instructions, standard, possible, plausible, reference, error } = item;
  const problems: Problem[] = [];
  const isNumber = kind === 'measured' || kind === 'counted';
  const isLinked = from !== null && whatCutsTheLink(item).length === 0;
  if (label.trim() === '') problems.push(['label', 'it needs a name']);
  if (from !== null && shippedItem(from) === null)
    problems.push(['from', 'this version of the program has no such item']);
  if (instructions.every((step) => step.trim() === ''))
    problems.push(['instructions', 'it does not say how it is done']);
  const acts = clinicianActsIn([label, ...instructions].join('. '));
  if (acts.length > 0) {
    problems.push([
      acts.some((act) => clinicianActsIn(label).includes(act)) ? 'label' : 'instructions',
      `it asks for what is for a clinician only (${acts.join(', ')}); such examinations are recorded under Injuries`,
    ]);
  }
  if ((standard === null) === (kind === 'graded')) {
    problems.push([
      'standard',
      kind === 'graded' ? 'grades need a written standard' : 'only graded items have a standard',
    ]);
  }
  if (standard !== null && Object.values(standard).some((words) => words.trim() === '')) {
    problems.push(['standard', 'every grade needs its words']);
  }
  if (isNumber === (unit === null))
    problems.push(['unit', isNumber ? 'it needs a unit' : `a ${kind} item has no unit`]);
  if (item.dividedBy !== null && (unit === null || siUnitOf(unit) !== 'm' || !item.hasSides)) {
    problems.push(['dividedBy', 'only a length taken left and right is a share of a limb']);
  }
  if (!isNumber && trials !== null) problems.push(['trials', `a ${kind} item has no trials`]);
  if (!isNumber) {
    for (const field of ['possible', 'plausible', 'error', 'reference'] as const) {
      if (item[field] !== null) problems.push([field, `a ${kind} item has none`]);
    }
    return problems;
  }
  if (isLinked) {
    for (const field of ['possible', 'error', 'reference'] as const) {
      if (item[field] !== null) problems.push([field, 'that of the item of the program holds; leave it out']);
    }
  } else if (!isRange(possible)) problems.push(['possible', 'it needs the least and the most that is possible']);
  const outer = isLinked ? shippedItem(from)?.possible : possible;
  if (plausible !== null && !isWithin(plausible, outer ?? null)) {
    problems.push(['plausible', 'what is usual needs two ends, within what is possible']);
  }
  if (reference !== null && (!isRange([reference.low, reference.high]) || isUnsaid(reference))) {
    problems.push(['reference', 'a usual range needs two ends, whom it was taken from, and its source']);
  }
  if (error !== null && error.source.cite.trim() === '') problems.push(['error', 'the error needs its source']);
  return problems;
}

function isUnsaid({ group, source }: NonNullable<OwnItem['reference']>): boolean {
  return group.trim() === '' || source.cite.trim() === '';
}

function isRange(range: OwnItem['possible']): range is [number, number] {
  const [low, high] = range ?? [null, null];
  return low !== null && high !== null && low < high;
}

function isWithin(inner: OwnItem['plausible'], outer: readonly [number | null, number | null] | null): boolean {
  const [low, high] = outer ?? [null, null];
  return isRange(inner) && low !== null && high !== null && inner[0] >= low && inner[1] <= high;
}

function isSameLink(one: OwnItem, other: OwnItem): boolean {
  return one.from !== null && other.from !== null && one.from.itemId === other.from.itemId;
}
