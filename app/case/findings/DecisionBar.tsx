import { useEffect, useRef } from 'react';
import type { Finding } from '../../../shared/assess/assessment.ts';
import { readsAs, type Standing } from '../../../shared/assess/standing.ts';
import { OUTCOME_WORDS } from '../../../shared/assess/words.ts';
import type { FindingDecision } from '../../../shared/model/outcome.ts';
import { DECISION_WORDS } from '../../../shared/report/words.ts';
import { Button } from '../../parts/Button.tsx';
import { LongTextField } from '../../parts/LongTextField.tsx';
import { Words } from '../../parts/Words.tsx';
import { newId } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { patch, useEdit } from '../useEdit.ts';

/**
 * Accept, reword or set aside. A decision is stored the moment it is made and keeps how the finding read then; its
 * wording or reason is stored as it is typed.
 */
export function DecisionBar({ finding, standing }: { finding: Finding; standing: Standing }) {
  const { file } = useCase();
  const edit = useEdit();
  const { decision, state } = standing;
  const words = useRef<HTMLDivElement>(null);
  const asked = useRef(false);

  const decide = (kind: FindingDecision['decision']) => {
    asked.current = kind !== 'accepted';
    const reading = { decision: kind, decidedOutcome: finding.outcome, decidedText: readsAs(finding) };
    const wording = kind === 'reworded' && (decision === null || decision.wording === '') ? finding.intervention : null;
    const fields = wording === null ? reading : { ...reading, wording };
    if (decision !== null) edit([patch('findingDecision', decision.id, fields)]);
    else {
      const record: FindingDecision = {
        id: newId(),
        caseId: file.case.id,
        findingKey: finding.key,
        wording: '',
        reason: '',
        ...fields,
      };
      edit([{ op: 'create', kind: 'findingDecision', record }]);
    }
  };
  // The words asked for are typed at once.
  useEffect(() => {
    if (asked.current) words.current?.querySelector('textarea')?.focus();
    asked.current = false;
  });
  const change = (fields: Partial<FindingDecision>) => {
    if (decision !== null) edit([patch('findingDecision', decision.id, fields)]);
  };

  return (
    <div className="decision">
      {state === 'changed since' && decision !== null && <ChangedSince decision={decision} />}
      <div className="decision-buttons">
        <Words weight={state === 'decided' ? 'plain' : state === 'nothing to decide' ? 'quiet' : 'open'}>
          {state === 'decided' && decision !== null ? DECISION_WORDS[decision.decision] : state}
        </Words>
        {state !== 'nothing to decide' && (
          <Button data-action="accept" aria-pressed={isNow('accepted')} onClick={() => decide('accepted')}>
            Accept
          </Button>
        )}
        {state !== 'nothing to decide' && finding.intervention !== null && (
          <Button data-action="edit" aria-pressed={isNow('reworded')} onClick={() => decide('reworded')}>
            Edit the words
          </Button>
        )}
        <Button
          look={state === 'nothing to decide' ? 'quiet' : 'plain'}
          data-action="set-aside"
          aria-pressed={isNow('set-aside')}
          onClick={() => decide('set-aside')}
        >
          Set aside
        </Button>
        {decision !== null && (
          <Button
            look="quiet"
            data-action="take-back"
            onClick={() => edit([{ op: 'remove', kind: 'findingDecision', id: decision.id }])}
          >
            Take back
          </Button>
        )}
      </div>
      <div ref={words}>
        {decision?.decision === 'reworded' && (
          <LongTextField
            label="Printed in place of the suggestion"
            hint="Words of your own are not checked against the injuries on file; what they suggest is yours to answer for."
            value={decision.wording}
            onChange={(wording) => change({ wording })}
          />
        )}
        {decision?.decision === 'set-aside' && (
          <LongTextField
            label="Reason for setting it aside"
            hint="Printed with the finding."
            neededFor="the report"
            value={decision.reason}
            onChange={(reason) => change({ reason })}
          />
        )}
      </div>
    </div>
  );

  function isNow(kind: FindingDecision['decision']): boolean {
    return decision?.decision === kind && state === 'decided';
  }
}

/** The finding as it read when it was decided on, so that the practitioner can see what moved. */
function ChangedSince({ decision }: { decision: FindingDecision }) {
  const outcomes: Readonly<Record<string, string>> = OUTCOME_WORDS;
  return (
    <div className="changed-since">
      <p>
        <Words weight="heavy">changed since you decided</Words> It was {DECISION_WORDS[decision.decision]} when it read:
      </p>
      <blockquote>
        {outcomes[decision.decidedOutcome] ?? decision.decidedOutcome}. {decision.decidedText}
      </blockquote>
      <p className="quiet">Decide again: until then the report prints the finding as undecided.</p>
    </div>
  );
}
