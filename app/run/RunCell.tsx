import type { KeyboardEvent } from 'react';
import { canonicalJson } from '../../shared/canonicalJson.ts';
import {
  type EnteredResult,
  type Entry,
  NO_RESULT,
  readEntry,
  readPain,
  writeResult,
  writeSides,
} from '../../shared/exchange/resultEntry.ts';
import type { BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import type { SideOrNone } from '../../shared/model/parts.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { ScreeningResult } from '../../shared/model/screening.ts';
import { reasonsToSkip, resultEdits, type ResultFields, resultOf } from '../case/screening/results.ts';
import { today } from '../case/newRecord.ts';
import type { TakenWith } from '../case/screening/takenWith.ts';
import { useEditOf } from '../case/useEdit.ts';
import { useTyped } from '../parts/useTyped.ts';
import { athleteName } from './athleteName.ts';

/** Sides of an item in the order they are typed. */
export function sidesOf(item: BatteryItem): readonly SideOrNone[] {
  return item.hasSides ? ['left', 'right'] : ['none'];
}

/** One test of one athlete: the result, and pain as a field of its own beside it. */
export function RunCell(props: {
  file: CaseFile;
  sessionId: string;
  item: BatteryItem;
  /** What a new result is said to be taken with. */
  taken: TakenWith;
  onPlace: (itemId: string) => void;
}) {
  const { file, sessionId, item, taken, onPlace } = props;
  const edit = useEditOf(file.case.id);
  const results = sidesOf(item).map((side) => resultOf(file.screeningResults, sessionId, item.id, side));
  const isSkipped = reasonsToSkip(item, file.injuries, today()).length > 0;
  const named = `${item.label}, ${athleteName(file)}`;

  /** Everything one keystroke says of both sides, as one step of undo. */
  const store = <T,>(
    sides: readonly { side: SideOrNone; value: T | null }[],
    fields: (value: T | null) => Partial<ResultFields>,
  ) => {
    const edits = sides.flatMap(({ side, value }, i) => {
      const result = results[i] ?? null;
      const next = fields(value);
      return isAsStored(result, next) ? [] : resultEdits({ sessionId, itemId: item.id, side }, result, next, taken);
    });
    if (edits.length > 0) edit(edits);
  };
  const entry = useEntry(
    writeSides(results.map((result) => writeResult(item, result))),
    (text) => readEntry(item, text),
    (parts) => writeSides(parts.map((value) => writeResult(item, value))),
  );
  const pain = useEntry(
    writeSides(results.map((result) => String(result?.painNrs ?? ''))),
    (text) => readPain(item, text),
    (parts) => writeSides(parts.map((value) => String(value ?? ''))),
  );

  return (
    <td className={isSkipped ? 'run-cell run-cell-skipped' : 'run-cell'}>
      <input
        className="run-entry"
        aria-label={named}
        aria-describedby="run-now"
        aria-invalid={entry.isRefused || undefined}
        autoComplete="off"
        spellCheck={false}
        placeholder={isSkipped ? 'leave out' : undefined}
        value={entry.text}
        onFocus={() => onPlace(item.id)}
        onKeyDown={toPain}
        onChange={({ target }) => store<EnteredResult>(entry.type(target.value), (value) => value ?? NO_RESULT)}
      />
      <input
        className="run-pain"
        aria-label={`Pain, ${named}`}
        aria-describedby="run-now"
        aria-invalid={pain.isRefused || undefined}
        autoComplete="off"
        inputMode="numeric"
        placeholder="pain"
        value={pain.text}
        onFocus={() => onPlace(item.id)}
        onKeyDown={backToResult}
        onChange={({ target }) => store<number>(pain.type(target.value), (painNrs) => ({ painNrs }))}
      />
      {[entry, pain].map(({ note, isRefused }, i) =>
        note === null ? null : (
          <span key={i === 0 ? 'result' : 'pain'} className={`run-cell-note${isRefused ? ' run-cell-refused' : ''}`}>
            {note}
          </span>
        ),
      )}
    </td>
  );
}

/** Text of both sides, kept as typed while it stands for what is stored. */
function useEntry<T>(
  stored: string,
  read: (text: string) => Entry<T>,
  write: (values: readonly (T | null)[]) => string,
) {
  const canonical = (text: string) => write(read(text).sides.map(({ value }) => value));
  const [text, setText] = useTyped<string>(
    stored === '' ? null : stored,
    (same) => same,
    (typed) => ({ value: canonical(typed) || null }),
  );
  const { refusal, sides } = read(text);
  const refusals = refusal === null ? sides.flatMap((one) => said(one.refusal, one.side)) : [refusal];
  // In full at the foot; here there is no room.
  const questions = sides.flatMap((one) => said(one.question === null ? null : 'unusual', one.side));
  return {
    text,
    isRefused: refusals.length > 0,
    note: [...refusals, ...questions].join(' ') || null,
    type: (typed: string) => {
      setText(typed);
      return read(typed).sides;
    },
  };
}

function said(words: string | null, side: SideOrNone): string[] {
  return words === null ? [] : [`${side === 'none' ? '' : `${side}: `}${words}`];
}

function isAsStored(result: ScreeningResult | null, fields: Partial<ResultFields>): boolean {
  return Object.entries(fields).every(
    ([field, value]) =>
      canonicalJson((result as Record<string, unknown> | null)?.[field] ?? null) === canonicalJson(value),
  );
}

/** The key for pain leads to the field beside the result; pain is never typed into the result itself. */
function toPain(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key.toLowerCase() !== 'p' || event.ctrlKey || event.metaKey || event.altKey) return;
  event.preventDefault();
  const pain = event.currentTarget.nextElementSibling;
  if (pain instanceof HTMLInputElement) {
    pain.focus();
    pain.select();
  }
}

function backToResult(event: KeyboardEvent<HTMLInputElement>): void {
  const isAtStart = event.key === 'ArrowLeft' && event.currentTarget.selectionStart === 0;
  if (event.key !== 'Escape' && !isAtStart) return;
  event.preventDefault();
  const result = event.currentTarget.previousElementSibling;
  if (result instanceof HTMLInputElement) {
    result.focus();
    result.select();
  }
}
