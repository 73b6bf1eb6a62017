import type { FormulaNode } from '../../shared/kernel/quantity/parseFormula.ts';

const FUNCTIONS: Readonly<Record<string, (...values: number[]) => number>> = {
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
  atan2: Math.atan2,
  log: Math.log,
  exp: Math.exp,
  abs: Math.abs,
  max: Math.max,
  min: Math.min,
};

/**
 * Value of the right-hand side of a set formula with numbers for its symbols, so that a test can hold what is printed
 * against what was computed.
 * @throws Error for a symbol without a number
 */
export function evaluateFormula(equation: FormulaNode, values: Readonly<Record<string, number>>): number {
  if (equation.node !== 'row') return valueOf(equation, values);
  const equals = equation.parts.findIndex((part) => textOf(part) === '=');
  return sum(equation.parts.slice(equals + 1), values);
}

function valueOf(node: FormulaNode, values: Readonly<Record<string, number>>): number {
  switch (node.node) {
    case 'symbol': {
      const name = node.sub === null ? node.base : `${node.base}_${node.sub}`;
      const value = name === 'π' ? Math.PI : values[name];
      if (value === undefined) throw new Error(`no number for ${name}`);
      return value;
    }
    case 'upright': {
      const value = values[node.text] ?? Number(node.text);
      if (Number.isNaN(value)) throw new Error(`no number for ${node.text}`);
      return value;
    }
    case 'power':
      return valueOf(node.base, values) ** valueOf(node.exponent, values);
    case 'fraction':
      return valueOf(node.over, values) / valueOf(node.under, values);
    case 'root':
      return Math.sqrt(valueOf(node.of, values));
    case 'row':
      return rowValue(node.parts, values);
  }
}

function rowValue(parts: readonly FormulaNode[], values: Readonly<Record<string, number>>): number {
  const [first, second] = parts;
  if (textOf(first) === '(' && second !== undefined) return valueOf(second, values);
  const apply = FUNCTIONS[textOf(first) ?? ''];
  if (apply !== undefined && second !== undefined && parts.length === 2) return apply(...argumentsOf(second, values));
  const isSum = parts.some((part) => textOf(part) === '+' || textOf(part) === '−');
  return isSum ? sum(parts, values) : parts.reduce((product, part) => product * valueOf(part, values), 1);
}

function sum(parts: readonly FormulaNode[], values: Readonly<Record<string, number>>): number {
  let [total, sign] = [0, 1];
  for (const part of parts) {
    if (textOf(part) === '+') sign = 1;
    else if (textOf(part) === '−') sign = -1;
    else total += sign * valueOf(part, values);
  }
  return total;
}

/** What stands in the brackets after a function, divided at its commas. */
function argumentsOf(node: FormulaNode, values: Readonly<Record<string, number>>): number[] {
  const inside = node.node === 'row' && textOf(node.parts[0]) === '(' ? node.parts[1] : node;
  if (inside?.node !== 'row') return inside === undefined ? [] : [valueOf(inside, values)];
  const lists: FormulaNode[][] = [[]];
  for (const part of inside.parts) {
    if (textOf(part) === ',') lists.push([]);
    else lists.at(-1)?.push(part);
  }
  return lists.map((list) => sum(list, values));
}

function textOf(node: FormulaNode | undefined): string | null {
  return node?.node === 'upright' ? node.text : null;
}
