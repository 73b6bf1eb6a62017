import type { Strip } from '../blocks/block.ts';
import type { FontMetrics } from '../metrics.ts';
import { element, marksOf, mergeSame, shiftPlaced } from '../placed.ts';
import type { Page, Placed } from '../page.ts';
import type { Sheet } from '../sheet.ts';
import type { PagePlan } from './paginate.ts';

/** What stands on every page around the content. */
export type Furniture = (page: number, of: number, metrics: FontMetrics) => readonly Placed[];

/**
 * Strips moved to where their page wants them, lines of one paragraph joined, the running header and footer added.
 * Text that would lead to a place this report does not have stays text.
 */
export function place(
  strips: readonly Strip[],
  plans: readonly PagePlan[],
  sheet: Sheet,
  metrics: FontMetrics,
  furniture: Furniture,
): Page[] {
  const named = new Set(strips.flatMap((strip) => strip.content.flatMap(idsOf)));
  return plans.map((plan, i) => {
    const number = i + 1;
    const body = plan.items.flatMap(({ index, top }, k) => {
      const strip = strips[index] as Strip; // the plan was made from these strips
      const repeated = k === 0 && plan.repeatsHead ? repeatHead(strip, number) : [];
      const moved = strip.content.map((placed) => shiftPlaced(placed, sheet.left, sheet.top + top));
      return [...repeated.map((placed) => shiftPlaced(placed, sheet.left, sheet.top)), ...moved];
    });
    return {
      number,
      width: sheet.width,
      height: sheet.height,
      // Furniture lies under the content: it is drawn first.
      content: [
        ...furniture(number, plans.length, metrics),
        ...mergeSame(body).map((placed) => onlyLeadingTo(named, placed)),
      ],
    };
  });
}

function idsOf({ id, children }: Placed): string[] {
  return [id, ...children.flatMap(idsOf)];
}

function onlyLeadingTo(named: ReadonlySet<string>, placed: Placed): Placed {
  return {
    ...placed,
    marks: placed.marks.map((mark) => {
      if (mark.mark !== 'text' || mark.goTo === undefined || named.has(mark.goTo)) return mark;
      const { goTo: _lost, ...text } = mark;
      return { ...text, ink: 'ink' };
    }),
    children: placed.children.map((child) => onlyLeadingTo(named, child)),
  };
}

/** A head that returns is there for the eye only: the table already has it. */
function repeatHead({ head }: Strip, page: number): Placed[] {
  return head === null ? [] : [element('Artifact', `${head.id}.head-on-${page}`, head.content.flatMap(marksOf))];
}
