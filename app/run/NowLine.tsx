import { entryHint, readEntry, writeResult, writeSides } from '../../shared/exchange/resultEntry.ts';
import { takenWithWords } from '../../shared/format/takenWithWords.ts';
import { trialsWords } from '../../shared/format/trialsWords.ts';
import { quantityText } from '../../shared/format/number.ts';
import type { BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { ScreeningResult } from '../../shared/model/screening.ts';
import { GRADE_WORDS } from '../../shared/report/words.ts';
import { reasonsToSkip, resultOf } from '../case/screening/results.ts';
import { today } from '../case/newRecord.ts';
import { Words } from '../parts/Words.tsx';
import { athleteName } from './athleteName.ts';
import { sidesOf } from './RunCell.tsx';

/** At the foot: whose cell is in hand, what it holds in full, what may be typed, and what to leave out. */
export function NowLine(props: { file: CaseFile | null; sessionId: string; item: BatteryItem | null }) {
  const { file, sessionId, item } = props;
  if (file === null || item === null) {
    return (
      <footer className="run-now" id="run-now">
        <p className="quiet">Choose a cell to begin. What is typed is stored at once; a run can be left at any time.</p>
      </footer>
    );
  }
  const skip = reasonsToSkip(item, file.injuries, today());
  const results = sidesOf(item).map((side) => resultOf(file.screeningResults, sessionId, item.id, side));
  const held = sidesOf(item).map((side, i) => {
    const result = results[i] ?? null;
    const taken = result === null ? '' : takenWithWords(result);
    return `${side === 'none' ? '' : `${side} `}${resultWords(item, result)}${taken === '' ? '' : ` (${taken})`}`;
  });
  const questions = readEntry(item, writeSides(results.map((result) => writeResult(item, result)))).sides.flatMap(
    ({ side, question }) => (question === null ? [] : [`${side === 'none' ? '' : `${side}: `}${question}`]),
  );
  return (
    <footer className="run-now" id="run-now">
      <p>
        <strong>{athleteName(file)}</strong>, {item.label}: {held.join('; ')}.
      </p>
      {questions.length > 0 && <p className="questioned">{questions.join(' ')}</p>}
      {skip.length > 0 && (
        <p>
          <Words weight="heavy">leave this out</Words> unless a clinician asks for it: {skip.join(' ')}
        </p>
      )}
      <p className="quiet">
        Type {entryHint(item)}
        {item.hasSides && ', left then right'}. {item.caution}
      </p>
    </footer>
  );
}

function resultWords({ unit, displayUnit, kind }: BatteryItem, result: ScreeningResult | null): string {
  if (result === null) return 'not entered';
  const { grade, isPositive, valueSi, painNrs, trialsSi } = result;
  const said =
    grade !== null
      ? GRADE_WORDS[grade]
      : isPositive !== null
        ? isPositive
          ? 'yes, it hurts'
          : 'no'
        : valueSi !== null && unit !== null && displayUnit !== null
          ? quantityText({ value: valueSi, unit, u: kind === 'counted' ? 0 : null }, displayUnit)
          : 'no result';
  const trials =
    trialsSi === null || unit === null || displayUnit === null ? '' : ` (${trialsWords(trialsSi, unit, displayUnit)})`;
  return painNrs === null ? `${said}${trials}` : `${said}${trials}, pain ${painNrs} of 10`;
}
