import { Words } from '../../parts/Words.tsx';
import type { HistoryRow } from './historyRows.ts';

/** What changed, when, from what to what, and through which step. */
export function HistoryTable({ rows, hasWhat }: { rows: readonly HistoryRow[]; hasWhat: boolean }) {
  if (rows.length === 0) return <p className="quiet">Nothing was changed here.</p>;
  return (
    <table className="table history-table">
      <thead>
        <tr>
          <th scope="col">When</th>
          {hasWhat && <th scope="col">What</th>}
          <th scope="col">Before</th>
          <th scope="col">After</th>
          <th scope="col">Through</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, at, what, before, after, from, isUndone }) => (
          <tr key={key}>
            <th scope="row">
              <time dateTime={at}>{momentWords(at)}</time>
            </th>
            {hasWhat && <td>{what}</td>}
            <td>{before}</td>
            <td>{after}</td>
            <td>
              {from} {isUndone && <Words weight="open">undone</Words>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** By this machine's clock. */
function momentWords(at: string): string {
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'medium' }).format(new Date(at));
}
