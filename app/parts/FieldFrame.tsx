import { type ReactNode, useId } from 'react';

/** What every field takes. `useFields` of a case hands out the first three. */
export interface FieldProps<T> {
  readonly label: string;
  readonly value: T;
  readonly onChange: (value: T) => void;
  readonly onFocus?: (() => void) | undefined;
  /** One short sentence under the field. */
  readonly hint?: string | undefined;
  readonly neededFor?: NeededFor;
}

/** `this report`: what cannot be without an answer here, said while the field is empty. False: nothing. */
export type NeededFor = string | false | undefined;

export interface FieldNotes {
  readonly hint?: string | undefined;
  /** Why what is typed cannot be stored. */
  readonly refusal?: string | null | undefined;
  /** Why what is typed deserves a second look; it is stored all the same. */
  readonly question?: string | null | undefined;
  /** What waits for an answer here; only while the field is empty. */
  readonly missingFor?: NeededFor;
}

export interface FieldIds {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': true | undefined;
}

/** Label above, control in the middle, notes below, tied together for screen readers. */
export function FieldFrame({
  label,
  notes,
  children,
}: {
  label: string;
  notes: FieldNotes;
  children: (ids: FieldIds) => ReactNode;
}) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {children({ id, ...noteIds(id, notes) })}
      <FieldNotesBelow id={id} notes={notes} />
    </div>
  );
}

/** The same for a group of controls that answer one question. */
export function FieldGroup({
  label,
  notes,
  children,
}: {
  label: string;
  notes: FieldNotes;
  children: (ids: FieldIds) => ReactNode;
}) {
  const id = useId();
  const ids = noteIds(id, notes);
  return (
    <fieldset className="field" aria-describedby={ids['aria-describedby']}>
      <legend className="field-label">{label}</legend>
      {children({ id, ...ids })}
      <FieldNotesBelow id={id} notes={notes} />
    </fieldset>
  );
}

const hasNotes = ({ hint, refusal, question, missingFor }: FieldNotes) =>
  [hint, refusal, question, missingFor].some((words) => typeof words === 'string' && words !== '');

function noteIds(id: string, notes: FieldNotes) {
  return {
    'aria-describedby': hasNotes(notes) ? `${id}-notes` : undefined,
    'aria-invalid': typeof notes.refusal === 'string' ? (true as const) : undefined,
  };
}

function FieldNotesBelow({ id, notes }: { id: string; notes: FieldNotes }) {
  const { hint, refusal, question, missingFor } = notes;
  return (
    <div id={`${id}-notes`} className="field-notes" aria-live="polite">
      {typeof refusal === 'string' && <p className="field-refusal">Not stored: {refusal}</p>}
      {typeof question === 'string' && <p className="field-question">{question}</p>}
      {typeof missingFor === 'string' && <p className="field-missing">Needed for {missingFor}.</p>}
      {hint !== undefined && <p className="field-hint">{hint}</p>}
    </div>
  );
}
