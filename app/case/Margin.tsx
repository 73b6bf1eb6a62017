import type { CaseCheck, Fact, Finding, HistoryEffect } from '../../shared/assess/assessment.ts';
import { BASIS_WORDS, EVIDENCE_WORDS } from '../../shared/assess/words.ts';
import { formatDate, quantityText } from '../../shared/format/number.ts';
import type { Injury } from '../../shared/model/injury.ts';
import { fieldWords, KIND_WORDS } from '../../shared/model/words.ts';
import { conditionEntry } from '../../shared/knowledge/conditions/index.ts';
import { isKnown } from '../../shared/quantity.ts';
import { Button } from '../parts/Button.tsx';
import { ReadingText } from '../parts/ReadingText.tsx';
import { OutcomeWords, Words } from '../parts/Words.tsx';
import { SourceLine, WorkingView } from '../parts/WorkingView.tsx';
import { behind } from './behind.ts';
import { TestBand } from './findings/TestBand.tsx';
import { FieldHistory } from './history/FieldHistory.tsx';
import { useSelect, useSelection } from './selection.ts';
import type { Selection } from './selectionSlice.ts';
import { useCase } from './useCase.ts';

/** What stands behind the thing selected on the sheet. Empty when nothing is. */
export function Margin() {
  return (
    <aside id="margin" className="margin" aria-label="Margin" tabIndex={-1}>
      <Behind />
    </aside>
  );
}

/** The same for a screen that has no margin of its own. */
export function Behind() {
  const { file, assessment } = useCase();
  const selection = useSelection();
  const select = useSelect();
  if (selection === null) return <p className="only-heard">Nothing is selected on the sheet.</p>;
  const { facts, findings, injuries, checks } = behind(selection, file, assessment);
  const title = titleOf(selection, facts, findings);
  const isBare = facts.length + findings.length + injuries.length + checks.length === 0;
  return (
    <>
      <h2>{title}</h2>
      {isBare && <p className="quiet">Nothing rests on this yet.</p>}
      {facts.map((fact) => (
        <FactBehind key={fact.key} fact={fact} title={title} isAlone={facts.length === 1} findings={findings} />
      ))}
      {checks.length > 0 && (
        <>
          <h3>{facts.length === 1 ? 'Checks that ask about this number' : 'Checks that ask about these numbers'}</h3>
          <ul className="margin-list">
            {checks.map((check) => (
              <CheckBehind key={`${check.id} ${check.about}`} check={check} />
            ))}
          </ul>
        </>
      )}
      {selection.kind === 'finding' ? (
        findings.map((finding) => <FindingBehind key={finding.key} finding={finding} />)
      ) : (
        <FindingsResting findings={findings} onSelect={(key) => select({ kind: 'finding', key })} />
      )}
      {selection.kind === 'record' && selection.field !== null && (
        <FieldHistory
          key={`${selection.id} ${selection.field}`}
          of={{ kind: selection.recordKind, recordId: selection.id, field: selection.field }}
        />
      )}
      {injuries.length > 0 && <h3>Injuries that touch it</h3>}
      {injuries.map(({ injury, effects }) => (
        <InjuryBehind key={injury.id} injury={injury} effects={effects} />
      ))}
    </>
  );
}

function titleOf(selection: Selection, facts: readonly Fact[], findings: readonly Finding[]): string {
  switch (selection.kind) {
    case 'fact':
      return facts[0]?.label ?? 'No longer there';
    case 'finding':
      return findings[0]?.finding.replace(/\.$/, '') ?? 'No longer there';
    case 'record':
      return capital(selection.field === null ? KIND_WORDS[selection.recordKind] : fieldWords(selection.field));
  }
}

const capital = (words: string) => words.slice(0, 1).toUpperCase() + words.slice(1);

/** One value with its working; several fold up so that each can be found. */
function FactBehind({
  fact,
  title,
  isAlone,
  findings,
}: {
  fact: Fact;
  title: string;
  isAlone: boolean;
  findings: readonly Finding[];
}) {
  const { value, displayUnit } = fact;
  const reading = value.kind === 'number' ? value.reading : null;
  const quantity = reading !== null && isKnown(reading) ? reading : null;
  const shown = (
    <>
      {value.kind === 'number' && <ReadingText reading={value.reading} unit={displayUnit} />}
      {value.kind === 'flag' && (value.flag ? 'yes' : 'no')}
      {value.kind === 'grade' && value.grade.replaceAll('-', ' ')}
      {value.kind === 'unknown' && <span className="reading-unknown">not known: {value.reason}</span>}
    </>
  );
  const details = (
    <>
      {quantity !== null && <WorkingView quantity={quantity} />}
      {quantity !== null && <Bands fact={fact} findings={findings} />}
      <p className="working-note">
        {capital(fact.provenance)}
        {fact.takenOn !== null && `, ${formatDate(fact.takenOn)}`}.
      </p>
    </>
  );
  if (isAlone) {
    return (
      <>
        {title !== fact.label && <p className="quiet">{fact.label}</p>}
        <p className="margin-value">{shown}</p>
        {details}
      </>
    );
  }
  return (
    <details className="margin-fact">
      <summary>
        {fact.label}: {shown}
      </summary>
      {details}
    </details>
  );
}

/** Each limit the value is held against, once. */
function Bands({ fact, findings }: { fact: Fact; findings: readonly Finding[] }) {
  const held = findings.flatMap(({ kind, tests }) =>
    tests.filter((test) => test.factKey === fact.key).map((test) => ({ kind, test })),
  );
  const bands = new Map(held.map((one) => [`${one.kind} ${one.test.words}`, one]));
  return [...bands].map(([words, { kind, test }]) => <TestBand key={words} test={test} kind={kind} fact={fact} />);
}

/** What a finding was judged by: tests, sources with their evidence word, and each step in order. */
function FindingBehind({ finding }: { finding: Finding }) {
  return (
    <>
      <h3>Judged by</h3>
      <ul className="margin-list">
        {finding.tests.map((test) => (
          <li key={`${test.measure} ${test.words}`}>
            {test.label}: {test.words}
            {test.isBorderline && (
              <>
                {' '}
                <Words weight="open">within measurement error of the threshold</Words>
              </>
            )}
            {test.chance !== null && (
              <span className="quiet"> Chance that the true value is past it: {percent(test.chance)}.</span>
            )}
          </li>
        ))}
      </ul>
      <h3>Sources</h3>
      {finding.sources.map((source) => (
        <SourceLine key={source.cite} source={source} />
      ))}
      <p className="working-note">Evidence {EVIDENCE_WORDS[finding.evidence]}.</p>
      <p className="working-note">{capital(BASIS_WORDS[finding.basis])}.</p>
      {finding.defersTo.length > 0 && <p className="working-note">Decided by: {finding.defersTo.join(', ')}.</p>}
      <details>
        <summary>Step by step</summary>
        <ol className="margin-trace">
          {finding.trace.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </details>
    </>
  );
}

function percent(chance: number): string {
  if (chance < 0.01) return 'less than 1 %';
  if (chance > 0.99) return 'more than 99 %';
  return quantityText({ value: chance, unit: '1', u: null }, '%');
}

function FindingsResting({ findings, onSelect }: { findings: readonly Finding[]; onSelect: (key: string) => void }) {
  if (findings.length === 0) return null;
  return (
    <>
      <h3>Findings that rest on it</h3>
      <ul className="margin-list">
        {findings.map((finding) => (
          <li key={finding.key}>
            <OutcomeWords outcome={finding.outcome} />{' '}
            <Button look="quiet" onClick={() => onSelect(finding.key)}>
              {finding.finding}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}

const EFFECT_WORDS: Readonly<Record<HistoryEffect['effect'], string>> = {
  stop: 'stops it',
  replace: 'replaces it',
  modify: 'modifies it',
  keep: 'leaves it as it is',
};

function InjuryBehind({ injury, effects }: { injury: Injury; effects: readonly HistoryEffect[] }) {
  const side = injury.side === 'none' ? '' : `, ${injury.side}`;
  return (
    <>
      <p>
        <strong>
          {conditionEntry(injury.condition).label}
          {side}
        </strong>
      </p>
      <ul className="margin-list">
        {effects.map(({ effect, change, clears }) => (
          <li key={`${effect} ${change}`}>
            <Words weight={effect === 'stop' ? 'stop' : effect === 'keep' ? 'plain' : 'heavy'}>
              {EFFECT_WORDS[effect]}
            </Words>{' '}
            {change}
            {effect !== 'keep' && <span className="quiet"> To be lifted by {clears}.</span>}
          </li>
        ))}
      </ul>
    </>
  );
}

const VERDICT_WEIGHT = { fine: 'plain', questioned: 'heavy', 'cannot tell': 'open' } as const;

function CheckBehind({ check }: { check: CaseCheck }) {
  return (
    <li>
      <Words weight={VERDICT_WEIGHT[check.verdict]}>{check.verdict}</Words> {check.sentence}
      {check.numbers.map(({ label, value, unit }) => (
        <span key={label} className="quiet">
          {' '}
          {label}: {quantityText({ value, unit, u: null })}.
        </span>
      ))}
      {check.source !== null && <SourceLine source={check.source} />}
    </li>
  );
}
