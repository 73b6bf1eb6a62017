import { parentPort } from 'node:worker_threads';
import { toFailure } from '../../shared/errors.ts';
import type { ReportBytes, ReportJob, ThreadSays } from './makeInThread.ts';
import { makeReport } from './makeReport.ts';

// Reports one after the other, each asked for when the one before is done. No window waits for this thread.
parentPort?.on('message', (job: ReportJob) => {
  make(job).then(
    (made) => say({ say: 'made', made }),
    (thrown: unknown) => say({ say: 'failed', failure: toFailure(thrown) }),
  );
});

async function make({ file, createdAt, options }: ReportJob): Promise<ReportBytes> {
  const { bytes, report, caseSha256 } = await makeReport(file, createdAt, { ...options, onPage });
  return { bytes, pageCount: report.pages.length, caseSha256 };
}

function onPage(done: number, of: number): void {
  say({ say: 'page', done, of });
}

function say(what: ThreadSays): void {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has one listener and no origin to name
  parentPort?.postMessage(what);
}
