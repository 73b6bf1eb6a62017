import { OUTCOME_WORDS } from '../../shared/assess/words.ts';
import type { Answer } from '../../shared/contract/channels.ts';
import { counted } from '../../shared/format/number.ts';
import { useAcceptRulesUpdateMutation, useRulesUpdateQuery } from '../api.ts';
import { failureWords } from '../failureWords.ts';
import { Button } from '../parts/Button.tsx';
import { hrefOf } from '../workbench/route.ts';

type Case = Answer<'rules.update'>['cases'][number];
type Change = Case['changes'][number];

/** What newer rules of the program would change in which open case, and the decision to use them. */
export function UpdatePanel() {
  const { data } = useRulesUpdateQuery();
  const [accept, { error, isLoading }] = useAcceptRulesUpdateMutation();
  if (data === undefined || data.waiting === 0) return null;
  return (
    <section aria-labelledby="rules-update" className="rules-update">
      <h2 id="rules-update">What the newer rules change</h2>
      <p>
        From {data.from.join(', ')} to {data.to}, for {counted(data.waiting, 'case')}. New referrals, cautions and stops
        hold already, and none that held has fallen silent. Advice, what is to be watched and what is confirmed stay as
        they were until you accept.
      </p>
      {data.cases.length === 0 ? (
        <p>No finding of an open case would change.</p>
      ) : (
        data.cases.map((one) => <ChangesOfCase key={one.caseId} {...one} />)
      )}
      <div className="row-of-buttons">
        <Button look="main" disabled={isLoading} onClick={() => void accept()}>
          Use the newer rules for every case
        </Button>
        <p className="quiet">Decisions on findings that then read otherwise are asked for again.</p>
      </div>
      {error !== undefined && <p role="alert">{failureWords(error)}</p>}
    </section>
  );
}

function ChangesOfCase({ caseId, number, athleteName, changes }: Case) {
  return (
    <section className="rules-case" aria-label={`Case ${number}`}>
      <h3>
        <a href={hrefOf({ screen: 'case', caseId, section: 'findings' })}>{number}</a> {athleteName}
      </h3>
      <ul className="rules-changes">
        {changes.map((change) => (
          <li key={change.key}>
            <OneChange {...change} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function OneChange({ before, after, isInForce }: Change) {
  const what = before === null ? 'Appears' : after === null ? 'Goes' : 'Changes';
  return (
    <>
      <p>
        <strong>{what}</strong>
        {isInForce && ', and holds already'}
      </p>
      {before !== null && <Said label={after === null ? '' : 'Now'} said={before} />}
      {after !== null && <Said label={before === null ? '' : 'Then'} said={after} />}
    </>
  );
}

function Said({ label, said }: { label: string; said: NonNullable<Change['before']> }) {
  return (
    <p className="rules-said">
      {label !== '' && <span className="quiet">{label}: </span>}
      {OUTCOME_WORDS[said.outcome]}. {said.text}
    </p>
  );
}
