import { textStrips } from './paragraph.ts';
import { italic } from '../runs.ts';
import { STYLES } from '../sheet.ts';
import { breakLines } from '../steps/breakLines.ts';
import { type Setting, type Strip, withGap } from './block.ts';

/** A formula in linear notation, set as mathematics. */
export interface Equation {
  readonly block: 'equation';
  readonly formula: string;
}

export function equation(formula: string): Equation {
  return { block: 'equation', formula };
}

export function layEquation({ formula }: Equation, { width, metrics, id }: Setting): Strip[] {
  const lines = breakLines(italic(formula), STYLES.body, width, metrics);
  return withGap(textStrips(lines, STYLES.body, 'P', id, metrics), 4);
}
