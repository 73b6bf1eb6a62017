import type { ReactNode } from 'react';
import { type FormulaNode, parseFormula } from '../../shared/kernel/quantity/parseFormula.ts';

/** A formula, set: symbols slanted, numbers and functions upright, real fractions. Screen readers get the linear text. */
export function Formula({ text }: { text: string }) {
  // Several words without a sign of equality are prose: a search that has no closed formula.
  const isProse = text.includes(' ') && !text.includes('=');
  const tree = isProse ? null : parseFormula(text);
  if (tree === null) return <span className="formula">{text}</span>;
  return (
    <span className="formula">
      <span className="only-heard">{text}</span>
      <span aria-hidden="true">{set(tree)}</span>
    </span>
  );
}

const RELATIONS = new Set(['=', '+', '−', '±', '≈', '<', '>', '≤', '≥', '×', '·']);
/** A letter slants, with its Δ or δ; an abbreviation stands upright. */
const IS_LETTER = /^[Δδ]?\p{L}\d*$/u;

function set(node: FormulaNode): ReactNode {
  switch (node.node) {
    case 'symbol':
      return (
        <>
          {IS_LETTER.test(node.base) ? <i>{node.base}</i> : node.base}
          {node.sub !== null && <sub>{node.sub}</sub>}
        </>
      );
    case 'upright':
      return RELATIONS.has(node.text) ? <span className="formula-relation">{node.text}</span> : node.text;
    case 'power':
      return (
        <>
          {set(node.base)}
          <sup>{set(node.exponent)}</sup>
        </>
      );
    case 'fraction':
      return (
        <span className="formula-fraction">
          <span>{set(node.over)}</span>
          <span>{set(node.under)}</span>
        </span>
      );
    case 'root':
      return (
        <span className="formula-root">
          √<span>{set(node.of)}</span>
        </span>
      );
    case 'row':
      return node.parts.map((part, index) => (
        // The parts of a formula have no identity but their place.
        // oxlint-disable-next-line react/no-array-index-key
        <span key={index}>
          {index > 0 && needsThinSpace(node.parts[index - 1], part) && '\u2009'}
          {set(part)}
        </span>
      ));
  }
}

/** A thin space between two factors, none beside brackets, commas and operators. */
function needsThinSpace(before: FormulaNode | undefined, after: FormulaNode): boolean {
  if (before === undefined || (before.node === 'upright' && !/[\p{L}\d,]$/u.test(before.text))) return false;
  return after.node !== 'upright' || /^[\p{L}\d(]/u.test(after.text);
}
