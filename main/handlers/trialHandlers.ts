import { isDeepStrictEqual } from 'node:util';
import type { Answer, Request } from '../../shared/contract/channels.ts';
import { DomainError, plainMessage } from '../../shared/errors.ts';
import { type MarkerReading, markerReading } from '../../shared/exchange/markerReading.ts';
import { plainLabel } from '../../shared/exchange/suggestPoints.ts';
import { readTrialFile, trialFileToRecords } from '../../shared/exchange/trialFile.ts';
import { blankTrial } from '../../shared/model/blank.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { c3dMarkers, markerTrial } from '../exchange/c3d/c3dMarkers.ts';
import { type C3dFile, readC3d } from '../exchange/c3d/readC3d.ts';
import type { Context, Handlers } from './context.ts';
import { judged } from './judged.ts';
import { keepFile } from './keepFile.ts';
import { remember, remembered } from './remembered.ts';

export const trialHandlers: Handlers<'trial.import' | 'trial.previewMarkers' | 'trial.importMarkers'> = {
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
  'trial.previewMarkers': async (context, { file }) => {
    const { c3d, markers, reading, isRemembered } = await readMarkers(context, file);
    return {
      frames: c3d.frames,
      rateHz: c3d.pointRateHz,
      units: c3d.units,
      markers: [...markers],
      reading,
      isRemembered,
      ...previewed(c3d, reading),
    };
  },
  'trial.importMarkers': async (context, { caseId, file, movementId, side, filmedOn, pointUM }) => {
    const { c3d, reading, isDecided } = await readMarkers(context, file);
    const { tracks, words } = markerTrial(c3d, reading);
    const bytes = Buffer.from(file.base64, 'base64');
    const record = {
      ...blankTrial(context.newId(), caseId, movementId, filmedOn),
      label: file.fileName,
      side,
      captureRateHz: c3d.pointRateHz,
      captureRateFrom: 'entered' as const,
      calibration: { kind: 'metres' as const, pointUM },
      // So that the record itself says how it came about.
      note: words.join('\n').slice(0, 10_000),
    };
    const kept = await keepFile(context, caseId, {
      fileName: file.fileName,
      mediaType: 'application/octet-stream',
      bytes,
    });
    const created: Edit[] = [
      { op: 'create', kind: 'movementTrial', record },
      ...tracks.map(
        ({ point, samples }): Edit => ({
          op: 'create',
          kind: 'landmarkTrack',
          record: { id: context.newId(), trialId: record.id, point, origin: 'imported', samples, uPx: null },
        }),
      ),
    ];
    const edits = await context.store.apply(caseId, [kept.edit, ...created], context.now());
    await remember(context, 'markers', headsOf(c3d), reading, isDecided);
    await judged(context, caseId);
    return { trialId: record.id, warnings: [...words], edits };
  },
};

/** How the markers are to be read: as asked, else as files with the same ones were read last, else as suggested. */
async function readMarkers(context: Context, { base64, reading }: Request<'trial.importMarkers'>['file']) {
  const c3d = readC3d(Buffer.from(base64, 'base64'));
  const { markers, suggested } = c3dMarkers(c3d);
  const kept = await remembered(context, 'markers', headsOf(c3d), markerReading);
  const used = reading ?? kept ?? suggested;
  return {
    c3d,
    markers,
    reading: used,
    isRemembered: kept !== null && isDeepStrictEqual(kept, used),
    isDecided: reading !== null && !isDeepStrictEqual(reading, suggested),
  };
}

function headsOf({ pointLabels }: C3dFile): string[] {
  return pointLabels.map(plainLabel);
}

/** What would be done, or what is still open. */
function previewed(c3d: C3dFile, reading: MarkerReading): Pick<Answer<'trial.previewMarkers'>, 'words' | 'open'> {
  try {
    return { words: [...markerTrial(c3d, reading).words], open: null };
  } catch (thrown) {
    if (!(thrown instanceof DomainError)) throw thrown;
    return { words: [], open: plainMessage(thrown.message) };
  }
}
