import { useRef, useState } from 'react';
import { toFailure } from '../../../shared/errors.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { DropDoor } from '../../parts/DropDoor.tsx';
import { hrefOf } from '../../workbench/route.ts';
import { useCase } from '../useCase.ts';

/** The film of a trial: a door while there is none, the way to the bench once there is. */
export function TrialFilm({ trial }: { trial: MovementTrial }) {
  const { file } = useCase();
  const [words, setWords] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const stopper = useRef<AbortController | null>(null);
  const film = file.media.find(({ sha256 }) => sha256 === trial.clipSha256);
  const isShownByCopy = film !== undefined && file.media.some(({ proxyOf }) => proxyOf === film.sha256);

  const take = async (chosen: readonly File[]) => {
    const stop = new AbortController();
    stopper.current = stop;
    setRefusal(null);
    setWords(`Looking at ${chosen[0]?.name ?? 'the film'}…`);
    try {
      const { bringIn } = await import('../../bench/bringIn.ts');
      await bringIn(chosen, trial, { onWords: setWords, signal: stop.signal });
    } catch (thrown) {
      setRefusal(`${failureWords(toFailure(thrown))} Nothing was kept of it.`);
    }
    setWords(null);
  };

  if (trial.clipSha256 !== null) {
    return (
      <p className="row-of-buttons trial-film">
        <a
          className="button button-main"
          href={hrefOf({ screen: 'case', caseId: trial.caseId, section: 'trials', trialId: trial.id })}
        >
          Open the trial bench
        </a>
        <span className="quiet">
          Film: {film?.fileName ?? 'not in this store'}
          {isShownByCopy && ' (shown by a copy, picture for picture)'}
        </span>
      </p>
    );
  }
  return (
    <div className="trial-film">
      <DropDoor
        label="Bring in the film of this trial"
        accept="video/*,.mp4,.mov,.m4v,.mkv,.webm,.avi,.ts,.mts,.png,.jpg,.jpeg"
        hint="MP4, MOV, MKV, WebM, AVI or MPEG-TS, or the numbered pictures of a sequence (PNG or JPEG) all at once. Choose it or drop it here. It is copied as it is and stays on this computer."
        isBusy={words !== null}
        refusal={refusal}
        onFiles={(chosen) => void take(chosen)}
      />
      <output className="import-state">{words}</output>
      {words !== null && (
        <Button look="quiet" onClick={() => stopper.current?.abort()}>
          Stop, and keep nothing
        </Button>
      )}
    </div>
  );
}
