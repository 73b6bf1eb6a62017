import { useCallback, useSyncExternalStore } from 'react';
import { toFailure } from '../../shared/errors.ts';
import { applyEdits } from '../../shared/model/applyEdits.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { CaseFile, Kind, RecordOf } from '../../shared/model/records.ts';
import { api, editQueue } from '../api.ts';
import { useAppDispatch, useAppStore } from '../store.ts';
import { useCase } from './useCase.ts';

type Apply = (edits: readonly Edit[], continues?: boolean) => void;

/**
 * Changes the case: on screen at once, in the store in the order made. Edits passed together are one step of undo; with
 * `continues` they are part of the step before, where it changed the same record alone.
 * Edits that the rules of the records refuse change nothing and are reported in the error bar.
 */
export function useEdit(): Apply {
  return useEditOf(useCase().file.case.id);
}

/** The same for one of several cases on screen. */
export function useEditOf(caseId: string): Apply {
  const dispatch = useAppDispatch();
  const store = useAppStore();
  return useCallback(
    (edits, continues = false) => {
      const answer = api.endpoints.openCase.select(caseId)(store.getState()).data;
      if (answer === undefined) return;
      try {
        // Built outside the draft, so that unchanged parts of a long trial stay the very same objects.
        const file = applyEdits(answer.file, edits);
        dispatch(api.util.updateQueryData('openCase', caseId, () => ({ ...answer, file })));
        editQueue.push(caseId, edits, continues);
      } catch (thrown) {
        editQueue.refuse(toFailure(thrown));
      }
    },
    [caseId, dispatch, store],
  );
}

/** The case as it stands at this very moment, with edits that are not on screen yet. */
export function useCaseNow(): () => CaseFile {
  const { file } = useCase();
  const store = useAppStore();
  return () => api.endpoints.openCase.select(file.case.id)(store.getState()).data?.file ?? file;
}

interface Asked {
  readonly status?: unknown;
  readonly endpointName?: string;
}

function isPending(of: Asked | undefined, names: readonly string[]): boolean {
  return of?.status === 'pending' && names.includes(of.endpointName ?? '');
}

/** Whether the case is being undone, redone or read anew at this moment: what is on screen is then about to be another. */
export function useIsTurning(): () => boolean {
  const store = useAppStore();
  return () => {
    const { mutations, queries } = store.getState()[api.reducerPath];
    return (
      Object.values(mutations).some((one) => isPending(one, ['undo', 'redo'])) ||
      Object.values(queries).some((one) => isPending(one, ['openCase']))
    );
  };
}

/** One patch, with its fields checked against its kind. */
export function patch<K extends Kind>(kind: K, id: string, fields: Partial<Omit<RecordOf<K>, 'id'>>): Edit {
  return { op: 'patch', kind, id, fields };
}

/** How saving stands, for the running head and the error bar. */
export function useSaving() {
  return useSyncExternalStore(editQueue.subscribe, editQueue.getState);
}
