import { type KeyboardEvent, memo, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { stopReason } from '../../shared/assess/stopWords.ts';
import type { Battery, BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import { sessionOfRun } from '../../shared/exchange/runFile.ts';
import { counted, formatDate } from '../../shared/format/number.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { UNITS } from '../../shared/units.ts';
import { useRedoMutation, useUndoMutation } from '../api.ts';
import { NOTHING_TAKEN, type TakenWith, useTakenWith } from '../case/screening/takenWith.ts';
import { useSaving } from '../case/useEdit.ts';
import { Button } from '../parts/Button.tsx';
import { moveBetweenCells } from '../parts/cellKeys.ts';
import { Words } from '../parts/Words.tsx';
import { isRedo, isUndo, useKeys } from '../workbench/keys.ts';
import { hrefOf, type RunKey } from '../workbench/route.ts';
import { RunningHead } from '../workbench/RunningHead.tsx';
import { athleteName } from './athleteName.ts';
import { NowLine } from './NowLine.tsx';
import { RunCell } from './RunCell.tsx';
import { type RunStop, runStops } from './runStops.ts';
import { TakenWithDialog } from './TakenWithDialog.tsx';
import { StationsDialog } from './StationsDialog.tsx';
import { itemsAt, useStations } from './stations.ts';

/** The cell in hand. */
export interface Place {
  readonly caseId: string;
  readonly itemId: string;
}

/** A squad as rows, a battery as columns. Every keystroke is stored. */
export function RunGrid({ run, battery, files }: { run: RunKey; battery: Battery; files: readonly CaseFile[] }) {
  const [place, setPlace] = useState<Place | null>(null);
  const [isArranging, setArranging] = useState(false);
  const [stations, setStations] = useStations(battery);
  const [isSaying, setSaying] = useState(false);
  const [takenWith, keepTakenWith] = useTakenWith(battery.id);
  const items = useMemo(() => itemsAt(battery, stations), [battery, stations]);
  const rows = files.map((file) => {
    const session = sessionOfRun(file, run);
    return { file, sessionId: session?.id ?? '', stops: runStops(file, session?.id ?? '') };
  });
  const stopped = rows.filter(({ stops }) => stops.length > 0);
  const now = rows.find(({ file }) => file.case.id === place?.caseId);
  useUndoAt(place?.caseId ?? null);
  const scroll = useRef<HTMLDivElement>(null);
  // Whoever opens a run is about to type.
  useEffect(() => scroll.current?.querySelector<HTMLInputElement>('.run-entry')?.focus(), []);

  return (
    <div className="run">
      <RunningHead>
        <p className="run-title">
          <strong>{battery.label}</strong>, {formatDate(run.heldOn)}
        </p>
        <Saving />
      </RunningHead>
      <main id="sheet" className="run-main" tabIndex={-1}>
        <div className="run-head">
          <h1 className="only-heard">
            Intake run, {battery.label.toLowerCase()}, {formatDate(run.heldOn)}
          </h1>
          <p>
            {counted(files.length, 'athlete')}. Enter goes down a row and on to the next column; arrow keys move; p goes
            to pain. Two sides: left, then right, <kbd>41.5 43</kbd>; right alone, <kbd>- 43</kbd>; several trials,{' '}
            <kbd>41+42</kbd>.
          </p>
          <span className="run-ways">
            <Button onClick={() => setArranging(true)}>Stations</Button>
            <Button onClick={() => setSaying(true)}>Device, position, shoes</Button>
            <a href={hrefOf({ screen: 'run', run: null, isSquad: false })}>Add athletes or pause</a>
            <a href={hrefOf({ screen: 'run', run, isSquad: true })}>Squad page</a>
          </span>
        </div>
        <StopList stopped={stopped} />
        <div className="run-scroll" ref={scroll}>
          {/* The table moves the focus between the fields in its cells; it is not one itself. */}
          {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
          <table className="run-table" onKeyDown={moveOn}>
            <caption className="only-heard">Athletes by test</caption>
            <thead>
              <tr>
                <th scope="col">Athlete</th>
                {items.map((item) => (
                  <th key={item.id} scope="col">
                    {item.label}
                    <span className="run-column-unit">{headWords(item)}</span>
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ file, sessionId, stops }) => (
                <RunRow
                  key={file.case.id}
                  file={file}
                  sessionId={sessionId}
                  items={items}
                  takenWith={takenWith}
                  stopWords={stops.map(({ words }) => words).join('\n')}
                  setPlace={setPlace}
                />
              ))}
            </tbody>
          </table>
        </div>
        <NowLine
          file={now?.file ?? null}
          sessionId={now?.sessionId ?? ''}
          item={items.find(({ id }) => id === place?.itemId) ?? null}
        />
      </main>
      {isSaying && (
        <TakenWithDialog items={items} byItem={takenWith} onChange={keepTakenWith} onClose={() => setSaying(false)} />
      )}
      {isArranging && (
        <StationsDialog
          battery={battery}
          stations={stations}
          onChange={setStations}
          onClose={() => setArranging(false)}
        />
      )}
    </div>
  );
}

function headWords(item: BatteryItem): string {
  if (item.kind === 'graded') return 'm, c or n';
  if (item.kind === 'clearing') return 'y or n';
  return item.displayUnit === null ? '' : UNITS[item.displayUnit].label;
}

/** As in every table of cells; from the last row Enter goes on at the top of the next column, Shift and Enter back. */
function moveOn(event: KeyboardEvent<HTMLElement>): void {
  moveBetweenCells(event);
  const cell = event.target instanceof Element ? event.target.closest('td') : null;
  if (event.defaultPrevented || event.key !== 'Enter' || cell === null) return;
  event.preventDefault();
  const rows = [...(cell.closest('tbody')?.rows ?? [])];
  const row = event.shiftKey ? rows.at(-1) : rows[0];
  row?.cells[cell.cellIndex + (event.shiftKey ? -1 : 1)]?.querySelector('input')?.focus();
}

/** Undo and redo in the case whose row is in hand. */
function useUndoAt(caseId: string | null): void {
  const [undo] = useUndoMutation();
  const [redo] = useRedoMutation();
  useKeys((event) => {
    if (caseId === null || !(isUndo(event) || isRedo(event))) return false;
    void (isUndo(event) ? undo : redo)({ caseId });
    return true;
  });
}

function Saving() {
  const { waiting, failure } = useSaving();
  const words = failure !== null ? 'Not saved' : waiting > 0 ? 'Saving…' : 'All saved';
  return <span className={failure === null ? 'quiet' : 'words words-heavy'}>{words}</span>;
}

/** Those who are to stop, apart and on top, for as long as the run is open. */
function StopList({
  stopped,
}: {
  stopped: readonly { readonly file: CaseFile; readonly stops: readonly RunStop[] }[];
}) {
  return (
    <section aria-label="Stop and be seen" aria-live="assertive" className="run-stops" hidden={stopped.length === 0}>
      {stopped.length > 0 && (
        <>
          <h2>Stop and be seen: {counted(stopped.length, 'athlete')}</h2>
          <ul>
            {stopped.map(({ file, stops }) => (
              <li key={file.case.id}>
                <a href={hrefOf({ screen: 'case', caseId: file.case.id, section: 'screening' })}>{athleteName(file)}</a>{' '}
                {stops.map(({ words }) => stopReason(words)).join('; ')}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** Drawn again only when this athlete's own case changes. */
const RunRow = memo(function RunRow(props: {
  file: CaseFile;
  sessionId: string;
  items: readonly BatteryItem[];
  takenWith: Readonly<Record<string, TakenWith>>;
  stopWords: string;
  setPlace: (place: Place) => void;
}) {
  const { file, sessionId, items, takenWith, stopWords, setPlace } = props;
  const caseId = file.case.id;
  const onPlace = useCallback((itemId: string) => setPlace({ caseId, itemId }), [caseId, setPlace]);
  return (
    <tr className={stopWords === '' ? undefined : 'run-row-stopped'}>
      <th scope="row">
        <span className="run-name">{athleteName(file)}</span>
        {stopWords !== '' && (
          <span className="run-row-stop">
            <Words weight="stop">Stop and be seen</Words>
          </span>
        )}
      </th>
      {items.map((item) => (
        <RunCell
          key={item.id}
          file={file}
          sessionId={sessionId}
          item={item}
          taken={takenWith[item.id] ?? NOTHING_TAKEN}
          onPlace={onPlace}
        />
      ))}
    </tr>
  );
});
