import { useEffect, useMemo } from 'react';
import { movementOf } from '../../shared/assess/movementOf.ts';
import type { MovementTrial } from '../../shared/model/trial.ts';
import { useCase } from '../case/useCase.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { hrefOf } from '../workbench/route.ts';
import { Bench } from './Bench.tsx';
import { useFilm } from './useFilm.ts';
import '../case/trials/trials.css';
import './bench.css';

/** A trial opened wide: the way back, and the bench once the film is open. */
export function BenchScreen({ trialId }: { trialId: string }) {
  const { file } = useCase();
  const trial = file.movementTrials.find(({ id }) => id === trialId);
  const back = hrefOf({ screen: 'case', caseId: file.case.id, section: 'trials' });
  const movement = trial === undefined ? '' : (movementOf(file, trial.movementId)?.label ?? trial.movementId);
  const title = trial === undefined || trial.label === '' ? movement : `${movement}, ${trial.label}`;
  useEffect(() => {
    document.title = `${title}, trial bench, Caseframe`;
  }, [title]);
  return (
    <main id="sheet" className="bench" tabIndex={-1}>
      <div className="bench-head">
        <a href={back}>Back to the trials</a>
        <h1>{title === '' ? 'Trial bench' : title}</h1>
      </div>
      {trial === undefined ? (
        <EmptyState title="This trial is not part of the case any more." />
      ) : trial.clipSha256 === null ? (
        <EmptyState title="This trial has no film.">
          <p>Bring one in from the trial itself; then it can be opened here.</p>
        </EmptyState>
      ) : (
        <WithFilm key={trial.clipSha256} trial={trial} sha256={trial.clipSha256} />
      )}
    </main>
  );
}

function WithFilm({ trial, sha256 }: { trial: MovementTrial; sha256: string }) {
  const { file } = useCase();
  const name = file.media.find((media) => media.sha256 === sha256)?.fileName ?? 'film';
  // A copy has the film's pictures at the film's times, so frames are the same in both.
  const shown = file.media.find(({ proxyOf }) => proxyOf === sha256)?.sha256 ?? sha256;
  const href = useMemo(() => `/files/${shown}/${encodeURIComponent(name)}`, [shown, name]);
  const open = useFilm(href, name);
  if (open.state === 'opening') return <p className="appears-late">Opening {name}…</p>;
  if (open.state === 'failed') {
    return (
      <EmptyState title="The film cannot be opened.">
        <p>{open.words}</p>
      </EmptyState>
    );
  }
  return <Bench trial={trial} film={open.film} frames={open.frames} source={{ href, name }} />;
}
