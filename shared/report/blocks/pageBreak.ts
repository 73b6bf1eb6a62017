/** What follows starts on a new page. */
export interface PageBreak {
  readonly block: 'page-break';
}

export const pageBreak: PageBreak = { block: 'page-break' };
