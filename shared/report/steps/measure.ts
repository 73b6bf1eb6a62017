import { layBeside } from '../blocks/beside.ts';
import type { Block, Setting, Strip } from '../blocks/block.ts';
import { layEquation } from '../blocks/equation.ts';
import { layFigure } from '../blocks/figure.ts';
import { layHeading } from '../blocks/heading.ts';
import { layList } from '../blocks/list.ts';
import { layParagraph } from '../blocks/paragraph.ts';
import { layTable } from '../blocks/table.ts';

/** Blocks in, strips of known height out. Each block gets a name of its own, by its place. */
export function measure(
  blocks: readonly Block[],
  setting: Omit<Setting, 'layAll'>,
  onBlock?: (done: number, of: number) => void,
): Strip[] {
  const strips: Strip[] = [];
  let startsPage = false;
  blocks.forEach((block, i) => {
    onBlock?.(i + 1, blocks.length);
    if (block.block === 'page-break') {
      startsPage = true;
      return;
    }
    const laid = layOne(block, {
      ...setting,
      id: `${setting.id}.${i}`,
      layAll: (some, inside) => measure(some, inside),
    });
    const isIntroduction =
      block.block === 'paragraph' && blocks[i - 1]?.block === 'heading' && introduces(blocks[i + 1]);
    const [first, ...rest] = isIntroduction ? keepLast(laid) : laid;
    if (first === undefined) return;
    strips.push(startsPage ? { ...first, startsPage: true } : first, ...rest);
    startsPage = false;
  });
  return strips;
}

/** A sentence under a heading stays with the table, list or figure that it introduces. */
function introduces(next: Block | undefined): boolean {
  return next !== undefined && next.block !== 'heading' && next.block !== 'paragraph' && next.block !== 'page-break';
}

function keepLast(strips: readonly Strip[]): Strip[] {
  return strips.map((one, i) => (i === strips.length - 1 ? { ...one, keepWithNext: true } : one));
}

function layOne(block: Exclude<Block, { block: 'page-break' }>, setting: Setting): Strip[] {
  switch (block.block) {
    case 'heading':
      return layHeading(block, setting);
    case 'paragraph':
      return layParagraph(block, setting);
    case 'list':
      return layList(block, setting);
    case 'table':
      return layTable(block, setting);
    case 'beside':
      return layBeside(block, setting);
    case 'figure':
      return layFigure(block, setting);
    case 'equation':
      return layEquation(block, setting);
  }
}
