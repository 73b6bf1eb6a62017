import type { Athlete } from '../../model/athlete.ts';
import type { Block } from '../blocks/block.ts';
import type { Runs } from '../runs.ts';

/** Text to text: takes out what names the athlete. */
export type Redaction = (text: string) => string;

export const STANDS_FOR_NAME = 'the athlete';

/**
 * Replaces the athlete's name wherever it was typed: the whole name and each part of four letters and more in any case of
 * letters, a part of three as it is written. A pseudonym is no name and stays.
 */
export function redactionFor({ name, isPseudonym }: Pick<Athlete, 'name' | 'isPseudonym'>): Redaction {
  if (isPseudonym || name.trim() === '') return (text) => text;
  const patterns = namesOf(name).map((part) => wordPattern(part, part.length > 3 ? 'giu' : 'gu'));
  return (text) => patterns.reduce((sofar, pattern) => sofar.replace(pattern, STANDS_FOR_NAME), text);
}

/** The whole name, then its parts of three letters and more. */
export function namesOf(name: string): string[] {
  const whole = name.trim();
  return [...new Set([whole, ...whole.split(/[\s,]+/), ...whole.split(/[\s,.-]+/)])].filter((part) => part.length >= 3);
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
