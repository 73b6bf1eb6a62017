import type { ScreeningSession } from '../../../shared/model/screening.ts';
import { counted, formatDate } from '../../../shared/format/number.ts';
import { batteryOf } from '../../../shared/knowledge/screening/index.ts';
import { Button } from '../../parts/Button.tsx';
import { CELL_KEYS_WORDS, moveBetweenCells } from '../../parts/cellKeys.ts';
import { DateField } from '../../parts/DateField.tsx';
import { LongTextField } from '../../parts/LongTextField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { useFields } from '../useFields.ts';
import { ItemRow } from './ItemRow.tsx';

/** One battery on one day: a row for each item, left and right side by side, pain beside each. */
export function SessionSheet({ session }: { session: ScreeningSession }) {
  const { file } = useCase();
  const edit = useEdit();
  const field = useFields('screeningSession', session);
  const heldOn = field('heldOn');
  const battery = batteryOf(session);
  const results = file.screeningResults.filter((result) => result.sessionId === session.id);
  const headingId = `session-${session.id}`;

  return (
    <section className="session" aria-labelledby={headingId}>
      <header className="test-head">
        <h3 id={headingId}>
          {battery?.label ?? `Battery ${session.batteryId}`}{' '}
          <span className="quiet">
            version {session.batteryVersion}, {formatDate(session.heldOn)}
          </span>
        </h3>
        <Button look="quiet" onClick={() => edit([{ op: 'remove', kind: 'screeningSession', id: session.id }])}>
          Remove this session
        </Button>
      </header>
      <div className="form">
        <DateField
          label="Held on"
          latest={today()}
          {...heldOn}
          onChange={(day) => {
            if (day !== null) heldOn.onChange(day);
          }}
        />
        <TextField
          label="Rater"
          hint="Who judged and measured; error figures hold for one rater."
          {...field('rater')}
        />
      </div>
      {battery === null ? (
        <p className="questioned">
          This version does not know the battery “{session.batteryId}”, version {session.batteryVersion}. Its{' '}
          {counted(results.length, 'result')} are kept and go out with every export.
        </p>
      ) : (
        <>
          <p className="quiet">{CELL_KEYS_WORDS}</p>
          {/* The table moves the focus between the controls in its cells; it is not one itself. */}
          {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
          <table className="table screening-table" onKeyDown={moveBetweenCells}>
            <caption className="only-heard">Results of the {battery.label.toLowerCase()}</caption>
            <thead>
              <tr>
                <th scope="col">Item</th>
                <th scope="col">Left, or whole body</th>
                <th scope="col">Pain</th>
                <th scope="col">Right</th>
                <th scope="col">Pain</th>
              </tr>
            </thead>
            {battery.items.map((item) => (
              <ItemRow key={item.id} session={session} item={item} results={results} />
            ))}
          </table>
        </>
      )}
      <LongTextField label="Note" {...field('note')} />
    </section>
  );
}
