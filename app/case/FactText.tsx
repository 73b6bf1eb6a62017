import type { Fact } from '../../shared/assess/assessment.ts';
import { ReadingText } from '../parts/ReadingText.tsx';
import { isSameSelection, useSelect, useSelection } from './selection.ts';

/** A computed value as text that can be selected: the margin then shows the working behind it. */
export function FactText({ fact }: { fact: Fact }) {
  const select = useSelect();
  const selection = { kind: 'fact', key: fact.key } as const;
  const isSelected = isSameSelection(useSelection(), selection);
  const { value } = fact;
  return (
    <button
      type="button"
      className={isSelected ? 'fact fact-selected' : 'fact'}
      aria-pressed={isSelected}
      onClick={() => select(selection)}
    >
      <span className="only-heard">{fact.label}: </span>
      {value.kind === 'number' && <ReadingText reading={value.reading} unit={fact.displayUnit} />}
      {value.kind === 'flag' && (value.flag ? 'yes' : 'no')}
      {value.kind === 'grade' && value.grade.replaceAll('-', ' ')}
      {value.kind === 'unknown' && <span className="reading reading-unknown">not known: {value.reason}</span>}
    </button>
  );
}
