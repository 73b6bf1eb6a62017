import { expect, test } from 'vitest';
import { type FormulaNode, parseFormula } from '../../../../shared/kernel/quantity/parseFormula.ts';

/** The tree written out with every bracket, so that a test can read it. */
function show(node: FormulaNode | null): string {
  if (node === null) return 'not a formula';
  switch (node.node) {
    case 'symbol':
      return node.sub === null ? node.base : `${node.base}[${node.sub}]`;
    case 'upright':
      return node.text;
    case 'power':
      return `{${show(node.base)}}^{${show(node.exponent)}}`;
    case 'fraction':
      return `{${show(node.over)}}/{${show(node.under)}}`;
    case 'root':
      return `√{${show(node.of)}}`;
    case 'row':
      return node.parts.map(show).join(' ');
  }
}

test.each([
  ['h = g t_f^2 / 8', 'h = {g {t[f]}^{2}}/{8}'],
  ['h = v_to^2 / (2 g)', 'h = {{v[to]}^{2}}/{2 g}'],
  ['v = sqrt(2 g h)', 'v = √{2 g h}'],
  ['F = W (1 + h / s)', 'F = W ( 1 + {h}/{s} )'],
  ['r = (D_ring - D_ball / sin θ_e) / 2', 'r = {D[ring] − {D[ball]}/{sin θ[e]}}/{2}'],
  ['v = 1 / (2 cos^2 θ)', 'v = {1}/{2 {cos}^{2} θ}'],
  ['θ = atan(Δh / d) / 2', 'θ = {atan ( {Δh}/{d} )}/{2}'],
])('common notation, no source: %s is read as %s', (formula, tree) => {
  expect(show(parseFormula(formula))).toBe(tree);
});

test.each(['(a + b', 'a ^', '/ b', ''])('law: %s is no formula and is left as it stands', (text) => {
  expect(parseFormula(text)).toBeNull();
});
