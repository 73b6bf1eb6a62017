import type { Quantity, Source, Working } from '../../shared/quantity.ts';
import { Formula } from './Formula.tsx';
import { ReadingText } from './ReadingText.tsx';

/** How a number, shown beside it, came about: formula, what was put in, variant, source, and the same for each number put in. */
export function WorkingView({ quantity }: { quantity: Quantity }) {
  const { working } = quantity;
  return (
    <div className="working">
      {working.formula !== null && (
        <p className="working-formula">
          <Formula text={working.formula} />
        </p>
      )}
      {quantity.u === null && quantity.uReason !== null && (
        <p className="working-note">No uncertainty: {quantity.uReason}.</p>
      )}
      <WorkingInputs working={working} />
      {working.variant !== null && <p className="working-note">Variant: {working.variant}.</p>}
      {working.source !== null && <SourceLine source={working.source} />}
    </div>
  );
}

function WorkingInputs({ working }: { working: Working }) {
  if (working.inputs.length === 0) return null;
  return (
    <ul className="working-inputs">
      {working.inputs.map(({ symbol, quantity }) => {
        const own = quantity.working;
        const line = (
          <>
            <Formula text={symbol} /> <span className="formula-relation">=</span> <ReadingText reading={quantity} />{' '}
            <span className="working-name">{own.name}</span>
          </>
        );
        const hasMore = own.formula !== null || own.source !== null || quantity.uReason !== null;
        return (
          <li key={symbol}>
            {hasMore ? (
              <details>
                <summary>{line}</summary>
                <WorkingView quantity={quantity} />
              </details>
            ) : (
              line
            )}
          </li>
        );
      })}
    </ul>
  );
}

const STATUS_WORDS: Readonly<Record<Source['status'], string>> = {
  published: 'Published',
  derived: 'Derived',
  convention: 'Convention, no published source',
  'from memory': 'From memory, not yet checked',
};

/** A source with the word that says how sure we are of it, unless the citation begins with that word itself. */
export function SourceLine({ source: { cite, status } }: { source: Source }) {
  const saysSo = cite.toLowerCase().startsWith(status);
  return (
    <p className="source">
      {!saysSo && <span className="source-status">{STATUS_WORDS[status]}:</span>} {cite}
    </p>
  );
}
