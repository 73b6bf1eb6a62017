import type { Mark, Placed, Role } from './page.ts';

/** Small tools for structure elements; everything returns new ones. */

export function element(
  role: Role,
  id: string,
  marks: readonly Mark[],
  children: readonly Placed[] = [],
  more: Pick<Placed, 'alt' | 'scope'> = {},
): Placed {
  return { role, id, marks, children, ...more };
}

export function shiftPlaced(placed: Placed, dx: number, dy: number): Placed {
  return {
    ...placed,
    marks: placed.marks.map((mark) => shiftMark(mark, dx, dy)),
    children: placed.children.map((child) => shiftPlaced(child, dx, dy)),
  };
}

export function shiftMark(mark: Mark, dx: number, dy: number): Mark {
  switch (mark.mark) {
    case 'text':
      return { ...mark, x: mark.x + dx, baseline: mark.baseline + dy };
    case 'line':
      return { ...mark, x1: mark.x1 + dx, y1: mark.y1 + dy, x2: mark.x2 + dx, y2: mark.y2 + dy };
    case 'rect':
    case 'image':
      return { ...mark, x: mark.x + dx, y: mark.y + dy };
    case 'path':
      return { ...mark, d: shiftPath(mark.d, dx, dy) };
  }
}

const NUMBER = /-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/g;

/** Only absolute M, L, C, Q and Z are drawn here, so that numbers alternate between x and y. */
function shiftPath(d: string, dx: number, dy: number): string {
  let i = 0;
  return d.replace(NUMBER, (n) => String(Number((Number(n) + (i++ % 2 === 0 ? dx : dy)).toFixed(3))));
}

/** Siblings with one id become one element, where the first stood: the lines of a paragraph, of a cell, the rows of a table. */
export function mergeSame(elements: readonly Placed[]): Placed[] {
  const merged = new Map<string, { readonly first: Placed; marks: Mark[]; children: Placed[] }>();
  for (const next of elements) {
    const known = merged.get(next.id);
    if (known === undefined) {
      merged.set(next.id, { first: next, marks: [...next.marks], children: [...next.children] });
    } else {
      known.marks.push(...next.marks);
      known.children.push(...next.children);
    }
  }
  return [...merged.values()].map(({ first, marks, children }) => ({ ...first, marks, children: mergeSame(children) }));
}

/** All marks of an element and of what it holds. */
export function marksOf(placed: Placed): Mark[] {
  return [...placed.marks, ...placed.children.flatMap(marksOf)];
}

export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The box around everything an element draws. Text counts from 0.8 of its size above the baseline to 0.25 below. */
export function boundsOf(placed: Placed): Bounds {
  const boxes = marksOf(placed).map(boundsOfMark);
  return {
    left: Math.min(...boxes.map((box) => box.left)),
    top: Math.min(...boxes.map((box) => box.top)),
    right: Math.max(...boxes.map((box) => box.right)),
    bottom: Math.max(...boxes.map((box) => box.bottom)),
  };
}

export function boundsOfMark(mark: Mark): Bounds {
  switch (mark.mark) {
    case 'text':
      return {
        left: mark.x,
        top: mark.baseline - mark.size * 0.8,
        right: mark.x + mark.width,
        bottom: mark.baseline + mark.size / 4,
      };
    case 'line':
      return boxAround([mark.x1, mark.x2], [mark.y1, mark.y2]);
    case 'rect':
    case 'image':
      return boxAround([mark.x, mark.x + mark.width], [mark.y, mark.y + mark.height]);
    case 'path': {
      const numbers = (mark.d.match(NUMBER) ?? []).map(Number);
      return boxAround(
        numbers.filter((_, i) => i % 2 === 0),
        numbers.filter((_, i) => i % 2 === 1),
      );
    }
  }
}

function boxAround(xs: readonly number[], ys: readonly number[]): Bounds {
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}
