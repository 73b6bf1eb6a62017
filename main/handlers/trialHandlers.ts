import { readTrialFile, trialFileToRecords } from '../../shared/exchange/trialFile.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { Handlers } from './context.ts';
import { judged } from './judged.ts';
import { keepFile } from './keepFile.ts';

export const trialHandlers: Handlers<'trial.import'> = {
  'trial.import': async (context, { caseId, fileName, text }) => {
    const { file } = readTrialFile(text);
    const records = trialFileToRecords(file, context.newId, caseId);
    const kept = await keepFile(context, caseId, {
      fileName,
      mediaType: 'application/json',
      bytes: new TextEncoder().encode(text),
    });
    const created: Edit[] = [
      { op: 'create', kind: 'movementTrial', record: records.movementTrial },
      ...records.landmarkTracks.map((record): Edit => ({ op: 'create', kind: 'landmarkTrack', record })),
      ...records.trialEvents.map((record): Edit => ({ op: 'create', kind: 'trialEvent', record })),
      ...records.enteredMeasures.map((record): Edit => ({ op: 'create', kind: 'enteredMeasure', record })),
    ];
    const edits = await context.store.apply(caseId, [kept.edit, ...created], context.now());
    await judged(context, caseId);
    return { trialId: records.movementTrial.id, warnings: [...records.warnings], edits };
  },
};
