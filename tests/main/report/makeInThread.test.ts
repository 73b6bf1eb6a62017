import { expect, test } from 'vitest';
import { makeInThread } from '../../../main/report/makeInThread.ts';
import { makeReport, requestFor } from '../../../main/report/makeReport.ts';
import { writeDocx } from '../../../main/report/writeDocx.ts';
import { placeReport } from '../../../shared/report/compose.ts';
import { writeMarkdown } from '../../../shared/report/writeMarkdown.ts';
import { SAMPLE_CREATED_AT, sampleCase } from '../../support/sampleCase.ts';

const study = { kind: 'study', paper: 'a4' } as const;
const job = { file: sampleCase(), createdAt: SAMPLE_CREATED_AT, options: study };

test('the thread makes the very bytes that are made without it, tells of every page, and is used again', async () => {
  const { bytes, report } = await makeReport(job.file, job.createdAt, study);
  for (let i = 0; i < 2; i++) {
    const heard: number[] = [];
    const made = await makeInThread('pdf', job, { onPart: (done) => heard.push(done) });
    expect(Buffer.from(made.bytes).equals(Buffer.from(bytes))).toBe(true);
    expect(made.pageCount).toBe(report.pages.length);
    expect(heard).toEqual(report.pages.map(({ number }) => number));
  }
});

test('the other forms of a report are made there as without it, and each is heard of to its last part', async () => {
  const request = requestFor(job.file, job.createdAt, study);
  const heard: [number, number][] = [];
  const onPart = (done: number, of: number) => heard.push([done, of]);
  const isWhole = () => heard.length > 5 && heard.at(-1)?.[0] === heard.at(-1)?.[1] && heard.splice(0).length <= 20;
  expect(await makeInThread('pages', job, { onPart })).toEqual(placeReport(request));
  expect(isWhole()).toBe(true);
  expect(await makeInThread('md', job, { onPart })).toEqual(writeMarkdown(request));
  expect(isWhole()).toBe(true);
  const docx = await makeInThread('docx', job, { onPart });
  expect(Buffer.from(docx).equals(Buffer.from(await writeDocx(request)))).toBe(true);
  expect(isWhole()).toBe(true);
});

test.each(['pages', 'md', 'docx'] as const)('stopped on its first part, %s answers cancelled', async (as) => {
  const stop = new AbortController();
  const onPart = () => stop.abort();
  await expect(makeInThread(as, job, { signal: stop.signal, onPart })).rejects.toMatchObject({ code: 'cancelled' });
});

test('the caller goes on while the thread works: its clock is not held up', async () => {
  const start = performance.now();
  let [longest, last] = [0, start];
  const clock = setInterval(() => {
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }, 5);
  await makeInThread('pdf', job);
  clearInterval(clock);
  // Two programs may share this processor: what counts is that the making did not hold the clock as a whole.
  expect(longest).toBeLessThan(Math.max(150, (performance.now() - start) / 2));
});

test('stopped on its first page it answers cancelled, and the next report is made all the same', async () => {
  const stop = new AbortController();
  await expect(makeInThread('pdf', job, { signal: stop.signal, onPart: () => stop.abort() })).rejects.toMatchObject({
    code: 'cancelled',
  });
  await expect(makeInThread('pdf', job, { signal: stop.signal })).rejects.toMatchObject({ code: 'cancelled' });
  expect((await makeInThread('pdf', job)).pageCount).toBeGreaterThan(1);
});

test('what the thread cannot make fails with its words, and the next report is made all the same', async () => {
  const broken = { ...job, createdAt: 'no day at all' };
  await expect(makeInThread('pdf', broken)).rejects.toMatchObject({ name: 'DomainError', code: 'internal' });
  expect((await makeInThread('pdf', job)).pageCount).toBeGreaterThan(1);
});
