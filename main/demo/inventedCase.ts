import type { Athlete } from '../../shared/model/athlete.ts';
import type { CaseRecord, Purpose } from '../../shared/model/case.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { ask } from '../cli/ask.ts';
import type { Service } from '../service.ts';
import type { RandomSource } from './randomSource.ts';

/** A case of nobody: everything in it is made up here, and every page made from it says so. */
export interface InventedCase {
  readonly purpose: Purpose;
  readonly openedOn: string;
  readonly athlete: Partial<Omit<Athlete, 'id'>>;
  readonly case: Partial<Omit<CaseRecord, 'id' | 'athleteId'>>;
  records(caseId: string, athleteId: string, random: RandomSource): Edit[];
  /** What comes in as files, after the records. */
  importFiles?(service: Service, caseId: string, random: RandomSource): Promise<void>;
}

/** Enters a case the way the window would: opened empty, then filled edit by edit, then the files. */
export async function enterCase(service: Service, invented: InventedCase, random: RandomSource): Promise<string> {
  const { purpose, openedOn } = invented;
  const { caseId } = await ask(service, 'case.create', { purpose, athleteId: null, openedOn });
  const { file } = await ask(service, 'case.open', { caseId });
  const athleteId = file.athlete.id;
  await ask(service, 'case.edit', {
    caseId,
    edits: [
      { op: 'patch', kind: 'athlete', id: athleteId, fields: { isPseudonym: true, ...invented.athlete } },
      { op: 'patch', kind: 'case', id: caseId, fields: { isInvented: true, ...invented.case } },
    ],
  });
  await ask(service, 'case.edit', { caseId, edits: invented.records(caseId, athleteId, random) });
  await invented.importFiles?.(service, caseId, random);
  return caseId;
}
