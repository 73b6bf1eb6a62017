import { BY_NOTHING_ELSE, type JudgedBy, type RuleBody, type SharedRule } from '../../shared/model/ownRule.ts';
import type { RuleStore, SharedEdit } from '../../shared/ports/ruleStore.ts';
import type { RecordOf } from '../../shared/model/records.ts';
import type { Database, Statement } from './database.ts';
import { type SharedChange, sharedSteps } from './sharedSteps.ts';
import { fromRow, type Row, TABLES } from './tables.ts';

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

  const steps = sharedSteps<SharedRule>(
    database,
    'shared_rule_step',
    (changes, which) => {
      for (const change of changes) {
        const rule = change[which];
        if (rule === null) sql.remove.run(change.id);
        else sql.put.run({ id: rule.id, isOn: Number(rule.isOn), rule: JSON.stringify(rule.rule) });
      }
      // What is off judges nothing, before and after.
      if (changes.some(({ before, after }) => before?.isOn === true || after?.isOn === true)) sql.judgeAgain.run();
    },
    (earlier, now) => earlier.isOn === now.isOn,
  );

  function share(edits: readonly SharedEdit[], at: string): void {
    const changes = edits.map(({ id, rule }) => ({ id, before: ruleOf(sql.one.get(id)), after: rule }));
    steps.make(changes satisfies readonly SharedChange<SharedRule>[], at);
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
          ...steps.can(),
        })),
      movements: () =>
        guard.read(() => sql.movements.all().map((row) => fromRow(TABLES.ownMovement, row) as RecordOf<'ownMovement'>)),
      share: (edits, at) => guard.write(() => share(edits, at)),
      undoShared: () => guard.write(() => steps.undo()),
      redoShared: () => guard.write(() => steps.redo()),
    },
    /** The history of the rules for every case, replayed: the outcome must be what is stored. */
    problems: () =>
      steps.leadsTo(sql.shared.all().map(asRule))
        ? []
        : ['The history of the rules for every case does not lead to the rules that are stored.'],
  };
}

function asRule({ id, is_on, rule }: Shared): SharedRule {
  return { id, isOn: is_on === 1, rule: JSON.parse(rule) as RuleBody };
}

function ruleOf(row: Shared | undefined): SharedRule | null {
  return row === undefined ? null : asRule(row);
}
