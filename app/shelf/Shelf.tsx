import { useDeferredValue, useEffect, useRef, useState } from 'react';
import { useShelfQuery } from '../api.ts';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { useKeys, useSingleKey } from '../workbench/keys.ts';
import { hrefOf } from '../workbench/route.ts';
import { RunningHead } from '../workbench/RunningHead.tsx';
import { UpdateNotice } from '../rules/UpdateNotice.tsx';
import { NewCase } from './NewCase.tsx';
import { ShelfRows } from './ShelfRows.tsx';
import './shelf.css';

/** Rows asked for at a time. */
const PAGE = 150;

/** All cases, newest first; what is typed in the search finds anything typed in a case. */
export function Shelf() {
  const [typed, setTyped] = useState('');
  const [archived, setArchived] = useState(false);
  const [pages, setPages] = useState(1);
  const [isAsking, setAsking] = useState(false);
  const search = useDeferredValue(typed.trim());
  const searchBox = useRef<HTMLInputElement>(null);
  const shelf = useRef<HTMLElement>(null);
  const { data, error } = useShelfQuery({ search, archived, offset: 0, limit: PAGE });
  const total = data?.total ?? 0;

  useSingleKey('/', () => searchBox.current?.focus());
  useEffect(() => {
    document.title = 'Shelf, Caseframe';
  }, []);

  /** Arrow keys go from the search to the first case and from case to case. */
  useKeys((event) => {
    const step = { ArrowDown: 1, ArrowUp: -1, Home: -Infinity, End: Infinity }[event.key];
    const isInSearch = event.target === searchBox.current;
    if (step === undefined || (isInSearch && event.key !== 'ArrowDown')) return false;
    const links = [...(shelf.current?.querySelectorAll<HTMLElement>('.shelf-link') ?? [])];
    const at = links.indexOf(document.activeElement as HTMLElement);
    if (at < 0 && !isInSearch) return false;
    const next = Math.min(Math.max(at + step, -1), links.length - 1);
    (next < 0 ? searchBox.current : links[next])?.focus();
    return true;
  });

  return (
    <>
      <RunningHead />
      <main id="sheet" className="shelf" tabIndex={-1} ref={shelf}>
        <div className="shelf-head">
          <h1>Shelf</h1>
          <span className="shelf-ways">
            <a className="button button-plain" href={hrefOf({ screen: 'run', run: null, isSquad: false })}>
              Intake run
            </a>
            <a className="button button-plain" href={hrefOf({ screen: 'rules' })}>
              Rules
            </a>
            <Button look="main" onClick={() => setAsking(true)}>
              New case
            </Button>
          </span>
        </div>
        <UpdateNotice />
        <search className="shelf-search">
          <label className="only-heard" htmlFor="shelf-search">
            Search everything typed
          </label>
          <input
            id="shelf-search"
            ref={searchBox}
            className="input"
            type="search"
            autoComplete="off"
            spellCheck={false}
            maxLength={300}
            placeholder="Search everything typed"
            value={typed}
            onChange={(event) => {
              setTyped(event.target.value);
              setPages(1);
            }}
          />
          <label className="choice">
            <input type="checkbox" checked={archived} onChange={(event) => setArchived(event.target.checked)} />
            <span>Archived cases</span>
          </label>
          <output className="shelf-count quiet">{data !== undefined && countWords(total, search, archived)}</output>
        </search>
        {error !== undefined && (
          <EmptyState title="The shelf cannot be read.">
            <p>{'message' in error ? error.message : ''}</p>
          </EmptyState>
        )}
        {data !== undefined && total === 0 && (
          <Nothing search={search} archived={archived} onNew={() => setAsking(true)} />
        )}
        {total > 0 && (
          <ol className="shelf-rows" aria-label="Cases">
            {Array.from({ length: pages }, (_, page) => (
              <ShelfRows key={page} query={{ search, archived, offset: page * PAGE, limit: PAGE }} />
            ))}
          </ol>
        )}
        {total > pages * PAGE && (
          <p className="shelf-more">
            <Button onClick={() => setPages(pages + 1)}>Show {Math.min(PAGE, total - pages * PAGE)} more</Button>
          </p>
        )}
      </main>
      {isAsking && <NewCase onClose={() => setAsking(false)} />}
    </>
  );
}

function countWords(total: number, search: string, archived: boolean): string {
  const cases = `${total} ${archived ? 'archived ' : ''}${total === 1 ? 'case' : 'cases'}`;
  return search === '' ? cases : `${cases} with “${search}”`;
}

function Nothing({ search, archived, onNew }: { search: string; archived: boolean; onNew: () => void }) {
  if (search !== '') {
    return (
      <EmptyState title={`Nothing typed in any case matches “${search}”.`}>
        <p>Search looks at names, notes, injuries, results and findings. Fewer or shorter words find more.</p>
      </EmptyState>
    );
  }
  if (archived) return <EmptyState title="No case is archived." />;
  return (
    <EmptyState title="The shelf is empty.">
      <p>A case holds one athlete: who they are, what has been injured, how they screen, jump and move.</p>
      <p>
        <Button onClick={onNew}>Open the first case</Button>
      </p>
    </EmptyState>
  );
}
