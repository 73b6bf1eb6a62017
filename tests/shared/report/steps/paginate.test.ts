import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Item, paginate } from '../../../../shared/report/steps/paginate.ts';

const item = (height: number, more: Partial<Item> = {}): Item => ({
  height,
  gap: 0,
  keepWithNext: false,
  startsPage: false,
  head: null,
  ...more,
});
const items = (count: number, height: number, more: Partial<Item> = {}) =>
  Array.from({ length: count }, () => item(height, more));
const counts = (list: readonly Item[], room: number) => paginate(list, room).map((page) => page.items.length);

test('10 items of 10 into 30 → 4 pages (3 + 3 + 3 + 1)', () => {
  expect(counts(items(10, 10), 30)).toEqual([3, 3, 3, 1]);
});

test('no items → no page', () => {
  expect(paginate([], 30)).toEqual([]);
});

test('4 items of 10 with gaps of 5 into 40 → 2 pages (10 + 5 + 10 + 5 + 10 = 40; the gap at a page top is dropped)', () => {
  const pages = paginate(items(4, 10, { gap: 5 }), 40);
  expect(pages.map((page) => page.items.map(({ top }) => top))).toEqual([[0, 15, 30], [0]]);
});

test('a heading of 10 that keeps with the next, after 2 items of 10 into 30 → moves to page 2 (2 + 2)', () => {
  expect(counts([item(10), item(10), item(10, { keepWithNext: true }), item(10)], 30)).toEqual([2, 2]);
});

test('a paragraph of 3 lines of 10 (orphans and widows 2) after 2 items of 10 into 40 → goes whole to page 2 (2 + 3)', () => {
  const paragraph = [item(10, { keepWithNext: true }), item(10, { keepWithNext: true }), item(10)];
  expect(counts([item(10), item(10), ...paragraph], 40)).toEqual([2, 3]);
});

test('a paragraph of 5 lines of 10 (orphans and widows 2) after 1 item of 10 into 40 → 1 + 3 lines, then 2', () => {
  const paragraph = [true, false, false, true, false].map((keepWithNext) => item(10, { keepWithNext }));
  expect(counts([item(10), ...paragraph], 40)).toEqual([4, 2]);
});

test('8 items of 10 that all keep with the next into 30 → break where the page is full (3 + 3 + 2), no near-empty page', () => {
  expect(counts([item(10), ...items(7, 10, { keepWithNext: true })], 30)).toEqual([3, 3, 2]);
});

test('an item of 50 into 30 → a page of its own, and the flow goes on (1 + 1 + 2)', () => {
  expect(counts([item(10), item(50), item(10), item(10)], 30)).toEqual([1, 1, 2]);
});

test('an item that starts a page → the page before it ends (1 + 2)', () => {
  expect(counts([item(10), item(10, { startsPage: true }), item(10)], 30)).toEqual([1, 2]);
});

test('a table with a head of 10 and 5 rows of 10 into 40 → head and 3 rows, then the head again and 2 rows', () => {
  const head = { id: 't', height: 10 };
  const pages = paginate([item(10, { keepWithNext: true }), ...items(5, 10, { head })], 40);
  expect(pages).toEqual([
    {
      repeatsHead: false,
      items: [0, 1, 2, 3].map((index) => ({ index, top: index * 10 })),
    },
    {
      repeatsHead: true,
      items: [
        { index: 4, top: 10 },
        { index: 5, top: 20 },
      ],
    },
  ]);
});

test('law: for any items no page is empty, none is lost or doubled, order holds, and what fits a page never leaves it', () => {
  const anyItem = fc.record({
    height: fc.integer({ min: 1, max: 120 }),
    gap: fc.integer({ min: 0, max: 20 }),
    keepWithNext: fc.boolean(),
    startsPage: fc.boolean(),
    head: fc.option(fc.record({ id: fc.constantFrom('a', 'b'), height: fc.integer({ min: 1, max: 20 }) })),
  });
  fc.assert(
    fc.property(fc.array(anyItem, { maxLength: 200 }), (list) => {
      const pages = paginate(list, 100);
      expect(pages.flatMap((page) => page.items.map(({ index }) => index))).toEqual(list.map((_, i) => i));
      for (const page of pages) {
        expect(page.items.length).toBeGreaterThan(0);
        const last = page.items.at(-1);
        const bottom = (last?.top ?? 0) + (list[last?.index ?? 0]?.height ?? 0);
        if (page.items.length > 1) expect(bottom).toBeLessThanOrEqual(100);
      }
    }),
  );
});
