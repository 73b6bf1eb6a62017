import type { JumpTrial } from '../../../shared/model/jump.ts';
import { newId } from '../newRecord.ts';

export function emptyTrial(testId: string, number: number): JumpTrial {
  return {
    id: newId(),
    testId,
    number,
    flightTimeS: null,
    contactTimeS: null,
    jumpReachM: null,
    force: null,
    mediaSha256: null,
    painNrs: null,
    isSetAside: false,
    note: '',
    movementTrialId: null,
  };
}
