import type { Finding } from '../../../shared/assess/assessment.ts';
import { conflicts } from '../../../shared/assess/conflicts.ts';
import { plan } from '../../../shared/assess/plan.ts';
import { counted, formatDate } from '../../../shared/format/number.ts';
import { Dose } from './Dose.tsx';
import { adviceHead } from '../../../shared/report/parts/findings.ts';
import { ruleBook } from '../../../shared/rules/ownRules.ts';
import { Button } from '../../parts/Button.tsx';
import { Words } from '../../parts/Words.tsx';
import { useCase } from '../useCase.ts';

/** What was accepted, together: what to do, how it is limited, when to measure again, and what pulls apart. */
export function Plan({ onGoTo }: { onGoTo: (findingKey: string) => void }) {
  const { file, assessment } = useCase();
  const items = plan(assessment.findings, file.findingDecisions);
  const clashes = conflicts(assessment.findings, file.findingDecisions, ruleBook(file).rules);
  return (
    <section className="plan" aria-labelledby="plan">
      <h3 id="plan">Plan</h3>
      {items.length === 0 && <p className="quiet">Nothing is accepted yet. What you accept is collected here.</p>}
      {clashes.map(({ less, more, words }) => (
        <p key={`${less} ${more}`} className="plan-clash">
          <Words weight="heavy">pull apart</Words> {words}
        </p>
      ))}
      {items.length > 0 && (
        <ol className="plan-list">
          {items.map(({ finding, text, drill, retest }) => (
            <li key={finding.key}>
              <p>
                <strong>{adviceHead(finding)}</strong>
                {text}
              </p>
              <Dose drill={drill} />
              <Limits finding={finding} />
              {retest !== null && (
                <p>
                  <strong>Test again: </strong>
                  {retest.label}{' '}
                  {retest.on === null
                    ? `after ${counted(retest.afterDays, 'day')}`
                    : `on or after ${formatDate(retest.on)}`}
                  .
                </p>
              )}
              {retest === null && <p className="quiet">No measure to test again is named for this.</p>}
              <Button look="quiet" onClick={() => onGoTo(finding.key)}>
                Because: {finding.finding}
              </Button>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

function Limits({ finding: { adjustments } }: { finding: Finding }) {
  if (adjustments.length === 0) return null;
  return (
    <ul className="bulleted">
      {adjustments.map((adjustment) => (
        <li key={adjustment}>{adjustment}</li>
      ))}
    </ul>
  );
}
