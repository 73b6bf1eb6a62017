import { BY_NOTHING_ELSE, type JudgedBy, type RuleBody, type SharedRule } from '../../shared/model/ownRule.ts';
import { TYPING_PAUSE_MS } from '../../shared/ports/editing.ts';
import type { RuleStore, SharedEdit } from '../../shared/ports/ruleStore.ts';
import type { RecordOf } from '../../shared/model/records.ts';
import type { Database, Statement } from './database.ts';
import { fromRow, type Row, TABLES } from './tables.ts';

interface Change {
  readonly id: string;
  readonly before: SharedRule | null;
  readonly after: SharedRule | null;
}
interface Step {
  readonly step: number;
  readonly at: string;
  readonly state: string;
  readonly changes: string;
}
type Shared = { readonly id: string; readonly is_on: number; readonly rule: string };

/** The rules of a store, in the database of its cases. `judgedBy` reads within whatever transaction is under way. */
export interface SqliteRules {
  readonly judgedBy: (caseId: string) => JudgedBy;
  readonly store: RuleStore;
  readonly problems: () => string[];
}

/** @param guard wraps each method in one transaction: all of it or nothing */
export function sqliteRules(
  database: Database,
  guard: { read: <T>(work: () => T) => Promise<T>; write: <T>(work: () => T) => Promise<T> },
): SqliteRules {
  const prepare = <P extends unknown[], R = unknown>(sql: string): Statement<P, R> => database.prepare<P, R>(sql);
  const sql = {
    keep: prepare<[{ digest: string; version: string; rules: string }]>(
      'INSERT OR IGNORE INTO rule_pack (digest, version, rules, is_current) VALUES (:digest, :version, :rules, 0)',
    ),
    current: prepare<[], { digest: string }>('SELECT digest FROM rule_pack WHERE is_current = 1'),
    makeCurrent: prepare<[string]>('UPDATE rule_pack SET is_current = (digest = ?)'),
    adopt: prepare<[string]>('UPDATE case_state SET rules_digest = ? WHERE rules_digest IS NULL'),
    acceptAll: prepare<[{ digest: string }]>(
      `UPDATE case_state SET rules_digest = :digest, is_judged = 0, revision = revision + 1
       WHERE rules_digest IS NOT :digest`,
    ),
    judgeAgain: prepare<[]>('UPDATE case_state SET is_judged = 0, revision = revision + 1'),
    forget: prepare<[]>(
      'DELETE FROM rule_pack WHERE is_current = 0 AND digest NOT IN (SELECT rules_digest FROM case_state WHERE rules_digest IS NOT NULL)',
    ),
    waiting: prepare<[], { caseId: string }>(
      `SELECT case_id AS caseId FROM case_state JOIN case_record ON id = case_id JOIN rule_pack ON digest = rules_digest
       WHERE is_current = 0 ORDER BY place`,
    ),
    heldFor: prepare<[string], { digest: string }>(
      'SELECT digest FROM case_state JOIN rule_pack ON digest = rules_digest WHERE case_id = ? AND is_current = 0',
    ),
    held: prepare<[string], { version: string; rules: string }>(
      'SELECT version, rules FROM rule_pack WHERE digest = ?',
    ),
    shared: prepare<[], Shared>('SELECT id, is_on, rule FROM shared_rule ORDER BY place'),
    sharedOn: prepare<[], Shared>('SELECT id, is_on, rule FROM shared_rule WHERE is_on = 1 ORDER BY place'),
    one: prepare<[string], Shared>('SELECT id, is_on, rule FROM shared_rule WHERE id = ?'),
    put: prepare<[{ id: string; isOn: number; rule: string }]>(
      `INSERT INTO shared_rule (id, is_on, rule) VALUES (:id, :isOn, :rule)
       ON CONFLICT (id) DO UPDATE SET is_on = :isOn, rule = :rule`,
    ),
    remove: prepare<[string]>('DELETE FROM shared_rule WHERE id = ?'),
    movements: prepare<[], Row>('SELECT * FROM own_movement ORDER BY place'),
    latest: prepare<[], Step>('SELECT * FROM shared_rule_step ORDER BY step DESC LIMIT 1'),
    undoable: prepare<[], Step>(`SELECT * FROM shared_rule_step WHERE state = 'done' ORDER BY step DESC LIMIT 1`),
    redoable: prepare<[], Step>(`SELECT * FROM shared_rule_step WHERE state = 'undone' ORDER BY step LIMIT 1`),
    inForce: prepare<[], Step>(`SELECT * FROM shared_rule_step WHERE state = 'done' ORDER BY step`),
    insertStep: prepare<[string, string]>(`INSERT INTO shared_rule_step (at, state, changes) VALUES (?, 'done', ?)`),
    amendStep: prepare<[{ step: number; at: string; changes: string }]>(
      'UPDATE shared_rule_step SET at = :at, changes = :changes WHERE step = :step',
    ),
    setState: prepare<[string, number]>('UPDATE shared_rule_step SET state = ? WHERE step = ?'),
    abandon: prepare<[]>(`UPDATE shared_rule_step SET state = 'abandoned' WHERE state = 'undone'`),
  };

  /** Read once: a store has a few sets of rules at most, of half a megabyte each, and every case asks for them. */
  const held = new Map<string, JudgedBy['held']>();
  function heldFor(caseId: string): JudgedBy['held'] {
    const digest = sql.heldFor.get(caseId)?.digest;
    if (digest === undefined) return null;
    const known = held.get(digest);
    if (known !== undefined) return known;
    const kept = sql.held.get(digest);
    const read = kept === undefined ? null : { version: kept.version, rules: JSON.parse(kept.rules) as RuleBody[] };
    held.set(digest, read);
    return read;
  }

  function write(changes: readonly Change[], which: 'before' | 'after'): void {
    for (const change of which === 'after' ? changes : changes.toReversed()) {
      const rule = change[which];
      if (rule === null) sql.remove.run(change.id);
      else sql.put.run({ id: rule.id, isOn: Number(rule.isOn), rule: JSON.stringify(rule.rule) });
    }
    // What is off judges nothing, before and after.
    if (changes.some(({ before, after }) => before?.isOn === true || after?.isOn === true)) sql.judgeAgain.run();
  }

  function rerun(step: Step | undefined): void {
    if (step === undefined) return;
    const isDone = step.state === 'done';
    sql.setState.run(isDone ? 'undone' : 'done', step.step);
    write(changesOf(step), isDone ? 'before' : 'after');
  }

  function share(edits: readonly SharedEdit[], at: string): void {
    const changes = edits.map(({ id, rule }): Change => ({ id, before: ruleOf(sql.one.get(id)), after: rule }));
    const latest = sql.latest.get();
    const grown = latest === undefined ? null : typedOn(latest, changes, at);
    if (grown !== null && latest !== undefined) {
      sql.amendStep.run({ step: latest.step, at, changes: JSON.stringify([grown]) });
    } else {
      sql.abandon.run();
      sql.insertStep.run(at, JSON.stringify(changes));
    }
    write(changes, 'after');
  }

  return {
    judgedBy(caseId) {
      const shared = sql.sharedOn.all().map(asRule);
      const waits = heldFor(caseId);
      return shared.length === 0 && waits === null ? BY_NOTHING_ELSE : { shared, held: waits };
    },
    store: {
      use: ({ digest, version, rules }) =>
        guard.write(() => {
          if (sql.current.get()?.digest === digest) return;
          sql.keep.run({ digest, version, rules: JSON.stringify(rules) });
          sql.makeCurrent.run(digest);
          sql.adopt.run(digest);
          sql.judgeAgain.run();
          sql.forget.run();
        }),
      waiting: () => guard.read(() => sql.waiting.all().map(({ caseId }) => caseId)),
      accept: () =>
        guard.write(() => {
          const current = sql.current.get();
          if (current === undefined) return;
          sql.acceptAll.run(current);
          sql.forget.run();
        }),
      shared: () =>
        guard.read(() => ({
          rules: sql.shared.all().map(asRule),
          canUndo: sql.undoable.get() !== undefined,
          canRedo: sql.redoable.get() !== undefined,
        })),
      movements: () =>
        guard.read(() => sql.movements.all().map((row) => fromRow(TABLES.ownMovement, row) as RecordOf<'ownMovement'>)),
      share: (edits, at) => guard.write(() => share(edits, at)),
      undoShared: () => guard.write(() => rerun(sql.undoable.get())),
      redoShared: () => guard.write(() => rerun(sql.redoable.get())),
    },
    /** The history of the rules for every case, replayed: the outcome must be what is stored. */
    problems() {
      const replayed = new Map<string, string>();
      for (const { id, after } of sql.inForce.all().flatMap(changesOf)) {
        if (after === null) replayed.delete(id);
        else replayed.set(id, JSON.stringify(after));
      }
      const stored = sql.shared.all().map(asRule);
      const isSame =
        stored.length === replayed.size && stored.every((one) => replayed.get(one.id) === JSON.stringify(one));
      return isSame ? [] : ['The history of the rules for every case does not lead to the rules that are stored.'];
    },
  };
}

function changesOf(step: Step): readonly Change[] {
  return JSON.parse(step.changes) as readonly Change[];
}

function asRule({ id, is_on, rule }: Shared): SharedRule {
  return { id, isOn: is_on === 1, rule: JSON.parse(rule) as RuleBody };
}

function ruleOf(row: Shared | undefined): SharedRule | null {
  return row === undefined ? null : asRule(row);
}

/** The latest step's one change grown by this one, if both are typing in the same rule a moment apart; otherwise null. */
function typedOn(latest: Step, changes: readonly Change[], at: string): Change | null {
  const [earlier, ...more] = changesOf(latest);
  const [change, ...others] = changes;
  if (latest.state !== 'done' || earlier === undefined || change === undefined || more.length + others.length > 0) {
    return null;
  }
  const isTyping =
    earlier.id === change.id && earlier.before !== null && earlier.after !== null && change.after !== null;
  const isSameSwitch = earlier.after?.isOn === change.after?.isOn;
  const pauseMs = Date.parse(at) - Date.parse(latest.at);
  return isTyping && isSameSwitch && pauseMs >= 0 && pauseMs < TYPING_PAUSE_MS
    ? { ...earlier, after: change.after }
    : null;
}
