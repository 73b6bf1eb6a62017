import { useState } from 'react';
import type { Answer, Door } from '../../shared/contract/channels.ts';
import { formatDate } from '../../shared/format/number.ts';
import { useForgetMappingMutation, useMappingsQuery, usePutBackMappingMutation } from '../api.ts';
import { failureWords } from '../failureWords.ts';
import { Button } from '../parts/Button.tsx';
import { headWords, readingWords } from './readingWords.ts';

type Kept = Answer<'mapping.list'>['mappings'][number];

/** How files that came through this door were read, and will be again: each can be forgotten, and kept again. */
export function RememberedReadings({ door }: { door: Door }) {
  const { data } = useMappingsQuery(undefined, { refetchOnMountOrArgChange: true });
  const [forget, forgetting] = useForgetMappingMutation();
  const [putBack, putting] = usePutBackMappingMutation();
  const [gone, setGone] = useState<Kept | null>(null);
  const kept = (data?.mappings ?? []).filter((one) => one.door === door);
  const error = forgetting.error ?? putting.error;
  if (kept.length === 0 && gone === null) return null;
  // Until the list has it again, so that the panel stays open in between.
  const isGone = gone !== null && kept.every(({ heads }) => heads.join('\n') !== gone.heads.join('\n'));
  const isBusy = forgetting.isLoading || putting.isLoading;

  const remove = async (one: Kept) => {
    const answer = await forget({ door: one.door, heads: one.heads });
    if (answer.error === undefined) setGone(one);
  };
  return (
    <details className="remembered">
      <summary>Remembered for later files</summary>
      {error !== undefined && <p role="alert">{failureWords(error)}</p>}
      <output>
        {isGone && (
          <>
            Forgotten: files with {headWords(gone)} are recognised anew.{' '}
            <Button look="quiet" disabled={isBusy} onClick={() => void putBack(gone)}>
              Remember it again
            </Button>
          </>
        )}
      </output>
      <ul>
        {kept.map((one) => (
          <li key={one.heads.join('\n')}>
            <strong>{headWords(one)}</strong>, last used {formatDate(one.usedAt.slice(0, 10))}. {readingWords(one)}.{' '}
            <Button
              look="quiet"
              disabled={isBusy}
              aria-label={`Forget how files with ${headWords(one)} are read`}
              onClick={() => void remove(one)}
            >
              Forget
            </Button>
          </li>
        ))}
      </ul>
    </details>
  );
}
