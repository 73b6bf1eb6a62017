import type { Page, Placed, PlacedReport } from '../../shared/report/page.ts';
import { marksOf } from '../../shared/report/placed.ts';

/** Elements of a report in reading order, parents before children; what continues on a second page counts once. */
export function elementsOf(report: PlacedReport): Placed[] {
  const all: Placed[] = [];
  const walk = (placed: Placed): void => {
    if (!all.some((one) => one.id === placed.id)) all.push(placed);
    placed.children.forEach(walk);
  };
  for (const page of report.pages) for (const placed of page.content) walk(placed);
  return all;
}

/** What is on a page besides the running header and footer. */
export function bodyOf(page: Page): Placed[] {
  return page.content.filter((placed) => placed.role !== 'Artifact');
}

/** All text of a report's body, in order, white space as single spaces. */
export function textOfReport(report: PlacedReport): string {
  return report.pages.flatMap(bodyOf).map(textOfPlaced).join(' ').replace(/\s+/g, ' ');
}

export function textOfPlaced(placed: Placed): string {
  return marksOf(placed)
    .map((mark) => (mark.mark === 'text' ? (mark.actual ?? mark.text) : ''))
    .join(' ');
}
