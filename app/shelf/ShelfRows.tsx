import type { Answer, Request } from '../../shared/contract/channels.ts';
import { formatDate } from '../../shared/format/number.ts';
import { useShelfQuery } from '../api.ts';
import { Words } from '../parts/Words.tsx';
import { hrefOf } from '../workbench/route.ts';
import { PURPOSE_WORDS } from './purposeWords.ts';

type Row = Answer<'shelf.list'>['rows'][number];

/** One page of the shelf. */
export function ShelfRows({ query }: { query: Request<'shelf.list'> }) {
  const { data } = useShelfQuery(query);
  return data?.rows.map((row) => <ShelfRow key={row.caseId} row={row} />);
}

/** More than these would bury the cautions beside them. */
const MISSING_SHOWN = 3;

function ShelfRow({ row }: { row: Row }) {
  const { caseId, missing, cautions } = row;
  const left = missing.length - MISSING_SHOWN;
  return (
    <li className="shelf-row">
      <div className="shelf-who">
        <a className="shelf-link" href={hrefOf({ screen: 'case', caseId, section: 'athlete' })}>
          {row.athleteName === '' ? 'Athlete not named yet' : row.athleteName}
        </a>
        <p className="quiet">
          {row.number}, {PURPOSE_WORDS[row.purpose].label.toLowerCase()}
          {row.isInvented && ', invented data'}
        </p>
        {row.match !== null && row.match.replaceAll(/[⟦⟧]/g, '') !== row.athleteName && <Match text={row.match} />}
      </div>
      <div className="shelf-state">
        {cautions.length > 0 && (
          <ul className="shelf-cautions" aria-label="Open cautions">
            {cautions.map((caution) => (
              <li key={caution}>
                <Words weight={/^stop/i.test(caution) ? 'stop' : 'heavy'}>{caution}</Words>
              </li>
            ))}
          </ul>
        )}
        <p className="shelf-missing">
          {missing.length === 0 ? (
            <span className="quiet">nothing missing</span>
          ) : (
            <>
              {missing.slice(0, MISSING_SHOWN).join('; ')}
              {left > 0 && <span className="quiet">; {left} more</span>}
            </>
          )}
        </p>
      </div>
      <p className="shelf-touched quiet">
        <time dateTime={row.touchedAt}>{formatDate(row.touchedAt)}</time>
      </p>
    </li>
  );
}

/** Where the search words stand, with the words themselves on the tint. */
function Match({ text }: { text: string }) {
  return (
    <p className="shelf-match">
      {text.split(/⟦(.*?)⟧/s).map((part, index) => {
        // The parts of a split line have no identity but their place.
        const Part = index % 2 === 1 ? 'mark' : 'span';
        // oxlint-disable-next-line react/no-array-index-key
        return <Part key={index}>{part}</Part>;
      })}
    </p>
  );
}
