import { afterEach, expect, test, vi } from 'vitest';
import { makeReport, type ReportOptions, requestFor } from '../../../main/report/makeReport.ts';
import { writeDocx } from '../../../main/report/writeDocx.ts';
import { drawPng } from '../../../main/report/drawPng.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { writeMarkdown } from '../../../shared/report/writeMarkdown.ts';
import { REPORT_KINDS, PAPERS } from '../../../shared/model/outcome.ts';
import { SAMPLE_CREATED_AT, sampleCase } from '../../support/sampleCase.ts';

const DAYS = ['2026-11-25T23:59:58.700Z', '2027-03-28T01:30:00.000Z'];
afterEach(() => void vi.useRealTimers());

/** What `make` gives when the clock of the machine says one day, and another. */
async function onTwoDays<T>(make: () => Promise<T>): Promise<T[]> {
  const made: T[] = [];
  for (const day of DAYS) {
    vi.useFakeTimers({ toFake: ['Date'], now: Date.parse(day) });
    // The clock is faked for everything that asks it.
    expect(new Date().toISOString()).toBe(day);
    made.push(await make());
  }
  return made;
}

/** One picture of a film, a pixel large. */
const picture = Buffer.from(drawPng({ height: 1, marks: [] }, 1)).toString('base64');
const SHA = 'a'.repeat(64);
const [trial] = sampleCase().movementTrials;
const file: CaseFile = {
  ...sampleCase(),
  stills: [
    {
      id: '00000000-0000-4000-8000-000000000901',
      trialId: trial?.id ?? '',
      timeS: 0,
      caption: 'One frame.',
      alt: 'One frame of the film.',
      mediaSha: SHA,
    },
  ],
};
const evidence = {
  traces: {},
  images: { [SHA]: { dataUri: `data:image/png;base64,${picture}`, width: 4, height: 3 } },
};

test.each(REPORT_KINDS.flatMap((kind) => PAPERS.map((paper) => [kind, paper] as const)))(
  'law: the %s report on %s has the same bytes on two days by the clock of the machine, its attachments included',
  async (kind, paper) => {
    const asked: ReportOptions = { kind, paper, attachCase: true, evidence };
    const [one, other] = await onTwoDays(async () => (await makeReport(file, SAMPLE_CREATED_AT, asked)).bytes);
    expect(Buffer.from(one ?? []).equals(Buffer.from(other ?? []))).toBe(true);
    if (kind === 'study') expect(Buffer.from(one ?? []).includes('/Subtype /Image')).toBe(true);
    const plain = await makeReport(file, SAMPLE_CREATED_AT, { ...asked, attachCase: false });
    expect(plain.bytes.length).toBeLessThan(one?.length ?? 0);
    // The instant of the last edit is in the file: another one is another file.
    const edited = await makeReport(file, '2026-11-25T12:00:01.000Z', asked);
    expect(Buffer.from(one ?? []).equals(Buffer.from(edited.bytes))).toBe(false);
  },
);

test.each(REPORT_KINDS)('law: so do the texts of the %s report that can be edited', async (kind) => {
  const request = requestFor(file, SAMPLE_CREATED_AT, { kind, paper: 'letter', evidence });
  const [one, other] = await onTwoDays(async () => ({
    docx: Buffer.from(await writeDocx(request)).toString('base64'),
    md: writeMarkdown(request),
  }));
  expect(one?.docx).toBe(other?.docx);
  expect(one?.md).toEqual(other?.md);
});
