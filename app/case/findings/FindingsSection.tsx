import { type KeyboardEvent, useRef } from 'react';
import { type Finding, OUTCOMES } from '../../../shared/assess/assessment.ts';
import { NO_RULES } from '../../../shared/assess/checkRuled.ts';
import { groupFindings } from '../../../shared/assess/groupFindings.ts';
import { standingOf } from '../../../shared/assess/standing.ts';
import { OUTCOME_WORDS } from '../../../shared/assess/words.ts';
import { formatDate } from '../../../shared/format/number.ts';
import { useAppSelector } from '../../store.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { OutcomeWords } from '../../parts/Words.tsx';
import { useCase } from '../useCase.ts';
import { FindingCard } from './FindingCard.tsx';
import { actionOfKey } from './keys.ts';
import { NotAssessed } from './NotAssessed.tsx';
import { UpdateNotice } from '../../rules/UpdateNotice.tsx';
import { OwnRules } from './OwnRules.tsx';
import { Plan } from './Plan.tsx';
import './findings.css';

const FINDING = '.finding-title';

/** What follows from the records, phase by phase, and what the practitioner decides about it. */
export function FindingsSection() {
  const { file, assessment } = useCase();
  const { findings } = assessment;
  const hasSingleKeys = useAppSelector((state) => state.preferences.singleKeys);
  const list = useRef<HTMLDivElement>(null);
  const { trials, profile } = groupFindings(file, findings);
  const open = findings.filter((finding) => isOpen(finding));
  const changed = open.filter((finding) => standingOf(finding, file.findingDecisions).decision !== null);
  const judged = findings.filter((finding) => finding.outcome !== 'not-assessed');

  function isOpen(finding: Finding): boolean {
    const { state } = standingOf(finding, file.findingDecisions);
    return state === 'to decide' || state === 'changed since';
  }
  const goTo = (key: string) => {
    const card = list.current?.querySelector(`[data-finding="${CSS.escape(key)}"]`);
    card?.querySelector<HTMLElement>(FINDING)?.focus();
    card?.scrollIntoView({ block: 'start' });
  };

  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    const card = event.target instanceof HTMLElement ? event.target.closest<HTMLElement>('.finding') : null;
    const isTyping = event.target instanceof HTMLElement && event.target.matches('input, textarea, select');
    if (card === null || isTyping || event.ctrlKey || event.metaKey || event.altKey) return;
    const action = actionOfKey(event.key);
    if (action === null || (event.key.length === 1 && !hasSingleKeys)) return;
    if (action === 'before' || action === 'after') moveFrom(list.current, card, action === 'after' ? 1 : -1);
    else card.querySelector<HTMLElement>(`[data-action='${action}']`)?.click();
    event.preventDefault();
  };

  if (judged.length === 0 && findings.length === 0) {
    return (
      <EmptyState title="Nothing to judge yet.">
        <p>Findings appear here as soon as something is recorded: a screening item, a jump, a trial, a measure.</p>
      </EmptyState>
    );
  }
  return (
    // Keys pressed on a finding's own controls are heard here, once for all of them.
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions
    <div className="findings" ref={list} onKeyDown={onKeyDown}>
      {file.judgedBy.held !== null && <UpdateNotice />}
      <section className="to-decide" aria-labelledby="to-decide">
        <h3 id="to-decide">To decide</h3>
        <p className="quiet">{countsOf(findings)}</p>
        {open.length === 0 ? (
          <p>Every finding that suggests something is decided.</p>
        ) : (
          <>
            <ol className="open-list">
              {open.map((finding) => (
                <li key={finding.key}>
                  <OutcomeWords outcome={finding.outcome} />
                  <Button look="quiet" onClick={() => goTo(finding.key)}>
                    {finding.finding}
                  </Button>
                  {changed.includes(finding) && <span className="quiet">changed since you decided</span>}
                </li>
              ))}
            </ol>
            <p className="quiet keys-line">
              On a finding: <kbd>↑</kbd> <kbd>↓</kbd> move on
              {hasSingleKeys && (
                <>
                  , <kbd>A</kbd> accept, <kbd>E</kbd> edit the words, <kbd>S</kbd> set aside, <kbd>T</kbd> take the
                  decision back, <kbd>Y</kbd> why
                </>
              )}
              .
            </p>
          </>
        )}
      </section>
      <Plan onGoTo={goTo} />

      {trials.map(({ trial, movement, phases, whole }) => (
        <section key={trial.id} className="finding-trial" aria-labelledby={`findings-${trial.id}`}>
          <h3 id={`findings-${trial.id}`}>
            {movement?.label ?? trial.movementId}
            {trial.label !== '' && `, ${trial.label}`} <span className="quiet">{formatDate(trial.filmedOn)}</span>
          </h3>
          {assessment.checks
            .filter((check) => check.id === NO_RULES && check.about === trial.id)
            .map((check) => (
              <p key={check.id}>{check.sentence}</p>
            ))}
          {phases.map(({ phase, findings: own }) => (
            <Block key={phase.id} title={phase.label} means={phase.means} findings={own} />
          ))}
          {whole.length > 0 && <Block title="Whole movement" means="" findings={whole} />}
        </section>
      ))}
      {profile.length > 0 && (
        <section className="finding-trial" aria-labelledby="findings-profile">
          <h3 id="findings-profile">Tests and profile</h3>
          <Block title="" means="" findings={profile} />
        </section>
      )}
      <OwnRules />
    </div>
  );
}

/** `1 modified, 3 replaced, 6 confirmed`: each outcome that occurs, none added up into a score. */
function countsOf(findings: readonly Finding[]): string {
  const counts = OUTCOMES.map(
    (outcome) => [outcome, findings.filter((one) => one.outcome === outcome).length] as const,
  );
  return counts
    .filter(([, count]) => count > 0)
    .map(([outcome, count]) => `${count} ${OUTCOME_WORDS[outcome].toLowerCase()}`)
    .join(', ');
}

/** The findings of one phase: what was judged in full, what could not be judged in a list. */
function Block({ title, means, findings }: { title: string; means: string; findings: readonly Finding[] }) {
  const judged = findings.filter((finding) => finding.outcome !== 'not-assessed');
  const open = findings.filter((finding) => finding.outcome === 'not-assessed');
  return (
    <section className="phase-block">
      {title !== '' && (
        <header>
          <h4>{title}</h4>
          {means !== '' && <p className="quiet">{means}</p>}
        </header>
      )}
      {findings.length === 0 && <p className="quiet">No rule of this version looks at this phase.</p>}
      {judged.map((finding) => (
        <FindingCard key={finding.key} finding={finding} />
      ))}
      {open.length > 0 && <NotAssessed findings={open} />}
    </section>
  );
}

function moveFrom(list: HTMLElement | null, card: HTMLElement, step: 1 | -1): void {
  const cards = [...(list?.querySelectorAll<HTMLElement>('.finding') ?? [])];
  const next = cards[cards.indexOf(card) + step];
  next?.querySelector<HTMLElement>(FINDING)?.focus();
  next?.scrollIntoView({ block: 'nearest' });
}
