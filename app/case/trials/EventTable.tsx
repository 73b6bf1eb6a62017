import type { Movement } from '../../../shared/knowledge/movement.ts';
import type { MovementTrial, TrialEvent } from '../../../shared/model/trial.ts';
import { Button } from '../../parts/Button.tsx';
import { moveBetweenCells } from '../../parts/cellKeys.ts';
import { NumberField } from '../../parts/NumberField.tsx';
import { newId } from '../newRecord.ts';
import { useSelect } from '../selection.ts';
import { patch, useEdit } from '../useEdit.ts';

const ORIGIN_WORDS: Record<TrialEvent['origin'], string> = {
  'by-hand': 'by hand',
  'proposed-and-confirmed': 'proposed, then confirmed',
  imported: 'imported',
};

/** The instants that bound the phases, in the movement's order, with their times. */
export function EventTable(props: {
  trial: MovementTrial;
  movement: Movement | null;
  events: readonly TrialEvent[];
  playheadS: number | null;
  onSeek: (timeS: number) => void;
}) {
  const { trial, movement, events, playheadS, onSeek } = props;
  const edit = useEdit();
  const select = useSelect();
  const named = movement?.events ?? [];
  const others = events.filter((event) => named.every(({ id }) => id !== event.event));
  const rows = [
    ...named,
    ...others.map(({ event }) => ({ id: event, label: event, means: 'Not an event of this movement.' })),
  ];
  const setTime = (id: string, stored: TrialEvent | undefined, timeS: number | null) => {
    if (stored === undefined && timeS !== null) {
      const record: TrialEvent = { id: newId(), trialId: trial.id, event: id, timeS, uS: null, origin: 'by-hand' };
      edit([{ op: 'create', kind: 'trialEvent', record }]);
    } else if (stored !== undefined && timeS === null) {
      edit([{ op: 'remove', kind: 'trialEvent', id: stored.id }]);
    } else if (stored !== undefined && timeS !== null) {
      edit([patch('trialEvent', stored.id, { timeS, origin: 'by-hand' })]);
    }
  };
  if (rows.length === 0) return <p className="quiet">This version knows no events of this movement.</p>;
  return (
    // The table moves the focus between the controls in its cells; it is not one itself.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
    <table className="table event-table" onKeyDown={moveBetweenCells}>
      <caption className="only-heard">Events in time order; times in real seconds from frame 0</caption>
      <thead>
        <tr>
          <th scope="col">Event</th>
          <th scope="col">Time, from frame 0</th>
          <th scope="col">Standard uncertainty</th>
          <th scope="col">Set</th>
          {playheadS !== null && (
            <th scope="col">
              <span className="only-heard">Stage</span>
            </th>
          )}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, label, means }) => {
          const stored = events.find((event) => event.event === id);
          return (
            <tr key={id}>
              <th scope="row">
                {label}
                <span className="row-note">{means}</span>
              </th>
              <td className="cell">
                <NumberField
                  label={`Time of ${label.toLowerCase()}`}
                  unit="s"
                  value={stored?.timeS ?? null}
                  onFocus={() => {
                    if (stored === undefined) return;
                    select({ kind: 'record', recordKind: 'trialEvent', id: stored.id, field: 'timeS' });
                    onSeek(stored.timeS);
                  }}
                  onChange={(timeS) => setTime(id, stored, timeS)}
                />
              </td>
              <td className="cell">
                {stored === undefined ? (
                  <span className="quiet">no time yet</span>
                ) : (
                  <NumberField
                    label={`Standard uncertainty of ${label.toLowerCase()}`}
                    unit="s"
                    entry={['ms', 's']}
                    possible={[0, 10]}
                    value={stored.uS}
                    onChange={(uS) => edit([patch('trialEvent', stored.id, { uS })])}
                  />
                )}
              </td>
              <td>{stored === undefined ? '' : ORIGIN_WORDS[stored.origin]}</td>
              {playheadS !== null && (
                <td>
                  <Button
                    look="quiet"
                    aria-label={`Set to this frame, ${label}`}
                    onClick={() => setTime(id, stored, playheadS)}
                  >
                    Set to this frame
                  </Button>
                </td>
              )}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
