import { CONDITIONS, REGIONS } from '../model/injury.ts';
import type { Source } from '../quantity.ts';
import { UNITS } from '../units.ts';
import type { ConditionEntry } from './condition.ts';
import { CONDITION_ENTRIES } from './conditions/index.ts';
import type { Drill } from './drills/drill.ts';
import { DRILLS } from './drills/index.ts';
import type { Measure } from './measure.ts';
import { MEASURES } from './measures/index.ts';
import type { Movement } from './movement.ts';
import { MOVEMENTS } from './movements/index.ts';
import type { BatteryItem } from './screening/battery.ts';
import { BATTERIES } from './screening/shipped.ts';
import { SOURCES } from './sources/index.ts';

export interface Knowledge {
  readonly movements: readonly Movement[];
  readonly measures: readonly Measure[];
  readonly conditions: readonly ConditionEntry[];
  readonly items: readonly BatteryItem[];
  readonly drills: readonly (Drill & { readonly id: string })[];
  readonly sources: readonly Source[];
}

export const SHIPPED_KNOWLEDGE: Knowledge = {
  movements: MOVEMENTS,
  measures: MEASURES,
  conditions: CONDITION_ENTRIES,
  items: BATTERIES.flatMap((battery) => battery.items),
  drills: Object.entries(DRILLS).map(([id, drill]) => ({ ...drill, id })),
  sources: Object.values(SOURCES),
};

export interface KnowledgeProblem {
  /** Folder or file of the entry under shared/knowledge. */
  readonly file: string;
  /** Id of the entry, or the citation of a source. */
  readonly about: string;
  readonly problem: string;
}

/** Everything that must not be in the knowledge, with the file it stands in. Empty: it may be used. */
export function checkKnowledge({
  movements,
  measures,
  conditions,
  items,
  drills,
  sources,
}: Knowledge): KnowledgeProblem[] {
  const known = new Map(measures.map((measure) => [measure.id, measure]));
  return [
    ...listed(
      movements,
      ({ id }) => id,
      ({ id }) => `movements/${id}.ts`,
      (one) => movementProblems(one, known),
    ),
    ...listed(
      measures,
      ({ id }) => id,
      () => 'measures/',
      measureProblems,
    ),
    ...listed(
      conditions,
      ({ id }) => id,
      ({ id }) => `conditions/${id}.ts`,
      conditionProblems,
    ),
    ...CONDITIONS.filter((id) => !conditions.some((entry) => entry.id === id)).map((about) => ({
      file: `conditions/${about}.ts`,
      about,
      problem: 'the condition has no entry',
    })),
    ...listed(
      items,
      ({ id }) => id,
      () => 'screening/',
      (one) => itemProblems(one, known),
    ),
    ...listed(
      drills,
      ({ id }) => id,
      () => 'drills/',
      drillProblems,
    ),
    ...listed(
      sources,
      ({ cite }) => cite,
      () => 'sources/index.ts',
      sourceProblems,
    ),
  ];
}

function listed<T>(
  entries: readonly T[],
  idOf: (entry: T) => string,
  fileOf: (entry: T) => string,
  problemsOf: (entry: T) => readonly string[],
): KnowledgeProblem[] {
  const ids = entries.map(idOf);
  return entries.flatMap((entry, i) => {
    const again = ids.indexOf(idOf(entry)) < i ? ['it stands there twice'] : [];
    return [...again, ...problemsOf(entry)].map((problem) => ({ file: fileOf(entry), about: idOf(entry), problem }));
  });
}

function movementProblems(movement: Movement, measures: ReadonlyMap<string, Measure>): string[] {
  const { events, phases, checkpoints, mayOverlap, source } = movement;
  const order = events.map(({ id }) => id);
  const places = phases.map(({ id }) => id);
  const problems = [...repeated(order, 'event'), ...repeated(places, 'phase'), ...sourceProblems(source)];
  let last = 0;
  for (const { id, startsAt, endsAt } of phases) {
    const [start, end] = [order.indexOf(startsAt), order.indexOf(endsAt)];
    if (start < 0 || end < 0) problems.push(`phase "${id}" runs from or to an event that is not listed`);
    else if (end < start || start < last) problems.push(`phase "${id}" is out of order`);
    last = Math.max(last, start);
  }
  for (const { phase, measure } of checkpoints) {
    if (phase !== 'whole' && !places.includes(phase)) problems.push(`a checkpoint is in no phase: "${phase}"`);
    if (!measures.has(measure)) problems.push(`there is no measure "${measure}"`);
  }
  for (const event of mayOverlap.flat()) {
    if (!order.includes(event)) problems.push(`"${event}" may overlap and is not an event`);
  }
  return problems;
}

function repeated(ids: readonly string[], what: string): string[] {
  return ids.filter((id, i) => ids.indexOf(id) < i).map((id) => `${what} "${id}" stands there twice`);
}

function measureProblems({
  kind,
  unit,
  displayUnit,
  possible,
  plausible,
  error,
  label,
  description,
}: Measure): string[] {
  const problems = label.trim() === '' || description.trim() === '' ? ['it has no label or no description'] : [];
  if (error !== null) problems.push(...sourceProblems(error.source));
  if (kind !== 'number') {
    const hasAny = [unit, displayUnit, possible, plausible, error].some((one) => one !== null);
    return hasAny ? [...problems, `a ${kind} has no unit, range or error`] : problems;
  }
  if (unit === null || displayUnit === null) return [...problems, 'a number needs a unit'];
  if (UNITS[unit].dimension !== UNITS[displayUnit].dimension) {
    problems.push(`it is kept in ${unit} and shown in ${displayUnit}, which is not the same kind of quantity`);
  }
  if (possible === null || plausible === null) return [...problems, 'a number needs its possible and plausible range'];
  if (!(possible[0] <= plausible[0] && plausible[0] < plausible[1] && plausible[1] <= possible[1])) {
    problems.push('the plausible range does not lie within the possible one');
  }
  return problems;
}

function conditionProblems({ regions, clears, limits, sources }: ConditionEntry): string[] {
  const problems = sources.flatMap(sourceProblems);
  if (sources.length === 0) problems.push('it has no source');
  if (regions.length === 0) problems.push('it names no region');
  for (const region of regions) {
    if (!(REGIONS as readonly string[]).includes(region)) problems.push(`there is no region "${region}"`);
  }
  if (clears.trim() === '') problems.push('it does not say who lifts its limits');
  if (limits.trim() === '') problems.push('it states no limits');
  return problems;
}

const KIND_OF_ITEM = { graded: 'grade', clearing: 'flag', measured: 'number', counted: 'number' } as const;

function itemProblems(item: BatteryItem, measures: ReadonlyMap<string, Measure>): string[] {
  const problems = sourceProblems(item.source);
  if (item.instructions.length === 0) problems.push('it does not say how it is done');
  if (item.caution.trim() === '') problems.push('it has no caution');
  if ((item.standard === null) === (item.kind === 'graded'))
    problems.push('grades, and only they, need a written standard');
  const measure = measures.get(item.measure);
  if (measure === undefined) return [...problems, `there is no measure "${item.measure}"`];
  if (measure.kind !== KIND_OF_ITEM[item.kind]) problems.push(`it is ${item.kind}, its measure a ${measure.kind}`);
  if (item.unit !== measure.unit || item.displayUnit !== measure.displayUnit) {
    problems.push(`its unit is ${item.unit ?? 'none'}, its measure’s ${measure.unit ?? 'none'}`);
  }
  const sameRanges =
    JSON.stringify([item.possible, item.plausible]) === JSON.stringify([measure.possible, measure.plausible]);
  if (!sameRanges) problems.push('its ranges are not those of its measure');
  return problems;
}

function drillProblems({ label, dose, progression, source }: Drill): string[] {
  const missing = Object.entries({ label, dose, progression }).filter(([, words]) => words.trim() === '');
  return [...missing.map(([name]) => `it has no ${name}`), ...sourceProblems(source)];
}

function sourceProblems({ cite }: Source): string[] {
  return cite.trim() === '' ? ['a source says nothing'] : [];
}
