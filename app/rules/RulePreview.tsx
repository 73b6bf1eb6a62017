import { OUTCOME_WORDS } from '../../shared/assess/words.ts';
import { hrefOf } from '../workbench/route.ts';
import type { Preview } from './usePreview.ts';

/** What a rule would find, before it judges anything. */
export function RulePreview({ preview, hasCase }: { preview: Preview | undefined; hasCase: boolean }) {
  return (
    <section className="rule-preview" aria-label="Preview" aria-live="polite">
      {preview === undefined ? (
        <p className="quiet">Looking at the stored cases…</p>
      ) : (
        <Found preview={preview} hasCase={hasCase} />
      )}
    </section>
  );
}

function Found({ preview: { problems, here, of, fires }, hasCase }: { preview: Preview; hasCase: boolean }) {
  return (
    <>
      {problems.length > 0 && (
        <p>
          <strong>It judges nothing yet:</strong>{' '}
          {problems.length === 1 ? 'one thing keeps' : `${String(problems.length)} things keep`} it from being used,
          said beside each part.
        </p>
      )}
      {hasCase && (
        <p>
          <strong>This case: </strong>
          {here === null ? 'it would not fire.' : `${OUTCOME_WORDS[here.outcome]}. ${here.finding}`}
        </p>
      )}
      <p>
        <strong>
          It would fire in {fires.length} of {of}
        </strong>{' '}
        stored cases{fires.length === 0 && '.'}
      </p>
      {fires.length > 0 && (
        <ul className="rule-fires">
          {fires.slice(0, 12).map(({ caseId, number, outcome, finding }) => (
            <li key={caseId}>
              <a href={hrefOf({ screen: 'case', caseId, section: 'findings' })}>{number}</a>{' '}
              {OUTCOME_WORDS[outcome].toLowerCase()}: {finding}
            </li>
          ))}
          {fires.length > 12 && <li>and {fires.length - 12} more</li>}
        </ul>
      )}
    </>
  );
}
