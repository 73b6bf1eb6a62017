import { formatQuantity, withUnit } from '../../format/number.ts';
import { type FormulaNode, parseFormula } from '../../kernel/quantity/parseFormula.ts';
import type { WorkingInput } from '../../quantity.ts';
import { UNITS } from '../../units.ts';
import { element, shiftMark } from '../placed.ts';
import { plain } from '../runs.ts';
import { STYLES } from '../sheet.ts';
import { breakLines } from '../steps/breakLines.ts';
import { setFormula, type Substitution } from '../steps/setFormula.ts';
import { type Setting, type Strip, strip, withGap } from './block.ts';
import { textStrips } from './paragraph.ts';

export interface Result {
  readonly symbol: string;
  /** Number, uncertainty and unit. */
  readonly words: string;
}

/** A formula in linear notation, set as mathematics; with `inputs`, their numbers stand in for their symbols. */
export interface Equation {
  readonly block: 'equation';
  readonly formula: string;
  readonly inputs: readonly WorkingInput[];
  /** What comes out, with its unit; null: only the formula. */
  readonly result: Result | null;
}

export function equation(
  formula: string,
  inputs: readonly WorkingInput[] = [],
  result: Result | null = null,
): Equation {
  return { block: 'equation', formula, inputs, result };
}

const SIZE = 10.5;
const GAP = 5;

/** What is no equation, or wider than the column, is set as a line of text. */
export function layEquation(block: Equation, { width, metrics, id }: Setting): Strip[] {
  const { tree, values, outcome, linear } = readEquation(block);
  const box = tree === null ? null : setFormula(tree, SIZE, metrics, values, outcome);
  if (box === null || box.width > width) {
    const lines = breakLines(plain(linear), STYLES.body, width, metrics);
    return withGap(textStrips(lines, STYLES.body, 'P', id, metrics), GAP);
  }
  const marks = box.marks.map((mark) => shiftMark(mark, 0, box.above));
  return [
    strip(box.above + box.below, [element('Formula', id, marks, [], { alt: linear })], {
      gap: GAP,
      keepWithNext: true,
    }),
  ];
}

/** An equation as a tree with what stands in for its symbols, and the same in one line of text. */
export interface ReadEquation {
  /** Null: no equation, only words. */
  readonly tree: FormulaNode | null;
  readonly values: Substitution;
  /** ` = 0.31 m`; empty: only the formula. */
  readonly outcome: string;
  readonly linear: string;
}

export function readEquation({ formula, inputs, result }: Equation): ReadEquation {
  const values = substitution(inputs);
  const outcome = result === null ? '' : ` = ${result.words}`;
  const substituted = formula.replace(SYMBOL, (symbol) => values(symbol) ?? symbol);
  // Where no number could be put in, only the result is new.
  const shown = result !== null && substituted === formula ? result.symbol : formula;
  const linear = (shown === formula ? substituted : shown) + outcome;
  return { tree: `${shown}${outcome}`.includes('=') ? parseFormula(shown) : null, values, outcome, linear };
}

const SYMBOL = /\p{L}[\p{L}\d]*(?:_\{[^}]*\}|_[\p{L}\d]+)?/gu;

/** Number and unit of an input, in brackets where they would run into their neighbours. */
function substitution(inputs: readonly WorkingInput[]): Substitution {
  return (symbol) => {
    const found = inputs.find((input) => input.symbol === symbol);
    if (found === undefined) return null;
    const { value } = formatQuantity(found.quantity);
    const unit = UNITS[found.quantity.unit].label;
    return unit === '' && !value.startsWith('−') ? value : `(${withUnit(value, unit)})`;
  };
}
