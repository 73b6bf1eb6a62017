import path from 'node:path';
import { Worker } from 'node:worker_threads';
import { DomainError, type Failure } from '../../shared/errors.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { PlacedReport } from '../../shared/report/page.ts';
import type { EditableReport } from '../../shared/report/writeMarkdown.ts';
import type { ReportOptions } from './makeReport.ts';

/** What a report is made from. */
export interface ReportJob {
  readonly file: CaseFile;
  readonly createdAt: string;
  readonly options: Omit<ReportOptions, 'onPart'>;
}

export interface ReportBytes {
  readonly bytes: Uint8Array;
  readonly pageCount: number;
  readonly caseSha256: string;
}

/** What becomes of a report, by what it is asked for as. */
export interface MadeAs {
  readonly pdf: ReportBytes;
  readonly pages: PlacedReport;
  readonly docx: Uint8Array;
  readonly md: EditableReport;
}
export type As = keyof MadeAs;

/** What the thread says: how far it is, and at last the report or why there is none. */
export type ThreadSays =
  | { readonly say: 'part'; readonly done: number; readonly of: number }
  | { readonly say: 'made'; readonly made: MadeAs[As] }
  | { readonly say: 'failed'; readonly failure: Failure };

export interface WhileMaking {
  /** Ends the thread; nothing of the report is left. */
  readonly signal?: AbortSignal | undefined;
  /** Told after each page of a PDF, and now and then of the paragraphs, tables and figures of the others. */
  readonly onPart?: ((done: number, of: number) => void) | undefined;
}

/** Beside this file, with its ending: TypeScript from source, JavaScript in the bundle. */
const THREAD = new URL(`./reportThread${path.extname(import.meta.filename)}`, import.meta.url);
/** Long enough for the next report of a squad to find typefaces and words as the last one left them. */
const IDLE_MS = 20_000;

let idle: { readonly worker: Worker; readonly end: NodeJS.Timeout } | null = null;

/**
 * A report as what was asked for, made in a thread of its own: the one that called goes on meanwhile. The thread is
 * kept for the next report and ended when none comes.
 * @throws DomainError 'cancelled' when the signal says so; else whatever the making throws
 */
export async function makeInThread<A extends As>(
  as: A,
  job: ReportJob,
  { signal, onPart }: WhileMaking = {},
): Promise<MadeAs[A]> {
  refuseIfStopped(signal);
  const worker = takeThread();
  let isWhole = false;
  try {
    return await new Promise<MadeAs[A]>((resolve, reject) => {
      signal?.addEventListener('abort', () => reject(stopped()), { once: true });
      worker.on('error', reject);
      worker.on('exit', () => reject(new Error('The thread that makes reports ended.')));
      worker.on('message', (heard: ThreadSays) => {
        if (heard.say === 'part') return onPart?.(heard.done, heard.of);
        isWhole = true;
        // The thread makes what it was asked for.
        if (heard.say === 'made') return resolve(heard.made as MadeAs[A]);
        const { code, message, path: where } = heard.failure;
        return reject(new DomainError(code, message, where));
      });
      // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin to name
      worker.postMessage({ as, job });
    });
  } finally {
    // By name: Node hears by listeners of its own whether anyone still listens.
    for (const event of ['message', 'error', 'exit']) worker.removeAllListeners(event);
    if (isWhole) keepThread(worker);
    else await worker.terminate();
  }
}

function takeThread(): Worker {
  if (idle === null) return new Worker(THREAD);
  const { worker, end } = idle;
  clearTimeout(end);
  idle = null;
  worker.ref();
  return worker;
}

/** Keeps no program alive: neither the thread nor its clock. */
function keepThread(worker: Worker): void {
  if (idle !== null) return void worker.terminate();
  worker.unref();
  const forget = () => {
    if (idle?.worker === worker) idle = null;
  };
  worker.once('error', forget).once('exit', forget);
  const end = setTimeout(() => void worker.terminate(), IDLE_MS).unref();
  idle = { worker, end };
}

function refuseIfStopped(signal: AbortSignal | undefined): void {
  if (signal?.aborted === true) throw stopped();
}

function stopped(): DomainError {
  return new DomainError('cancelled', 'Stopped as asked; no report was made.');
}
