import { useEffect } from 'react';
import { shallowEqual } from 'react-redux';
import type { CaseFile } from '../../shared/model/records.ts';
import { api } from '../api.ts';
import { useAppDispatch, useAppSelector } from '../store.ts';

/** Several cases at once, kept open as long as they are on screen. Those still being read are missing from `files`. */
export function useFiles(caseIds: readonly string[]): {
  readonly files: readonly CaseFile[];
  readonly failure: string | null;
} {
  const dispatch = useAppDispatch();
  useEffect(() => {
    const open = caseIds.map((caseId) => dispatch(api.endpoints.openCase.initiate(caseId)));
    return () => {
      for (const one of open) one.unsubscribe();
    };
  }, [caseIds, dispatch]);
  const files = useAppSelector(
    (state) =>
      caseIds.flatMap((caseId) => {
        const file = api.endpoints.openCase.select(caseId)(state).data?.file;
        return file === undefined ? [] : [file];
      }),
    shallowEqual,
  );
  const failure = useAppSelector((state) => {
    const failed = caseIds.map((caseId) => api.endpoints.openCase.select(caseId)(state).error);
    const first = failed.find((error) => error !== undefined);
    return first !== undefined && 'message' in first ? (first.message ?? null) : null;
  });
  return { files, failure };
}
