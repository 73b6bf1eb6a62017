import type { Fact } from '../../../shared/assess/assessment.ts';
import type { JumpTest, JumpTrial } from '../../../shared/model/jump.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { convert, type Unit } from '../../../shared/units.ts';

export function trialsOf(file: CaseFile, test: JumpTest): readonly JumpTrial[] {
  return file.jumpTrials.filter((trial) => trial.testId === test.id).toSorted((a, b) => a.number - b.number);
}

export function factsFrom(facts: readonly Fact[], id: string): readonly Fact[] {
  return facts.filter((fact) => fact.from.id === id);
}

/** One measure over the trials of one test: a column of the table, a row of points in the plot. */
export interface MeasureColumn {
  readonly measure: string;
  readonly label: string;
  readonly unit: Unit | null;
  readonly isHeight: boolean;
  readonly byTrial: ReadonlyMap<string, Fact>;
}

/** What the trials yield, heights first, in the order the assessment gives. */
export function columnsOf(facts: readonly Fact[], trials: readonly JumpTrial[]): readonly MeasureColumn[] {
  const columns = new Map<string, MeasureColumn & { byTrial: Map<string, Fact> }>();
  for (const trial of trials) {
    for (const fact of factsFrom(facts, trial.id)) {
      const known = columns.get(fact.measure) ?? {
        measure: fact.measure,
        label: fact.label,
        unit: fact.displayUnit,
        isHeight: false,
        byTrial: new Map<string, Fact>(),
      };
      known.byTrial.set(trial.id, fact);
      columns.set(fact.measure, { ...known, isHeight: known.isHeight || fact.height !== null });
    }
  }
  return [...columns.values()].toSorted((a, b) => Number(b.isHeight) - Number(a.isHeight));
}

/** A known number in the unit it is shown in; null for anything else. */
export function shownNumber(fact: Fact | undefined): { readonly value: number; readonly u: number | null } | null {
  if (fact?.value.kind !== 'number' || !isKnown(fact.value.reading)) return null;
  const { value, unit, u } = fact.value.reading;
  const shown = fact.displayUnit ?? unit;
  return { value: convert(value, unit, shown), u: u === null ? null : convert(u, unit, shown) };
}

export interface Spread {
  readonly count: number;
  readonly best: number;
  readonly mean: number;
  /** Standard deviation of the sample (n − 1); null for one trial. */
  readonly sd: number | null;
}

/** Standard deviation over the mean, %; meaningless for a mean of nought, which no jump has. */
export function coefficientOfVariation({ sd, mean }: Spread): number {
  return (100 * (sd ?? 0)) / mean;
}

/** Best, mean and spread of values that are alike. Null for none. */
export function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return {
    count: values.length,
    best: Math.max(...values),
    mean,
    sd: values.length < 2 ? null : Math.sqrt(squares / (values.length - 1)),
  };
}
