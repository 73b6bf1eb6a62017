import fs from 'node:fs';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { DomainError } from '../../shared/errors.ts';
import { filmType, HEAD_BYTES } from '../../shared/film/filmType.ts';
import { MOST_GROUP } from '../../shared/film/readablePictures.ts';
import { sequenceOf } from '../../shared/film/sequenceOf.ts';
import { findFfmpeg } from '../media/ffmpeg.ts';
import type { Answer } from '../../shared/contract/channels.ts';
import type { Service } from '../service.ts';
import { ask } from './ask.ts';

/** As the window sends them. */
const PIECE_BYTES = 3 * 1024 * 1024;
const ASK_EVERY_MS = 100;
/** Codecs that every window decodes. The command line has none to ask. */
const SHOWN_EVERYWHERE = ['avc', 'vp8', 'vp9', 'av1'];

export interface FilmOnDisk {
  readonly places: readonly string[];
  readonly fileName: string;
  readonly sizeBytes: number;
  readonly modifiedAtMs: number;
  readonly pictures: number | null;
}

/** @throws DomainError 'not-found', or as sequenceOf. `named`: a film, a folder of numbered pictures, or the pictures */
export function filmOnDisk(named: readonly string[]): FilmOnDisk {
  const files = named.flatMap((name) => {
    const found = fs.statSync(name, { throwIfNoEntry: false });
    if (found === undefined) throw new DomainError('not-found', `There is no file ${name}.`);
    return found.isDirectory() ? fs.readdirSync(name).map((inside) => path.join(name, inside)) : [name];
  });
  const { inOrder, fileName, pictures } = sequenceOf(files.map((place) => ({ place, name: path.basename(place) })));
  const stats = inOrder.map(({ place }) => fs.statSync(place));
  return {
    places: inOrder.map(({ place }) => place),
    fileName,
    sizeBytes: stats.reduce((sum, { size }) => sum + size, 0),
    modifiedAtMs: Math.trunc(Math.max(...stats.map(({ mtimeMs }) => mtimeMs))),
    pictures,
  };
}

type FilmFacts = Answer<'media.facts'>['facts'];

export interface FilmBrought {
  readonly sha256: string;
  readonly proxySha256: string | null;
  /** Null where the container can only be read by way of the copy. */
  readonly facts: FilmFacts;
  /** What a person should know of this film. */
  readonly words: readonly string[];
}

/**
 * Brings a film into a trial as the window does: sent in pieces, looked at, with a copy where one is needed or
 * asked for. Goes on where an earlier call was ended.
 * @throws DomainError; nothing is kept then
 */
export async function bringFilm(
  service: Service,
  trial: { readonly caseId: string; readonly trialId: string },
  film: FilmOnDisk,
  { wantsCopy, onWords }: { readonly wantsCopy: boolean; readonly onWords: (words: string) => void },
): Promise<FilmBrought> {
  const { places, ...named } = film;
  const { fileName, sizeBytes } = named;
  const [first = ''] = places;
  if (sizeBytes === 0) throw new DomainError('input-malformed', `${fileName} is empty.`);
  // What is no film at all need not be sent to be refused.
  filmType(headOf(first), fileName);

  const { uploadId, receivedBytes } = await ask(service, 'media.begin', { ...trial, ...named });
  try {
    let offsetBytes = receivedBytes;
    for await (const bytes of bytesFrom(places, receivedBytes)) {
      onWords(`Bringing in ${fileName}: ${Math.round((100 * offsetBytes) / sizeBytes)} %.`);
      await ask(service, 'media.append', { uploadId, offsetBytes, base64: bytes.toString('base64') });
      offsetBytes += bytes.length;
    }
    const { facts } = await ask(service, 'media.facts', { uploadId });
    const isShownEverywhere = facts !== null && SHOWN_EVERYWHERE.includes(facts.codec);
    const isSlow = (facts?.longestGroup ?? 0) > MOST_GROUP;
    const isNeeded = !isShownEverywhere && facts?.codec !== 'hevc';
    const makesCopy = isNeeded || wantsCopy || ((isSlow || !isShownEverywhere) && findFfmpeg() !== null);
    if (makesCopy) await copied(service, uploadId, fileName, onWords);
    const { sha256, proxySha256 } = await ask(service, 'media.finish', { uploadId });
    return { sha256, proxySha256, facts, words: wordsAbout(fileName, facts, proxySha256 !== null) };
  } catch (thrown) {
    await ask(service, 'media.cancel', { uploadId });
    throw thrown;
  }
}

async function copied(
  service: Service,
  uploadId: string,
  fileName: string,
  onWords: (words: string) => void,
): Promise<void> {
  await ask(service, 'media.startProxy', { uploadId });
  for (let last = ''; ; await wait(ASK_EVERY_MS)) {
    const { state, donePictures, promisedPictures, words } = await ask(service, 'media.proxyState', { uploadId });
    if (state === 'failed') throw new DomainError('input-malformed', `${fileName}: ${words}`);
    if (state === 'done') return;
    const said = `Making a copy that can be shown: ${donePictures}${promisedPictures === null ? '' : ` of ${promisedPictures}`} pictures.`;
    if (said !== last) onWords(said);
    last = said;
  }
}

function wordsAbout(fileName: string, facts: FilmFacts, hasCopy: boolean): string[] {
  if (facts === null) return [];
  const { readablePictures, promisedPictures, codec, longestGroup, isUneven } = facts;
  return [
    ...(readablePictures < promisedPictures
      ? [`${fileName} was cut off: ${readablePictures} of its ${promisedPictures} pictures can be read.`]
      : []),
    ...(isUneven
      ? ['Its pictures are unevenly spaced; the time of each is kept and used for all that is measured.']
      : []),
    ...(codec === 'hevc' && !hasCopy
      ? [
          'This film is in HEVC, which not every window shows. With ffmpeg installed, a copy that every one shows is made.',
        ]
      : []),
    ...(longestGroup > MOST_GROUP && !hasCopy
      ? [
          `Up to ${longestGroup} pictures hang together in this film, so stepping back is slow. With ffmpeg installed, a copy that steps quickly is made.`,
        ]
      : []),
  ];
}

function headOf(place: string): Uint8Array {
  const file = fs.openSync(place, 'r');
  try {
    const head = Buffer.alloc(HEAD_BYTES);
    return head.subarray(0, fs.readSync(file, head, 0, HEAD_BYTES, 0));
  } finally {
    fs.closeSync(file);
  }
}

/** The bytes of files one after the other, from an offset in the whole on. */
async function* bytesFrom(places: readonly string[], from: number): AsyncGenerator<Buffer> {
  let skip = from;
  for (const place of places) {
    const { size } = fs.statSync(place);
    if (skip >= size) {
      skip -= size;
      continue;
    }
    yield* fs.createReadStream(place, { start: skip, highWaterMark: PIECE_BYTES }) as AsyncIterable<Buffer>;
    skip = 0;
  }
}
