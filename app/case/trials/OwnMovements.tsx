import { useState } from 'react';
import { MEASURES, measureById } from '../../../shared/knowledge/measures/index.ts';
import { MOVEMENTS } from '../../../shared/knowledge/movements/index.ts';
import type { OwnMovement } from '../../../shared/model/ownMovement.ts';
import { Button } from '../../parts/Button.tsx';
import { CellChoice } from '../../parts/CellChoice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { newId } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { patch, useEdit } from '../useEdit.ts';
import { useFields } from '../useFields.ts';
import { addEvent, missingOf, moveEvent, phasesBetweenAll, removeEvent, removePhase } from './ownMovementEdits.ts';

/** Instants the program knows how to find and read, each once, as the first movement that has it names it. */
const KNOWN_EVENTS = [
  ...new Map(
    MOVEMENTS.flatMap((movement) => movement.events)
      .toReversed()
      .map((event) => [event.id, event]),
  ).values(),
].toSorted((a, b) => a.label.localeCompare(b.label));
const FILMED = MEASURES.filter(({ kind }) => kind === 'number').map(({ id, label }) => ({ value: id, label }));

/** The movements built in this case, and the place where one is built. */
export function OwnMovements() {
  const { file } = useCase();
  const edit = useEdit();
  const [openId, setOpenId] = useState<string | null>(null);
  const open = file.ownMovements.find(({ id }) => id === openId) ?? null;
  const build = () => {
    const record: OwnMovement = {
      id: newId(),
      caseId: file.case.id,
      label: '',
      sport: file.athlete.sport,
      events: [],
      phases: [],
      checkpoints: [],
      aimsAtTarget: false,
      isAirborneSkill: false,
    };
    edit([{ op: 'create', kind: 'ownMovement', record }]);
    setOpenId(record.id);
  };
  return (
    <section className="own-movements" aria-labelledby="own-movements">
      <h3 id="own-movements">Movements of your own</h3>
      <p className="quiet">
        A movement the program does not know, built from its instants, the phases between them and what to measure in
        each. It can then be chosen for any trial of this case and goes with the case file. The program has no rules for
        it, so its measures are shown and not judged.
      </p>
      {file.ownMovements.length > 0 && (
        <ul className="trial-list" aria-label="Movements of your own">
          {file.ownMovements.map((own) => (
            <li key={own.id}>
              <button
                type="button"
                className="trial-choice"
                aria-expanded={own.id === openId}
                onClick={() => setOpenId(own.id === openId ? null : own.id)}
              >
                <strong>{own.label === '' ? 'Without a name' : own.label}</strong>
                <span className="quiet">{missingOf(own) ?? 'can be used'}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {open !== null && <Builder key={open.id} own={open} onRemoved={() => setOpenId(null)} />}
      <Button onClick={build}>Build a movement</Button>
    </section>
  );
}

function Builder({ own, onRemoved }: { own: OwnMovement; onRemoved: () => void }) {
  const { file } = useCase();
  const edit = useEdit();
  const field = useFields('ownMovement', own);
  const [name, setName] = useState('');
  const change = (fields: Partial<OwnMovement>) => edit([patch('ownMovement', own.id, fields)]);
  const used = file.movementTrials.filter((trial) => trial.movementId === own.id).length;
  const places = [...own.phases, { id: 'whole', label: 'Whole movement' }];
  const events = own.events.map(({ id, label }) => ({ value: id, label }));
  const addOwn = () => {
    change(addEvent(own, { id: newId(), label: name.trim(), means: '' }));
    setName('');
  };
  return (
    <div className="own-movement">
      <div className="form">
        <TextField label="Name" neededFor="the movement" {...field('label')} />
        <TextField label="Sport" {...field('sport')} />
        {(
          [
            ['aimsAtTarget', 'It aims at a target'],
            ['isAirborneSkill', 'It is done in the air'],
          ] as const
        ).map(([flag, label]) => (
          <label key={flag} className="choice">
            <input type="checkbox" checked={own[flag]} onChange={({ target }) => change({ [flag]: target.checked })} />
            <span>{label}</span>
          </label>
        ))}
      </div>

      <h4>Instants, in the order they happen</h4>
      <ol className="own-list" aria-label="Instants">
        {own.events.map((event, i) => (
          <li key={event.id}>
            <span>
              <strong>{event.label}</strong> <span className="quiet">{event.means}</span>
            </span>
            <span className="row-of-buttons">
              <Button
                look="quiet"
                disabled={i === 0}
                aria-label={`Earlier, ${event.label}`}
                onClick={() => change(moveEvent(own, event.id, -1))}
              >
                Earlier
              </Button>
              <Button
                look="quiet"
                disabled={i === own.events.length - 1}
                aria-label={`Later, ${event.label}`}
                onClick={() => change(moveEvent(own, event.id, 1))}
              >
                Later
              </Button>
              <Button
                look="quiet"
                aria-label={`Remove the instant ${event.label}`}
                onClick={() => change(removeEvent(own, event.id))}
              >
                Remove
              </Button>
            </span>
          </li>
        ))}
      </ol>
      <div className="own-row">
        <CellChoice
          label="Add an instant the program knows"
          value={null}
          empty="Add an instant the program knows…"
          choices={KNOWN_EVENTS.filter(({ id }) => own.events.every((event) => event.id !== id)).map((event) => ({
            value: event.id,
            label: event.label,
          }))}
          onChange={(id) => {
            const event = KNOWN_EVENTS.find((one) => one.id === id);
            if (event !== undefined) change(addEvent(own, event));
          }}
        />
        <TextField
          label="Or one of your own"
          hint="The program can neither propose it nor read more at it than the time."
          value={name}
          onChange={setName}
        />
        <Button disabled={name.trim() === ''} onClick={addOwn}>
          Add the instant
        </Button>
      </div>

      <h4>Phases</h4>
      {own.phases.map((phase) => {
        const set = (fields: Partial<typeof phase>) =>
          change({ phases: own.phases.map((one) => (one.id === phase.id ? { ...one, ...fields } : one)) });
        return (
          <fieldset key={phase.id} className="own-phase">
            <legend>{phase.label === '' ? 'Phase' : phase.label}</legend>
            <div className="form">
              <TextField label="Name of the phase" value={phase.label} onChange={(label) => set({ label })} />
              <TextField label="What happens in it" value={phase.means} onChange={(means) => set({ means })} />
            </div>
            <div className="own-row">
              {(
                [
                  ['startsAt', 'starts at'],
                  ['endsAt', 'ends at'],
                ] as const
              ).map(([end, words]) => (
                <label key={end}>
                  {words}{' '}
                  <CellChoice
                    label={`${phase.label} ${words}`}
                    value={phase[end]}
                    empty="choose an instant"
                    choices={events}
                    onChange={(id) => set({ [end]: id ?? '' })}
                  />
                </label>
              ))}
              <Button
                look="quiet"
                aria-label={`Remove the phase ${phase.label}`}
                onClick={() => change(removePhase(own, phase.id))}
              >
                Remove the phase
              </Button>
            </div>
          </fieldset>
        );
      })}
      <div className="row-of-buttons">
        <Button disabled={own.events.length < 2} onClick={() => change({ phases: phasesBetweenAll(own, newId) })}>
          A phase between each two instants
        </Button>
        <Button
          disabled={own.events.length === 0}
          onClick={() => {
            const phase = { id: newId(), label: `Phase ${own.phases.length + 1}`, startsAt: '', endsAt: '', means: '' };
            change({ phases: [...own.phases, phase] });
          }}
        >
          Add a phase
        </Button>
      </div>

      <h4>What to measure</h4>
      <p className="quiet">How long each phase lasts is measured without asking.</p>
      {places.map(({ id, label }) => (
        <div key={id} className="own-place">
          <strong>{label}</strong>
          <ul>
            {own.checkpoints
              .filter(({ phase }) => phase === id)
              .map(({ measure }) => (
                <li key={measure}>
                  {measureById(measure)?.label ?? measure}{' '}
                  <Button
                    look="quiet"
                    aria-label={`Do not measure ${measureById(measure)?.label ?? measure}, ${label}`}
                    onClick={() =>
                      change({
                        checkpoints: own.checkpoints.filter((one) => one.phase !== id || one.measure !== measure),
                      })
                    }
                  >
                    Remove
                  </Button>
                </li>
              ))}
          </ul>
          <CellChoice
            label={`Measure in ${label}`}
            value={null}
            empty="Measure here…"
            choices={FILMED.filter(({ value }) =>
              own.checkpoints.every(({ phase, measure }) => phase !== id || measure !== value),
            )}
            onChange={(measure) => {
              if (measure !== null) change({ checkpoints: [...own.checkpoints, { phase: id, measure }] });
            }}
          />
        </div>
      ))}

      <div className="row-of-buttons">
        <Button
          look="quiet"
          disabled={used > 0}
          onClick={() => {
            edit([{ op: 'remove', kind: 'ownMovement', id: own.id }]);
            onRemoved();
          }}
        >
          Remove this movement
        </Button>
        {used > 0 && (
          <span className="quiet">
            {used === 1 ? 'A trial is of this movement' : `${used} trials are of this movement`}, so it stays.
          </span>
        )}
      </div>
    </div>
  );
}
