import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadFontMetrics } from '../../../main/report/fontMetrics.ts';
import { placeReport, type ReportKind } from '../../../shared/report/compose.ts';
import type { Page, Placed, PlacedReport } from '../../../shared/report/page.ts';
import { boundsOfMark, marksOf } from '../../../shared/report/placed.ts';
import type { Paper } from '../../../shared/report/sheet.ts';
import type { TextMark } from '../../../shared/report/steps/breakLines.ts';
import { anyCase } from '../../support/anyCase.ts';
import { bodyOf, elementsOf, textOfReport } from '../../support/readPages.ts';
import { SAMPLE_CREATED_AT, SAMPLE_SHA256, sampleAssessment, sampleCase } from '../../support/sampleCase.ts';

const metrics = loadFontMetrics();
const KINDS: readonly ReportKind[] = ['client', 'study', 'referral'];
const PAPERS: readonly Paper[] = ['a4', 'letter'];

function place(kind: ReportKind, paper: Paper, file = sampleCase(), assessment = sampleAssessment()): PlacedReport {
  return placeReport({
    file,
    assessment,
    kind,
    paper,
    metrics,
    createdAt: SAMPLE_CREATED_AT,
    caseSha256: SAMPLE_SHA256,
  });
}

const SIDE = 58;
const TOP = 74;
const BOTTOM = 82;

function inkWidth({ text, face, size, tabular = false }: TextMark): number {
  return metrics.width(text.trimEnd(), face, size, tabular);
}

/** Marks that stand outside the text area, as sentences. */
function overflowing(page: Page): string[] {
  return bodyOf(page)
    .flatMap(marksOf)
    .flatMap((mark) => {
      // A space at the end of a line may hang over.
      const box = boundsOfMark(mark.mark === 'text' ? { ...mark, width: inkWidth(mark) } : mark);
      const isInside =
        box.left >= SIDE - 0.5 &&
        box.right <= page.width - SIDE + 0.5 &&
        box.top >= TOP - 1 &&
        box.bottom <= page.height - BOTTOM + 1;
      return isInside ? [] : [`page ${page.number}: ${JSON.stringify(mark)}`];
    });
}

/** Pairs of words that stand on each other, as sentences. */
function colliding(page: Page): string[] {
  const texts = bodyOf(page)
    .flatMap(marksOf)
    .flatMap((mark) => (mark.mark === 'text' && mark.text.trim() !== '' ? [mark] : []))
    .map((mark) => ({ mark, left: mark.x, right: mark.x + inkWidth(mark) }));
  return texts.flatMap((one, i) =>
    texts.slice(i + 1).flatMap((other) => {
      const isOnLine =
        Math.abs(one.mark.baseline - other.mark.baseline) < Math.min(one.mark.size, other.mark.size) * 0.5;
      const overlap = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      return isOnLine && overlap > 1 ? [`page ${page.number}: “${one.mark.text}” and “${other.mark.text}”`] : [];
    }),
  );
}

function checkPages(report: PlacedReport): void {
  expect(report.pages.length).toBeGreaterThan(0);
  for (const page of report.pages) {
    expect(overflowing(page)).toEqual([]);
    expect(colliding(page)).toEqual([]);
    expect(bodyOf(page).flatMap(marksOf).length, `page ${page.number} is blank`).toBeGreaterThan(0);
  }
}

function checkStructure(report: PlacedReport): void {
  const elements = elementsOf(report);
  const levels = elements.flatMap(({ role }) => (/^H\d$/.test(role) ? [Number(role.slice(1))] : []));
  expect(levels.filter((level) => level === 1)).toEqual([1]);
  levels.forEach((level, i) => expect(level - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1));
  for (const placed of elements) {
    if (placed.role === 'Figure' || placed.role === 'Formula') expect(placed.alt?.length ?? 0).toBeGreaterThan(0);
    if (placed.role === 'Table') {
      const cells = placed.children.filter((row) => row.role === 'TR').flatMap((row) => row.children);
      expect(cells.some((cell) => cell.role === 'TH' && cell.scope === 'Column')).toBe(true);
    }
    if (placed.role === 'L') expect(placed.children.every((child) => child.role === 'LI')).toBe(true);
  }
  for (const page of report.pages) {
    const ids = idsOf(page.content);
    expect(new Set(ids).size).toBe(ids.length);
  }
}

/** Ids with their parents' ids: one may come back on the next page, never on its own. */
function idsOf(content: readonly Placed[], path = ''): string[] {
  return content.flatMap((placed) => [`${path}/${placed.id}`, ...idsOf(placed.children, `${path}/${placed.id}`)]);
}

/** Letters only, as a page may break lines anywhere. */
const squeezed = (text: string) =>
  text
    .toWellFormed()
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\s\u00a0\u202f]+/gu, '');

describe.each(KINDS)('the %s report of the sample case', (kind) => {
  test.each(PAPERS)('on %s: nothing outside the text area, no two words on each other, no blank page', (paper) => {
    checkPages(place(kind, paper));
  });

  test('law of tagged pages: one H1, no skipped level, figures and formulas with words, tables with heads', () => {
    checkStructure(place(kind, 'a4'));
  });
});

test('law: 200 random cases (nothing recorded, 320 findings, long and foreign names) keep inside their pages and lose no paragraph', {
  timeout: 240_000,
}, () => {
  fc.assert(
    fc.property(anyCase, fc.constantFrom(...KINDS), fc.constantFrom(...PAPERS), ({ file, assessment }, kind, paper) => {
      const report = place(kind, paper, file, assessment);
      checkPages(report);
      checkStructure(report);
      const printed = squeezed(textOfReport(report));
      expect(printed).toContain(squeezed(file.case.question));
      if (kind !== 'referral')
        for (const injury of file.injuries) expect(printed).toContain(squeezed(injury.restrictions));
    }),
    // The same cases every time, so that a red run means a change; these once found a line half a point too wide.
    // LAYOUT_SEED=n looks at others.
    { numRuns: 200, seed: Number(process.env['LAYOUT_SEED'] ?? 986401853) },
  );
});
