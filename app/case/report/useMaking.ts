import { useEffect, useState } from 'react';
import type { Request } from '../../../shared/contract/channels.ts';
import { reportDoor, useMakeReportMutation } from '../../api.ts';
import { newId } from '../newRecord.ts';

export interface Making {
  readonly make: (request: Request<'report.make'>) => void;
  readonly cancel: () => void;
  /** Pages drawn so far; null before the first. */
  readonly pages: { readonly done: number; readonly of: number } | null;
  readonly made: ReturnType<typeof useMakeReportMutation>[1];
}

/** A PDF under way: how many of its pages are drawn, and the way to stop it. */
export function useMaking(): Making {
  const [make, made] = useMakeReportMutation();
  const [jobId, setJobId] = useState<string | null>(null);
  const [pages, setPages] = useState<Making['pages']>(null);
  useEffect(
    () =>
      reportDoor.onPage((progress) => {
        if (progress.jobId === jobId) setPages({ done: progress.done, of: progress.of });
      }),
    [jobId],
  );
  return {
    make(request) {
      const ours = newId();
      setJobId(ours);
      setPages(null);
      void make({ ...request, jobId: ours });
    },
    cancel() {
      if (jobId !== null) void reportDoor.cancel(jobId);
    },
    pages,
    made,
  };
}
