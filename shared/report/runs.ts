import { formatQuantity, NO_BREAK_SPACE, type Quantified, withUnit } from '../format/number.ts';
import type { Ink } from './page.ts';
import { isolated, withoutIsolates } from './steps/bidi.ts';
import type { Unit } from '../units.ts';

/** A stretch of text set one way. What it does not say, the style of its paragraph decides. */
export interface Run {
  readonly text: string;
  readonly emphasis?: 'bold' | 'italic';
  /** Relative to the size of the paragraph. */
  readonly scale?: number;
  /** Relative to the size of the paragraph, above the baseline. */
  readonly rise?: number;
  readonly ink?: Ink;
  readonly isTabular?: boolean;
  readonly goTo?: string;
}
export type Runs = readonly Run[];

export const plain = (text: string): Runs => [{ text }];
export const strong = (text: string): Runs => [{ text, emphasis: 'bold' }];
export const italic = (text: string): Runs => [{ text, emphasis: 'italic' }];
export const italicQuiet = (text: string): Runs => [{ text, emphasis: 'italic', ink: 'muted' }];
export const quiet = (text: string): Runs => [{ text, ink: 'muted' }];

/** Text that leads to a named place of the same report. */
export const leadingTo = (anchor: string, text: string): Runs => [{ text, goTo: anchor, ink: 'accent' }];

/** `41.2 ± 1.3 cm`, the uncertainty in smaller type. */
export function quantityRuns(quantity: Quantified, displayUnit: Unit = quantity.unit): Runs {
  const { value, u, unit } = formatQuantity(quantity, displayUnit);
  if (u === null) return [{ text: withUnit(value, unit), isTabular: true }];
  return [
    { text: value, isTabular: true },
    { text: `${NO_BREAK_SPACE}±${NO_BREAK_SPACE}${u}`, scale: 0.82, isTabular: true },
    { text: withUnit('', unit) },
  ];
}

/** `v_to` as a slanted v with a small lowered `to`. */
export function symbolRuns(symbol: string): Runs {
  const [base = '', below] = symbol.split(/_(.*)/s);
  const italicBase = italic(base);
  return below === undefined
    ? italicBase
    : [...italicBase, { text: below.replace(/[{}]/g, ''), scale: 0.72, rise: -0.2 }];
}

/** Runs as bare text, for alternative text and metadata. */
export function textOf(runs: Runs): string {
  return withoutIsolates(runs.map((run) => run.text).join(''));
}

/** Texts joined with a middle dot; empty ones leave no gap. Each keeps its own direction. */
export function dotted(...texts: readonly (string | null)[]): string {
  return texts
    .flatMap((text) => text ?? [])
    .filter((text) => text !== '')
    .map(isolated)
    .join(' · ');
}
