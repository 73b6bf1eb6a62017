import { createContext, useContext } from 'react';
import type { Assessment } from '../../shared/assess/assessment.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { EditState } from '../../shared/ports/caseStore.ts';

export interface OpenCase {
  readonly file: CaseFile;
  /** Always of this very file: it changes in the same render as what was typed. */
  readonly assessment: Assessment;
  readonly edits: EditState;
}

export const OpenCaseContext = createContext<OpenCase | null>(null);

/** The case on screen, for everything inside CaseScreen. */
export function useCase(): OpenCase {
  const open = useContext(OpenCaseContext);
  if (open === null) throw new Error('useCase is for components inside CaseScreen');
  return open;
}
