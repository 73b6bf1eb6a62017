import { useEffect, useState } from 'react';
import { reportDoor } from '../../api.ts';
import { newId } from '../newRecord.ts';

/** How much of a piece of work is done. */
export interface Parts {
  readonly done: number;
  readonly of: number;
}

export interface Job {
  readonly jobId: string;
  /** Null before the first part is done. */
  readonly parts: Parts | null;
  /** The next piece of work, under an id of its own. */
  readonly begin: () => string;
  readonly stop: () => void;
}

/** A report under way: how far it is, and the way to stop it. */
export function useJob(): Job {
  const [jobId, setJobId] = useState(newId);
  const [parts, setParts] = useState<Parts | null>(null);
  useEffect(
    () =>
      reportDoor.onPart(({ jobId: whose, ...progress }) => {
        if (whose === jobId) setParts(progress);
      }),
    [jobId],
  );
  return {
    jobId,
    parts,
    begin() {
      const next = newId();
      setJobId(next);
      setParts(null);
      return next;
    },
    stop: () => void reportDoor.cancel(jobId),
  };
}
