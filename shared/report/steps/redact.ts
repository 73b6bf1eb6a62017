import type { Athlete } from '../../model/athlete.ts';
import type { Block } from '../blocks/block.ts';
import type { Runs } from '../runs.ts';

/** Text to text: takes out what names the athlete. */
export type Redaction = (text: string) => string;

export const STANDS_FOR_NAME = 'the athlete';

/**
 * Replaces the athlete's name wherever it was typed: the whole name in any case of letters, each part of three letters
 * and more as it is written. A pseudonym is no name and stays.
 */
export function redactionFor({ name, isPseudonym }: Pick<Athlete, 'name' | 'isPseudonym'>): Redaction {
  const whole = name.trim();
  if (isPseudonym || whole === '') return (text) => text;
  const parts = whole.split(/[\s,]+/).filter((part) => part.length >= 3);
  const patterns = [wordPattern(whole, 'giu'), ...parts.map((part) => wordPattern(part, 'gu'))];
  return (text) => patterns.reduce((sofar, pattern) => sofar.replace(pattern, STANDS_FOR_NAME), text);
}

function wordPattern(words: string, flags: string): RegExp {
  const escaped = words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '\\s+');
  return new RegExp(`(?<!\\p{L})${escaped}(?!\\p{L})`, flags);
}

/** Everything a block says, redacted; also what its figures are labelled with. */
export function redactBlocks(blocks: readonly Block[], redact: Redaction): Block[] {
  return blocks.map((block) => redactBlock(block, redact));
}

function redactBlock(block: Block, redact: Redaction): Block {
  const runs = (some: Runs): Runs => some.map((run) => ({ ...run, text: redact(run.text) }));
  switch (block.block) {
    case 'heading':
      return { ...block, text: redact(block.text) };
    case 'paragraph':
      return { ...block, runs: runs(block.runs) };
    case 'list':
      return { ...block, items: block.items.map(runs) };
    case 'table':
      return { ...block, caption: redact(block.caption), rows: block.rows.map((row) => row.map(runs)) };
    case 'beside':
      return { ...block, label: runs(block.label), body: redactBlocks(block.body, redact) };
    case 'figure':
      return {
        ...block,
        alt: redact(block.alt),
        caption: block.caption === null ? null : redact(block.caption),
        draw: (width, metrics) => {
          const drawing = block.draw(width, metrics);
          const marks = drawing.marks.map((mark) =>
            mark.mark === 'text' ? { ...mark, text: redact(mark.text) } : mark,
          );
          return { ...drawing, marks };
        },
      };
    case 'equation':
    case 'page-break':
      return block;
  }
}
