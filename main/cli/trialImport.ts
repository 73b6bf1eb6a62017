import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { MOVEMENTS } from '../../shared/knowledge/movements/index.ts';
import { blankTrial } from '../../shared/model/blank.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { Service } from '../service.ts';
import { ask } from './ask.ts';
import { bringFilm, type FilmOnDisk, filmOnDisk } from './bringFilm.ts';
import { choiceFrom, type Command, type Output, optionalNumber, readText } from './command.ts';
import { findCase } from './findCase.ts';
import { importMarkers, MARKER_OPTIONS } from './importMarkers.ts';

const MOVEMENT_IDS = MOVEMENTS.map(({ id }) => id);

export const trialImport: Command = {
  name: 'trial import',
  usage:
    'CASE FILE… [--movement ID] [--rate HZ] [--copy] [--points MARKER=POINT,…] [--forward AXIS] [--up AXIS] [--unit mm|cm|dm|m] [--point-u M] [--side SIDE] [--date DAY] [--folder DIR]',
  does: 'a trial from a film, the numbered pictures of one (or their folder), a trial file (JSON), or the markers of a C3D file; --rate: frames a second truly recorded; --copy: with a copy that steps quickly; of markers: which points they are, the plane (+x, -z …), their unit and uncertainty, where other than suggested',
  words: 2,
  mayFollow: 200_000,
  options: { movement: { type: 'string' }, rate: { type: 'string' }, copy: { type: 'boolean' }, ...MARKER_OPTIONS },
  async run({ words: [caseName = '', ...names], options, openStore }) {
    const [only = ''] = names;
    if (names.length === 1 && /\.json$/i.test(only)) return importFile(await openStore(), caseName, only);
    const movementId = choiceFrom(options['movement'], '--movement', MOVEMENT_IDS);
    if (names.length === 1 && /\.c3d$/i.test(only)) {
      return importMarkers(await openStore(), { caseName, fileName: only, movementId }, options);
    }
    const captureRateHz = optionalNumber(options['rate'], '--rate');
    const film = filmOnDisk(names);
    const service = await openStore();
    const file = await findCase(service, caseName);
    const { trialId, isNew } = await trialFor(service, file, film, movementId, captureRateHz);
    const caseId = file.case.id;
    try {
      const brought = await bringFilm(service, { caseId, trialId }, film, {
        wantsCopy: options['copy'] === true,
        // Progress is not an answer: to standard error, so that --json stays one document.
        onWords: (progress) => console.error(progress),
      });
      return said(trialId, film, brought);
    } catch (thrown) {
      if (isNew)
        await ask(service, 'case.edit', { caseId, edits: [{ op: 'remove', kind: 'movementTrial', id: trialId }] });
      throw thrown;
    }
  },
};

async function importFile(service: Service, caseName: string, fileName: string): Promise<Output> {
  const { case: opened } = await findCase(service, caseName);
  const file = { caseId: opened.id, fileName: path.basename(fileName), text: readText(fileName) };
  const { trialId, warnings } = await ask(service, 'trial.import', file);
  return {
    json: { trialId, warnings },
    lines: [`Trial ${trialId} taken in.`, ...warnings.map((warning) => `Look at: ${warning}`)],
  };
}

/** A trial of this film that is still without it, after a call that was ended; else a new one. */
async function trialFor(
  service: Service,
  file: CaseFile,
  { fileName }: FilmOnDisk,
  movementId: string,
  captureRateHz: number | null,
): Promise<{ trialId: string; isNew: boolean }> {
  const label = fileName.slice(0, 300);
  const waiting = file.movementTrials.find(
    (trial) => trial.clipSha256 === null && trial.label === label && trial.movementId === movementId,
  );
  if (waiting !== undefined) return { trialId: waiting.id, isNew: false };
  const record = {
    ...blankTrial(randomUUID(), file.case.id, movementId, new Date().toISOString().slice(0, 10)),
    label,
    captureRateHz,
    captureRateFrom: captureRateHz === null ? null : ('entered' as const),
  };
  await ask(service, 'case.edit', {
    caseId: file.case.id,
    edits: [{ op: 'create', kind: 'movementTrial', record }],
  });
  return { trialId: record.id, isNew: true };
}

function said(trialId: string, film: FilmOnDisk, brought: Awaited<ReturnType<typeof bringFilm>>): Output {
  const { sha256, proxySha256, facts, words } = brought;
  const readable = facts?.readablePictures ?? film.pictures;
  return {
    json: {
      trialId,
      fileName: film.fileName,
      sizeBytes: film.sizeBytes,
      sha256,
      copySha256: proxySha256,
      codec: facts?.codec ?? null,
      readablePictures: readable,
      promisedPictures: facts?.promisedPictures ?? film.pictures,
      warnings: words,
    },
    lines: [
      `${film.fileName} is in the store${readable === null ? '' : `: ${readable} pictures`}.`,
      ...(proxySha256 === null ? [] : ['It is shown by a copy, picture for picture at the same times.']),
      ...words.map((one) => `Look at: ${one}`),
    ],
  };
}
