import { useId } from 'react';
import type { Finding } from '../../../shared/assess/assessment.ts';
import { standingOf } from '../../../shared/assess/standing.ts';
import { BASIS_WORDS, EVIDENCE_WORDS } from '../../../shared/assess/words.ts';
import { sentenceCase } from '../../../shared/format/letterCase.ts';
import { addDays, counted, formatDate } from '../../../shared/format/number.ts';
import { conditionEntry } from '../../../shared/knowledge/conditions/index.ts';
import { adviceHead } from '../../../shared/report/parts/findings.ts';
import { whyHeldBack } from '../../../shared/report/parts/limits.ts';
import { isOwnRule, OWN_RULE_WORDS } from '../../../shared/rules/ownRules.ts';
import { OutcomeWords } from '../../parts/Words.tsx';
import { SourceLine } from '../../parts/WorkingView.tsx';
import { isSameSelection, useSelect, useSelection } from '../selection.ts';
import { useCase } from '../useCase.ts';
import { Dose } from './Dose.tsx';
import { DecisionBar } from './DecisionBar.tsx';
import { TestView } from './TestView.tsx';

const EFFECT_WORDS = { stop: 'stops it', replace: 'replaces it', modify: 'changes it', keep: 'leaves it' } as const;

/** One finding: what was found and by which measure, what may be suggested, what the history did, and the decision. */
export function FindingCard({ finding }: { finding: Finding }) {
  const { file } = useCase();
  const select = useSelect();
  const id = useId();
  const selection = { kind: 'finding', key: finding.key } as const;
  const isSelected = isSameSelection(useSelection(), selection);
  const standing = standingOf(finding, file.findingDecisions);

  return (
    <article
      className={isSelected ? 'finding finding-selected' : 'finding'}
      data-finding={finding.key}
      aria-labelledby={`${id}-title`}
    >
      <div className="finding-outcome">
        <OutcomeWords outcome={finding.outcome} />
        {finding.side !== 'none' && <p>{finding.side}</p>}
      </div>
      <div className="finding-body">
        <button
          type="button"
          id={`${id}-title`}
          className="finding-title"
          aria-pressed={isSelected}
          onClick={() => select(selection)}
          onFocus={() => select(selection)}
        >
          {finding.finding}
        </button>
        {finding.tests.map((test) => (
          <TestView key={`${test.measure} ${test.words}`} test={test} finding={finding} />
        ))}
        <Advice finding={finding} isSetAside={standing.decision?.decision === 'set-aside'} />
        <History finding={finding} />
        <p className="finding-grounds">
          {isOwnRule(finding.ruleId) && <strong>{OWN_RULE_WORDS}. </strong>}
          {finding.evidence !== finding.basis && `Evidence ${EVIDENCE_WORDS[finding.evidence]}. `}
          {sentenceCase(BASIS_WORDS[finding.basis])}.
          {finding.defersTo.length > 0 && ` Decides in the end: ${finding.defersTo.join('; ')}.`}
        </p>
        <details className="finding-why">
          <summary data-action="why">Why, step by step, and the sources</summary>
          <ol>
            {finding.trace.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          {finding.sources.map((source) => (
            <SourceLine key={source.cite} source={source} />
          ))}
        </details>
        <DecisionBar finding={finding} standing={standing} />
      </div>
    </article>
  );
}

/** What may be suggested. Nothing that was held back is ever shown here as advice. */
function Advice({ finding, isSetAside }: { finding: Finding; isSetAside: boolean }) {
  const { intervention, adjustments, drill, retest, takenOn } = finding;
  return (
    <>
      {intervention !== null && (
        <p className={isSetAside ? 'advice advice-set-aside' : 'advice'}>
          <strong>{adviceHead(finding)}</strong>
          {intervention}
        </p>
      )}
      <Dose drill={drill} />
      {adjustments.length > 0 && (
        <div className="advice">
          <strong>Adjusted because of the history:</strong>
          <ul className="bulleted">
            {adjustments.map((adjustment) => (
              <li key={adjustment}>{adjustment}</li>
            ))}
          </ul>
        </div>
      )}
      {retest !== null && (
        <p className="advice">
          <strong>Test again: </strong>
          {retest.label} after {counted(retest.afterDays, 'day')}
          {takenOn !== null && `, on or after ${formatDate(addDays(takenOn, retest.afterDays))}`}.
        </p>
      )}
    </>
  );
}

/** What the injuries on file did to the suggestion, and what was held back with who can change that. */
function History({ finding }: { finding: Finding }) {
  const held = whyHeldBack(finding);
  const { effects, withheld } = finding;
  const atWork = effects.filter((effect) => effect.effect !== 'keep');
  if (held === null && atWork.length === 0) return null;
  const isSaidAlready = (change: string) =>
    change === '' || change === finding.intervention || finding.adjustments.includes(change);
  return (
    <div className="history">
      {atWork.map((effect) => (
        <p key={effect.injuryId}>
          <strong>{conditionEntry(effect.condition).label}</strong> on file {EFFECT_WORDS[effect.effect]}
          {isSaidAlready(effect.change) ? '.' : `: ${effect.change}`}
        </p>
      ))}
      {held !== null && withheld !== null && (
        <div className="held-back">
          <p>
            <strong>Held back, not advice.</strong> Because of: {held.because}. Cleared only by: {held.clears}.
          </p>
          <details>
            <summary>What was held back, for the record</summary>
            <p>
              Not to be suggested to this athlete until cleared: <q>{withheld.text}</q>
            </p>
          </details>
        </div>
      )}
    </div>
  );
}
