import { expect, test } from 'vitest';
import { makeInThread } from '../../../main/report/makeInThread.ts';
import { makeReport } from '../../../main/report/makeReport.ts';
import { SAMPLE_CREATED_AT, sampleCase } from '../../support/sampleCase.ts';

const study = { kind: 'study', paper: 'a4' } as const;
const job = { file: sampleCase(), createdAt: SAMPLE_CREATED_AT, options: study };

test('the thread makes the very bytes that are made without it, tells of every page, and is used again', async () => {
  const { bytes, report } = await makeReport(job.file, job.createdAt, study);
  for (let i = 0; i < 2; i++) {
    const heard: number[] = [];
    const made = await makeInThread(job, { onPage: (done) => heard.push(done) });
    expect(Buffer.from(made.bytes).equals(Buffer.from(bytes))).toBe(true);
    expect(made.pageCount).toBe(report.pages.length);
    expect(heard).toEqual(report.pages.map(({ number }) => number));
  }
});

test('the caller goes on while the thread works: its clock is not held up', async () => {
  const start = performance.now();
  let [longest, last] = [0, start];
  const clock = setInterval(() => {
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }, 5);
  await makeInThread(job);
  clearInterval(clock);
  // Two programs may share this processor: what counts is that the making did not hold the clock as a whole.
  expect(longest).toBeLessThan(Math.max(150, (performance.now() - start) / 2));
});

test('stopped on its first page it answers cancelled, and the next report is made all the same', async () => {
  const stop = new AbortController();
  await expect(makeInThread(job, { signal: stop.signal, onPage: () => stop.abort() })).rejects.toMatchObject({
    code: 'cancelled',
  });
  await expect(makeInThread(job, { signal: stop.signal })).rejects.toMatchObject({ code: 'cancelled' });
  expect((await makeInThread(job)).pageCount).toBeGreaterThan(1);
});

test('what the thread cannot make fails with its words, and the next report is made all the same', async () => {
  const broken = { ...job, createdAt: 'no day at all' };
  await expect(makeInThread(broken)).rejects.toMatchObject({ name: 'DomainError', code: 'internal' });
  expect((await makeInThread(job)).pageCount).toBeGreaterThan(1);
});
