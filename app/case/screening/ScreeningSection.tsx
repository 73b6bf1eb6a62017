import { counted } from '../../../shared/format/number.ts';
import { BATTERIES } from '../../../shared/knowledge/screening/index.ts';
import type { Battery } from '../../../shared/knowledge/screening/battery.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { emptySession } from './results.ts';
import { SessionSheet } from './SessionSheet.tsx';
import './screening.css';

/** Screening sessions, newest first. */
export function ScreeningSection() {
  const { file } = useCase();
  const edit = useEdit();
  const sessions = file.screeningSessions.toSorted((a, b) => b.heldOn.localeCompare(a.heldOn));
  const isFirst = sessions.length === 0;
  const start = (battery: Battery) =>
    edit([
      {
        op: 'create',
        kind: 'screeningSession',
        record: emptySession(file.case.id, battery, file.case.practitioner, today()),
      },
    ]);
  const starters = BATTERIES.map((battery) => (
    <div key={battery.id} className="row-of-buttons">
      <Button look={isFirst ? 'main' : 'plain'} onClick={() => start(battery)}>
        {isFirst ? 'Start a session' : 'Start another session'} with the {battery.label.toLowerCase()}
      </Button>
      <p className="quiet">
        {battery.description} {counted(battery.items.length, 'item')}.
      </p>
    </div>
  ));
  if (isFirst) {
    return (
      <EmptyState title="Not screened yet.">
        <p>A session is one battery on one day by one rater. Each cell is saved as it is typed.</p>
        {starters}
      </EmptyState>
    );
  }
  return (
    <div className="screening-section">
      {sessions.map((session) => (
        <SessionSheet key={session.id} session={session} />
      ))}
      {starters}
      <p className="quiet">
        Screening is not diagnosis, and no test here predicts injury in one person. Stop a test that hurts.
      </p>
    </div>
  );
}
