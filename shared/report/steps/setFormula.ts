import type { FormulaNode } from '../../kernel/quantity/parseFormula.ts';
import type { FontMetrics } from '../metrics.ts';
import type { Face, Ink, Mark } from '../page.ts';
import { shiftMark } from '../placed.ts';
import { setLabel } from './setLabel.ts';

/** A piece of mathematics: marks around a baseline at y = 0, and how far it reaches. */
export interface Box {
  readonly width: number;
  readonly above: number;
  readonly below: number;
  readonly marks: readonly Mark[];
}

/** What a symbol is replaced by when numbers are put in; null: it stays. */
export type Substitution = (symbol: string) => string | null;

/** Relative to the size of what they are attached to. */
const SMALL = 0.72;
/** The fraction bar runs at this height; relative to the size. */
const AXIS = 0.25;
const BAR = 0.55;
const INK: Ink = 'ink';

/**
 * A formula set as mathematics: symbols slanted, numbers and names upright, fractions built up, powers raised.
 * With `values` the same formula with numbers put in for the symbols they know; `outcome` is set after it.
 */
export function setFormula(
  node: FormulaNode,
  size: number,
  metrics: FontMetrics,
  values: Substitution = () => null,
  outcome = '',
): Box {
  const set = (part: FormulaNode, at: number): Box => {
    switch (part.node) {
      case 'symbol':
        return symbol(part, at);
      case 'upright':
        return text(part.text, 'sans', at, metrics);
      case 'row':
        return row(
          part.parts.map((one) => [one, set(one, at)]),
          at,
          metrics,
        );
      case 'power':
        return power(set(part.base, at), set(part.exponent, at * SMALL), at);
      case 'fraction':
        return fraction(set(part.over, at * FRACTION), set(part.under, at * FRACTION), at);
      case 'root':
        return root(set(part.of, at), at);
    }
  };
  const symbol = (part: Extract<FormulaNode, { node: 'symbol' }>, at: number): Box => {
    const value = values(part.sub === null ? part.base : `${part.base}_${part.sub}`);
    if (value !== null) return text(value, 'sans', at, metrics);
    const base = text(part.base, 'sansItalic', at, metrics);
    if (part.sub === null) return base;
    const sub = text(part.sub, 'sans', at * SMALL, metrics);
    return beside([base, lower(sub, at * 0.18)]);
  };
  return outcome === '' ? set(node, size) : beside([set(node, size), text(outcome, 'sansBold', size, metrics)]);
}

/** Numerator and denominator are a little smaller than the line they stand in. */
const FRACTION = 0.9;

function text(words: string, face: Face, size: number, metrics: FontMetrics): Box {
  const set = setLabel(words, face, metrics);
  const width = metrics.width(set.text, set.face, size, true);
  const mark: Mark = { mark: 'text', x: 0, baseline: 0, size, ink: INK, width, tabular: true, ...set };
  return { width, above: size * 0.75, below: size * 0.22, marks: [mark] };
}

const RELATIONS = /^[=<>≤≥≈]$/;
const OPERATORS = /^[+−±×·|]$/;

/** Factors stand a thin space apart, relations and operators wider, brackets and commas close. */
function row(parts: readonly (readonly [FormulaNode, Box])[], size: number, metrics: FontMetrics): Box {
  return beside(
    grownBrackets(parts, size, metrics).map(([node, box], i) => {
      const before = parts[i - 1]?.[0];
      return before === undefined ? box : pushed(box, size * spaceBetween(before, node, i === 1));
    }),
  );
}

/** Brackets as tall as what they hold. */
function grownBrackets(
  parts: readonly (readonly [FormulaNode, Box])[],
  size: number,
  metrics: FontMetrics,
): readonly (readonly [FormulaNode, Box])[] {
  const inside = parts[1]?.[1];
  if (parts.length !== 3 || inside === undefined || inside.above + inside.below < size * 1.5) return parts;
  return parts.map(([node, box]) => {
    const sign = uprightText(node);
    if (sign !== '(' && sign !== ')') return [node, box] as const;
    const grown = (inside.above + inside.below) * 0.95;
    const middle = (inside.below - inside.above) / 2;
    return [node, lower(text(sign, 'sans', grown, metrics), middle + grown * 0.28)] as const;
  });
}

function spaceBetween(left: FormulaNode, right: FormulaNode, isSecond: boolean): number {
  const [a, b] = [uprightText(left), uprightText(right)];
  if ((a !== null && RELATIONS.test(a)) || (b !== null && RELATIONS.test(b))) return 0.28;
  // A sign in front of a term belongs to it.
  if (a === '−' && isSecond) return 0;
  if ((a !== null && OPERATORS.test(a)) || (b !== null && OPERATORS.test(b))) return 0.22;
  if (a === '(' || b === ')' || b === ',') return 0;
  if (a === ',') return 0.2;
  return 0.14;
}

function uprightText(node: FormulaNode): string | null {
  return node.node === 'upright' ? node.text : null;
}

function power(base: Box, exponent: Box, size: number): Box {
  return beside([base, lower(exponent, -Math.max(size * 0.36, base.above - size * 0.38))]);
}

function fraction(over: Box, under: Box, size: number): Box {
  const width = Math.max(over.width, under.width) + size * 0.3;
  const bar = -size * AXIS;
  const gap = size * 0.12;
  const overBaseline = bar - gap - over.below;
  const underBaseline = bar + gap + under.above;
  return {
    width: width + size * 0.08,
    above: -overBaseline + over.above,
    below: underBaseline + under.below,
    marks: [
      ...move(over, (width - over.width) / 2, overBaseline),
      { mark: 'line', x1: 0, y1: bar, x2: width, y2: bar, weight: BAR, ink: INK },
      ...move(under, (width - under.width) / 2, underBaseline),
    ],
  };
}

/** A drawn radical: it grows with what stands under it. */
function root(inside: Box, size: number): Box {
  const hook = size * 0.5;
  const top = -(inside.above + size * 0.14);
  const width = hook + size * 0.08 + inside.width + size * 0.06;
  const points = [
    [0, -size * 0.22],
    [hook * 0.28, -size * 0.32],
    [hook * 0.6, inside.below],
    [hook, top],
    [width, top],
  ];
  const d = points.map(([x = 0, y = 0], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(2)},${y.toFixed(2)}`).join('');
  return {
    width: width + size * 0.06,
    above: -top + size * 0.05,
    below: inside.below,
    marks: [{ mark: 'path', d, fill: null, stroke: INK, weight: BAR }, ...move(inside, hook + size * 0.08, 0)],
  };
}

function beside(boxes: readonly Box[]): Box {
  let x = 0;
  const marks: Mark[] = [];
  for (const box of boxes) {
    marks.push(...move(box, x, 0));
    x += box.width;
  }
  return {
    width: x,
    above: Math.max(0, ...boxes.map((box) => box.above)),
    below: Math.max(0, ...boxes.map((box) => box.below)),
    marks,
  };
}

function lower(box: Box, dy: number): Box {
  return { width: box.width, above: box.above - dy, below: box.below + dy, marks: move(box, 0, dy) };
}

function pushed(box: Box, dx: number): Box {
  return { ...box, width: box.width + dx, marks: move(box, dx, 0) };
}

function move(box: Box, dx: number, dy: number): Mark[] {
  return box.marks.map((mark) => shiftMark(mark, dx, dy));
}
