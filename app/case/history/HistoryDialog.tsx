import { useMemo } from 'react';
import { useHistoryQuery } from '../../api.ts';
import { Dialog } from '../../parts/Dialog.tsx';
import { useCase } from '../useCase.ts';
import './history.css';
import { historyRows } from './historyRows.ts';
import { HistoryTable } from './HistoryTable.tsx';

const MOST_CHANGES = 1000;

/** Every change to the case, newest first. */
export function HistoryDialog({ onClose }: { onClose: () => void }) {
  const { file } = useCase();
  const { data, error } = useHistoryQuery({ caseId: file.case.id, limit: MOST_CHANGES });
  const rows = useMemo(() => historyRows(data?.changes ?? [], null), [data]);
  return (
    <Dialog title="History of this case" onClose={onClose}>
      <p className="quiet">
        Undo reaches every step but the opening, also after a restart. What another case of this athlete changed stands
        in that case.
      </p>
      {error !== undefined && <p>The history cannot be read: {'message' in error ? error.message : ''}</p>}
      {data !== undefined && (
        // A table longer than the window scrolls by keyboard.
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
        <section className="history-scroll" tabIndex={0} aria-label="Changes, newest first">
          <HistoryTable rows={rows} hasWhat />
        </section>
      )}
      {data?.changes.length === MOST_CHANGES && <p className="quiet">The newest {MOST_CHANGES} changes.</p>}
    </Dialog>
  );
}
