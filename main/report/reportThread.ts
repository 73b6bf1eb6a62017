import { parentPort } from 'node:worker_threads';
import { toFailure } from '../../shared/errors.ts';
import { placeReport, type ReportRequest } from '../../shared/report/compose.ts';
import { writeMarkdown } from '../../shared/report/writeMarkdown.ts';
import type { As, MadeAs, ReportJob, ThreadSays } from './makeInThread.ts';
import { makeReport, requestFor } from './makeReport.ts';
import { writeDocx } from './writeDocx.ts';

// Reports one after the other, each asked for when the one before is done. No window waits for this thread.
parentPort?.on('message', ({ as, job }: { readonly as: As; readonly job: ReportJob }) => {
  MAKERS[as](job).then(
    (made) => say({ say: 'made', made }),
    (thrown: unknown) => say({ say: 'failed', failure: toFailure(thrown) }),
  );
});

const MAKERS: { readonly [A in As]: (job: ReportJob) => Promise<MadeAs[A]> } = {
  async pdf({ file, createdAt, options }) {
    const { bytes, report, caseSha256 } = await makeReport(file, createdAt, { ...options, onPart: tell });
    return { bytes, pageCount: report.pages.length, caseSha256 };
  },
  pages: async (job) => placeReport(asked(job)),
  docx: async (job) => writeDocx(asked(job)),
  md: async (job) => writeMarkdown(asked(job)),
};

function asked({ file, createdAt, options }: ReportJob): ReportRequest {
  return { ...requestFor(file, createdAt, options), onBlock: tellNowAndThen };
}

/** How often a making of many small parts is heard of. */
const TIMES = 20;

function tellNowAndThen(done: number, of: number): void {
  if (Math.floor((done * TIMES) / of) > Math.floor(((done - 1) * TIMES) / of)) tell(done, of);
}

function tell(done: number, of: number): void {
  say({ say: 'part', done, of });
}

function say(what: ThreadSays): void {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has one listener and no origin to name
  parentPort?.postMessage(what);
}
