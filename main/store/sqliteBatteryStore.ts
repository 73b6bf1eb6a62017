import type { OwnBattery } from '../../shared/model/battery.ts';
import type { BatteryStore } from '../../shared/ports/batteryStore.ts';
import type { Database } from './database.ts';
import { sharedSteps } from './sharedSteps.ts';

type Row = { readonly battery: string };

/** Batteries of one's own, in the database of the cases. @param guard wraps each method in one transaction */
export function sqliteBatteries(
  database: Database,
  guard: { read: <T>(work: () => T) => Promise<T>; write: <T>(work: () => T) => Promise<T> },
): { readonly store: BatteryStore; readonly problems: () => string[] } {
  const sql = {
    all: database.prepare<[], Row>('SELECT battery FROM own_battery ORDER BY place'),
    one: database.prepare<[string], Row>('SELECT battery FROM own_battery WHERE id = ?'),
    put: database.prepare<[{ id: string; battery: string }]>(
      'INSERT INTO own_battery (id, battery) VALUES (:id, :battery) ON CONFLICT (id) DO UPDATE SET battery = :battery',
    ),
    remove: database.prepare<[string]>('DELETE FROM own_battery WHERE id = ?'),
    uses: database.prepare<[], { id: string; version: string; sessions: number }>(
      `SELECT battery_id AS id, battery_version AS version, count(*) AS sessions
       FROM screening_session WHERE battery IS NOT NULL GROUP BY battery_id, battery_version`,
    ),
  };
  const read = ({ battery }: Row) => JSON.parse(battery) as OwnBattery;
  const readAll = () => sql.all.all().map(read);
  const find = (id: string) => {
    const row = sql.one.get(id);
    return row === undefined ? null : read(row);
  };
  const steps = sharedSteps<OwnBattery>(
    database,
    'own_battery_step',
    (changes, which) => {
      for (const { id, [which]: battery } of changes) {
        if (battery === null) sql.remove.run(id);
        else sql.put.run({ id, battery: JSON.stringify(battery) });
      }
    },
    (earlier, now) => earlier.versions.length === now.versions.length && earlier.isRetired === now.isRetired,
  );

  return {
    store: {
      all: () => guard.read(() => ({ batteries: readAll(), ...steps.can() })),
      edit: (edits, at) =>
        guard.write(() =>
          steps.make(
            edits.map(({ id, battery }) => ({ id, before: find(id), after: battery })),
            at,
          ),
        ),
      undo: () => guard.write(() => steps.undo()),
      redo: () => guard.write(() => steps.redo()),
      lastVersion: (id) =>
        guard.read(() => {
          const saved = steps
            .ever()
            .filter((change) => change.id === id)
            .flatMap(({ before, after }) => [...(before?.versions ?? []), ...(after?.versions ?? [])]);
          const used = sql.uses.all().filter((use) => use.id === id);
          return Math.max(0, ...[...saved, ...used].map(({ version }) => Number(version)));
        }),
      uses: () => guard.read(() => sql.uses.all()),
    },
    problems: () =>
      steps.leadsTo(readAll())
        ? []
        : ['The history of the batteries of one’s own does not lead to those that are stored.'],
  };
}
