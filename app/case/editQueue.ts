import type { Failure, Result } from '../../shared/errors.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { EditState } from '../../shared/ports/caseStore.ts';

export interface QueueState {
  /** Requests not yet acknowledged, the one on its way included. */
  readonly waiting: number;
  /** Why the last one was not stored; null when all is well. */
  readonly failure: Failure | null;
  /** The store could not take it just now: it is kept and can be sent again. Otherwise it was refused and is gone. */
  readonly canRetry: boolean;
}

interface Waiting {
  readonly caseId: string;
  readonly edits: readonly Edit[];
  /** Part of the step of undo before it. */
  readonly continues: boolean;
}

/** Faults of the store or the way to it, not of what was typed. */
const TEMPORARY: readonly Failure['code'][] = ['store-locked', 'store-unwritable', 'internal'];

/**
 * Sends edits one request at a time, in the order they were made. An edit still waiting is replaced by a newer one of
 * the same fields, so that fast typing makes no backlog. A refused edit is dropped and reported; a store that cannot be
 * reached keeps everything until `retry`.
 */
export function createEditQueue(
  send: (caseId: string, edits: readonly Edit[], continues: boolean) => Promise<Result<EditState>>,
) {
  const waiting: Waiting[] = [];
  const listeners = new Set<() => void>();
  const whenIdle: (() => void)[] = [];
  let hear: ((caseId: string, answer: Result<EditState>) => void) | null = null;
  let isSending = false;
  let pushes = 0;
  let state: QueueState = { waiting: 0, failure: null, canRetry: false };

  function tell(next: Partial<QueueState>): void {
    state = { ...state, ...next, waiting: waiting.length };
    for (const listener of listeners) listener();
  }

  async function drain(): Promise<void> {
    if (isSending) return;
    isSending = true;
    for (let next = waiting[0]; next !== undefined; next = waiting[0]) {
      const answer = await send(next.caseId, next.edits, next.continues);
      const isTemporary = !answer.ok && TEMPORARY.includes(answer.error.code);
      if (!isTemporary) waiting.shift();
      tell(answer.ok ? {} : { failure: answer.error, canRetry: isTemporary });
      if (isTemporary) break;
      hear?.(next.caseId, answer);
    }
    isSending = false;
    for (const resolve of whenIdle.splice(0)) resolve();
  }

  return {
    push(caseId: string, edits: readonly Edit[], continues = false): void {
      pushes += 1;
      const last = waiting.at(-1);
      const isOnItsWay = isSending && waiting.length === 1;
      const replaces =
        last !== undefined &&
        !isOnItsWay &&
        last.caseId === caseId &&
        (continues || !last.continues) &&
        isSameField(last.edits, edits);
      if (replaces) waiting.pop();
      // What takes the place of an edit begins where that one began.
      waiting.push({ caseId, edits, continues: replaces ? last.continues : continues });
      tell({});
      if (!state.canRetry) void drain();
    },
    /** How many edits were ever made: unchanged means that nothing was typed in between. */
    count: (): number => pushes,
    /** Reports edits that never came as far as the queue. */
    refuse(failure: Failure): void {
      tell({ failure });
    },
    /** Sends again what a store out of reach had to leave. */
    retry: (): void => {
      tell({ failure: null, canRetry: false });
      void drain();
    },
    dismiss: (): void => {
      if (!state.canRetry) tell({ failure: null });
    },
    /** Told of each request that was stored or refused for good. */
    onAnswer(listener: NonNullable<typeof hear>): void {
      hear = listener;
    },
    /** True once everything made so far is stored; false if something is stuck. */
    async settled(): Promise<boolean> {
      if (isSending) await new Promise<void>((resolve) => whenIdle.push(resolve));
      return waiting.length === 0;
    },
    getState: (): QueueState => state,
    subscribe: (listener: () => void): (() => void) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Two single patches of the same fields of one record: the later one says all that both do. */
function isSameField(earlier: readonly Edit[], later: readonly Edit[]): boolean {
  const [a, b] = [earlier[0], later[0]];
  if (earlier.length !== 1 || later.length !== 1 || a?.op !== 'patch' || b?.op !== 'patch') return false;
  return a.kind === b.kind && a.id === b.id && Object.keys(a.fields).join() === Object.keys(b.fields).join();
}
