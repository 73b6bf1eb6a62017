import { quantityText } from '../../format/number.ts';
import { isKnown, type Quantity } from '../../quantity.ts';
import { convert } from '../../units.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { right, table } from '../blocks/table.ts';
import { plain, quantityRuns, type Runs } from '../runs.ts';
import type { Writing } from './writing.ts';

/** What the uncertainty of each judged number is made of: by how much every input moves it, and its share. */
export function uncertaintyBudget({ assessment }: Writing): Block[] {
  const judged = new Set(
    assessment.findings
      .filter(({ outcome }) => outcome !== 'not-assessed')
      .flatMap(({ tests }) => tests.map(({ factKey }) => factKey)),
  );
  const rows = assessment.facts.flatMap(({ key, label, value, displayUnit, side }) => {
    if (!judged.has(key) || value.kind !== 'number' || !isKnown(value.reading)) return [];
    const { reading } = value;
    const parts = partsOf(reading);
    const variance = parts.reduce((sum, { moves }) => sum + moves ** 2, 0);
    if (parts.length < 2 || variance === 0) return [];
    const unit = displayUnit ?? reading.unit;
    const name = side === 'none' ? label : `${label}, ${side}`;
    return parts.map(({ input, moves }, i): (string | Runs)[] => [
      i === 0 ? [...plain(`${name}: `), ...quantityRuns(reading, unit)] : '',
      input.working.name,
      quantityRuns(input),
      quantityText({ value: toTwo(convert(moves, reading.unit, unit)), unit, u: 0 }),
      `${Math.round((100 * moves ** 2) / variance)}\u00a0%`,
    ]);
  });
  if (rows.length === 0) return [];
  return [
    heading(2, 'Uncertainty budget'),
    paragraph(
      'What one standard uncertainty of each input moves the result by, and its share of the variance, inputs taken as independent (JCGM 100:2008, 5.1). Only numbers that a finding rests on and that come from two inputs or more.',
    ),
    table(
      'Where the uncertainty comes from',
      ['Result', 'Input', right('Its value'), right('Moves the result by'), right('Share')],
      rows,
    ),
  ];
}

/** The inputs of a number; one that only hands on another number is looked through. */
function partsOf({ working }: Quantity): { readonly input: Quantity; readonly moves: number }[] {
  const uncertain = working.inputs.filter(({ moves }) => moves !== undefined && moves > 0);
  const [only] = uncertain;
  if (uncertain.length === 1 && only !== undefined) return partsOf(only.quantity);
  return uncertain.map(({ quantity, moves = 0 }) => ({ input: quantity, moves }));
}

function toTwo(value: number): number {
  return Number(value.toPrecision(2));
}
