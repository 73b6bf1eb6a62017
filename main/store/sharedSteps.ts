import { TYPING_PAUSE_MS } from '../../shared/ports/editing.ts';
import type { Database, Statement } from './database.ts';

/** What one step did to one thing that belongs to no case. Null: it was not there, or is no more. */
export interface SharedChange<T> {
  readonly id: string;
  readonly before: T | null;
  readonly after: T | null;
}

interface Step {
  readonly step: number;
  readonly at: string;
  readonly state: string;
  readonly changes: string;
}

/** The history of what belongs to no case: steps of undo, across restarts. */
export interface SharedSteps<T> {
  /** As one step of undo; typing on in one thing is one step. */
  make(changes: readonly SharedChange<T>[], at: string): void;
  /** Takes back the latest step, or does nothing if there is none. */
  undo(): void;
  redo(): void;
  can(): { readonly canUndo: boolean; readonly canRedo: boolean };
  /** Every change ever made, undone or not, oldest first. */
  ever(): SharedChange<T>[];
  /** Whether the history leads to these things and no others. */
  leadsTo(stored: readonly (T & { readonly id: string })[]): boolean;
}

/**
 * @param write puts one state of the changed things in place
 * @param isTyping whether a change goes on with an earlier one of the same thing, made a moment before
 */
export function sharedSteps<T>(
  database: Database,
  table: 'shared_rule_step' | 'own_battery_step',
  write: (changes: readonly SharedChange<T>[], which: 'before' | 'after') => void,
  isTyping: (earlier: T, now: T) => boolean,
): SharedSteps<T> {
  const prepare = <P extends unknown[], R = unknown>(sql: string): Statement<P, R> => database.prepare<P, R>(sql);
  const sql = {
    latest: prepare<[], Step>(`SELECT * FROM ${table} ORDER BY step DESC LIMIT 1`),
    undoable: prepare<[], Step>(`SELECT * FROM ${table} WHERE state = 'done' ORDER BY step DESC LIMIT 1`),
    redoable: prepare<[], Step>(`SELECT * FROM ${table} WHERE state = 'undone' ORDER BY step LIMIT 1`),
    all: prepare<[], Step>(`SELECT * FROM ${table} ORDER BY step`),
    insert: prepare<[string, string]>(`INSERT INTO ${table} (at, state, changes) VALUES (?, 'done', ?)`),
    amend: prepare<[{ step: number; at: string; changes: string }]>(
      `UPDATE ${table} SET at = :at, changes = :changes WHERE step = :step`,
    ),
    setState: prepare<[string, number]>(`UPDATE ${table} SET state = ? WHERE step = ?`),
    abandon: prepare<[]>(`UPDATE ${table} SET state = 'abandoned' WHERE state = 'undone'`),
  };
  const changesOf = (step: Step) => JSON.parse(step.changes) as readonly SharedChange<T>[];

  /** The latest step's one change grown by this one, if both are typing in the same thing a moment apart; otherwise null. */
  function grown(latest: Step, changes: readonly SharedChange<T>[], at: string): SharedChange<T> | null {
    const [earlier, ...more] = changesOf(latest);
    const [change, ...others] = changes;
    const isOne = latest.state === 'done' && more.length + others.length === 0 && earlier?.id === change?.id;
    if (!isOne || earlier === undefined || earlier.before === null) return null;
    if (earlier.after === null || change === undefined || change.after === null) return null;
    const pauseMs = Date.parse(at) - Date.parse(latest.at);
    const isSoon = pauseMs >= 0 && pauseMs < TYPING_PAUSE_MS;
    return isSoon && isTyping(earlier.after, change.after) ? { ...earlier, after: change.after } : null;
  }

  function rerun(step: Step | undefined): void {
    if (step === undefined) return;
    const isDone = step.state === 'done';
    sql.setState.run(isDone ? 'undone' : 'done', step.step);
    const changes = changesOf(step);
    write(isDone ? changes.toReversed() : changes, isDone ? 'before' : 'after');
  }

  return {
    make(changes, at) {
      const latest = sql.latest.get();
      const amended = latest === undefined ? null : grown(latest, changes, at);
      if (amended !== null && latest !== undefined) {
        sql.amend.run({ step: latest.step, at, changes: JSON.stringify([amended]) });
      } else {
        sql.abandon.run();
        sql.insert.run(at, JSON.stringify(changes));
      }
      write(changes, 'after');
    },
    undo: () => rerun(sql.undoable.get()),
    redo: () => rerun(sql.redoable.get()),
    can: () => ({ canUndo: sql.undoable.get() !== undefined, canRedo: sql.redoable.get() !== undefined }),
    ever: () => sql.all.all().flatMap(changesOf),
    leadsTo(stored) {
      const replayed = new Map<string, string>();
      for (const step of sql.all.all().filter(({ state }) => state === 'done')) {
        for (const { id, after } of changesOf(step)) {
          if (after === null) replayed.delete(id);
          else replayed.set(id, JSON.stringify(after));
        }
      }
      return stored.length === replayed.size && stored.every((one) => replayed.get(one.id) === JSON.stringify(one));
    },
  };
}
