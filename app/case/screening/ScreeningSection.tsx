import { lowerFirst } from '../../../shared/format/letterCase.ts';
import { counted } from '../../../shared/format/number.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { emptySession } from './results.ts';
import { type ChosenBattery, useBatteries } from './useBatteries.ts';
import { hrefOf } from '../../workbench/route.ts';
import { SessionSheet } from './SessionSheet.tsx';
import './screening.css';

/** Screening sessions, newest first. */
export function ScreeningSection() {
  const { file } = useCase();
  const edit = useEdit();
  const sessions = file.screeningSessions.toSorted((a, b) => b.heldOn.localeCompare(a.heldOn));
  const isFirst = sessions.length === 0;
  const batteries = useBatteries();
  const start = (battery: ChosenBattery) =>
    edit([
      {
        op: 'create',
        kind: 'screeningSession',
        record: emptySession(file.case.id, battery, file.case.practitioner, today()),
      },
    ]);
  const starters = batteries.map((chosen, i) => (
    <div key={chosen.battery.id} className="row-of-buttons">
      <Button look={isFirst && i === 0 ? 'main' : 'plain'} onClick={() => start(chosen)}>
        {isFirst ? 'Start a session' : 'Start another session'} with{' '}
        {chosen.own === null ? `the ${lowerFirst(chosen.battery.label)}` : chosen.battery.label}
      </Button>
      <p className="quiet">
        {chosen.own !== null && `Your own, version ${chosen.battery.version}. `}
        {chosen.battery.description} {counted(chosen.battery.items.length, 'item')}.
      </p>
    </div>
  ));
  const own = (
    <p className="quiet">
      <a href={hrefOf({ screen: 'batteries' })}>Batteries</a>: copy one and change the copy, or take one in from a file.
    </p>
  );
  if (isFirst) {
    return (
      <EmptyState title="Not screened yet.">
        <p>A session is one battery on one day by one rater. Each cell is saved as it is typed.</p>
        {starters}
        {own}
      </EmptyState>
    );
  }
  return (
    <div className="screening-section">
      {sessions.map((session) => (
        <SessionSheet key={session.id} session={session} />
      ))}
      {starters}
      {own}
      <p className="quiet">
        Screening is not diagnosis, and no test here predicts injury in one person. Stop a test that hurts.
      </p>
    </div>
  );
}
