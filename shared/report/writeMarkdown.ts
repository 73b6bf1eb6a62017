import type { Block } from './blocks/block.ts';
import { composeReport, type ReportRequest } from './compose.ts';
import type { Evidence } from './evidence.ts';
import type { FontMetrics } from './metrics.ts';
import type { Runs } from './runs.ts';
import { sheetFor } from './sheet.ts';
import { svgOf } from './svg.ts';

/** A report as text that can be edited, its figures as files beside it. */
export interface EditableReport {
  /** Markdown with tables (GitHub Flavored Markdown Spec 0.29). */
  readonly markdown: string;
  /** To be written into the folder `figures`. */
  readonly figures: readonly { readonly fileName: string; readonly svg: string }[];
}

/** The same report as {@link composeReport} tells it, without pages. The same request gives the same text. */
export function writeMarkdown(request: ReportRequest): EditableReport {
  const { blocks } = composeReport(request);
  const figures: { fileName: string; svg: string }[] = [];
  const { width } = sheetFor(request.paper).room;
  const desk: Desk = { width, metrics: request.metrics, figures, images: request.evidence?.images ?? {} };
  const parts = blocks.flatMap((block, i) => {
    request.onBlock?.(i + 1, blocks.length);
    return markdownOf(block, desk);
  });
  return { markdown: `${parts.filter((part) => part !== '').join('\n\n')}\n`, figures };
}

interface Desk {
  readonly width: number;
  readonly metrics: FontMetrics;
  readonly images: Evidence['images'];
  readonly figures: { fileName: string; svg: string }[];
}

/** One block as paragraphs of Markdown. */
function markdownOf(block: Block, desk: Desk): string[] {
  switch (block.block) {
    case 'heading':
      return [`${'#'.repeat(block.level)} ${escaped(block.text)}`];
    case 'paragraph':
      return [inline(block.runs)];
    case 'list':
      return [block.items.map((item, i) => `${block.isNumbered ? `${i + 1}.` : '-'} ${oneLine(item)}`).join('\n')];
    case 'table': {
      const heads = block.columns.map((column) => oneLine([{ text: column.head }]));
      const rules = block.columns.map((column) => (column.align === 'right' ? '---:' : '---'));
      const rows = [heads, rules, ...block.rows.map((row) => row.map(oneLine))];
      return [`*${escaped(block.caption)}*`, rows.map((row) => `| ${row.join(' | ')} |`).join('\n')];
    }
    case 'beside':
      return [
        `**${escaped(
          block.label
            .map((run) => run.text)
            .join('')
            .replaceAll('\n', ', '),
        )}**`,
        ...block.body.flatMap((one) => markdownOf(one, desk)),
      ];
    case 'figure': {
      const fileName = `figure-${String(desk.figures.length + 1).padStart(2, '0')}.svg`;
      desk.figures.push({
        fileName,
        svg: svgOf(block.draw(desk.width, desk.metrics), desk.width, block.alt, desk.images),
      });
      return [
        `![${escaped(block.alt)}](figures/${fileName})`,
        block.caption === null ? '' : `*${escaped(block.caption)}*`,
      ];
    }
    case 'equation':
      return [`\`${block.formula}${block.result === null ? '' : `; ${block.result.symbol} = ${block.result.words}`}\``];
    case 'page-break':
      return ['---'];
  }
}

function inline(runs: Runs): string {
  return runs
    .map(({ text, emphasis }) => {
      const mark = emphasis === 'bold' ? '**' : emphasis === 'italic' ? '*' : '';
      // Emphasis marks may not touch a space inside.
      const [, before = '', inner = '', after = ''] = /^(\s*)(.*?)(\s*)$/s.exec(text) ?? [];
      return inner === '' ? text : `${before}${mark}${escaped(inner)}${mark}${after}`;
    })
    .join('')
    .replace(/^(\d+)\./gm, '$1\\.')
    .replace(/^([-+])/gm, '\\$1');
}

function oneLine(runs: Runs): string {
  return inline(runs).replace(/\s*\n\s*/g, '<br>');
}

function escaped(text: string): string {
  return text.replace(/[\\`*_[\]<>#|]/g, '\\$&');
}
