import { DomainError } from '../../errors.ts';

/** All that pagination knows of a strip. */
export interface Item {
  readonly height: number;
  readonly gap: number;
  readonly keepWithNext: boolean;
  readonly startsPage: boolean;
  /** Height of the table head drawn again if this item is the first of a page and its table has begun; with the table's name. */
  readonly head: { readonly id: string; readonly height: number } | null;
}

/** Which items stand on a page and how far down, and whether a table head returns above them. */
export interface PagePlan {
  readonly repeatsHead: boolean;
  readonly items: readonly { readonly index: number; readonly top: number }[];
}

/** Far beyond any report; reached only by a layout that does not move on. */
const PAGE_CAP = 2000;
/** Rounding of sums of heights. */
const SLACK = 1e-6;

/**
 * Heights in, pages out: fill a page, then go back to the last place where a break is allowed. A chain of items that
 * wants to stay together but is taller than a page breaks where the page is full; an item taller than a page has one
 * to itself. No page is empty and no item is lost.
 * @throws DomainError 'internal' beyond 2000 pages
 */
export function paginate(items: readonly Item[], room: number): PagePlan[] {
  const pages: PagePlan[] = [];
  let next = 0;
  while (next < items.length) {
    if (pages.length === PAGE_CAP) {
      throw new DomainError('internal', `paginate needs a report of at most ${PAGE_CAP} pages`);
    }
    const page = fillPage(items, next, room);
    pages.push(page);
    next += page.items.length;
  }
  return pages;
}

function fillPage(items: readonly Item[], start: number, room: number): PagePlan {
  const head = items[start]?.head ?? null;
  const repeatsHead = head !== null && items[start - 1]?.head?.id === head.id;
  const placed: { index: number; top: number }[] = [];
  let bottom = repeatsHead ? head.height : 0;
  let end = start;
  for (; end < items.length; end++) {
    const item = items[end] as Item; // end < items.length
    const top = end === start ? bottom : bottom + item.gap;
    const isFull = top + item.height > room + SLACK || item.startsPage;
    if (end > start && isFull) break;
    placed.push({ index: end, top });
    bottom = top + item.height;
  }
  return { repeatsHead, items: placed.slice(0, lastAllowedBreak(items, start, end, room) - start) };
}

/** Where the page ends: at `end`, or earlier so that nothing that belongs together is parted. */
function lastAllowedBreak(items: readonly Item[], start: number, end: number, room: number): number {
  if (end === items.length || items[end]?.startsPage === true) return end;
  for (let at = end; at > start; at--) {
    // What no page could hold together is parted here and leaves no gap behind.
    if (items[at - 1]?.keepWithNext === false) return chainHeight(items, at) > room + SLACK ? end : at;
  }
  return end;
}

/** Height of what must stay together from an item on. */
function chainHeight(items: readonly Item[], from: number): number {
  let height = 0;
  for (let i = from; i < items.length; i++) {
    const item = items[i] as Item; // i < items.length
    height += item.height + (i === from ? 0 : item.gap);
    if (!item.keepWithNext) break;
  }
  return height;
}
