import { element, shiftPlaced } from '../placed.ts';
import { plain } from '../runs.ts';
import { STYLES } from '../sheet.ts';
import { breakLines } from '../steps/breakLines.ts';
import { type Setting, type Strip, strip, withGap } from './block.ts';
import { textStrips } from './paragraph.ts';

export interface Heading {
  readonly block: 'heading';
  readonly level: 1 | 2 | 3;
  readonly text: string;
  /** Name by which other text leads here; null: none does. */
  readonly anchor: string | null;
}

export function heading(level: 1 | 2 | 3, text: string, anchor: string | null = null): Heading {
  return { block: 'heading', level, text, anchor };
}

const STYLE = { 1: STYLES.title, 2: STYLES.section, 3: STYLES.subsection } as const;
const GAP = { 1: 0, 2: 22, 3: 12 };
/** Room between the rule above a section and its heading. */
const RULE_ROOM = 6;

/** A heading stays with what follows it. A section starts with a rule across the page. */
export function layHeading({ level, text, anchor }: Heading, { width, metrics, id: place }: Setting): Strip[] {
  const id = anchor ?? place;
  const style = STYLE[level];
  const strips = textStrips(breakLines(plain(text), style, width, metrics), style, `H${level}`, id, metrics).map(
    (one) => ({ ...one, keepWithNext: true }),
  );
  const [first, ...rest] = withGap(strips, GAP[level]);
  if (level !== 2 || first === undefined) return withGap(strips, GAP[level]);
  const rule = element('Artifact', `${id}.rule`, [
    { mark: 'line', x1: 0, y1: 0, x2: width, y2: 0, weight: 0.6, ink: 'rule' },
  ]);
  const moved = first.content.map((placed) => shiftPlaced(placed, 0, RULE_ROOM));
  return [strip(first.height + RULE_ROOM, [rule, ...moved], { gap: GAP[level], keepWithNext: true }), ...rest];
}
