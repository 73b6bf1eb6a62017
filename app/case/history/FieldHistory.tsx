import { useState } from 'react';
import { useHistoryQuery } from '../../api.ts';
import { useCase } from '../useCase.ts';
import './history.css';
import { type HistoryOf, historyRows } from './historyRows.ts';
import { HistoryTable } from './HistoryTable.tsx';

/** What one field was before, read only when it is opened. */
export function FieldHistory({ of }: { of: HistoryOf }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="field-history" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>History of this field</summary>
      {isOpen && <Rows of={of} />}
    </details>
  );
}

function Rows({ of }: { of: HistoryOf }) {
  const { data } = useHistoryQuery({ caseId: useCase().file.case.id, limit: 1000 });
  return data === undefined ? null : <HistoryTable rows={historyRows(data.changes, of)} hasWhat={false} />;
}
