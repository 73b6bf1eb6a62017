import { DomainError, toFailure } from '../../shared/errors.ts';
import { type FilmType, filmType, NEEDS_PROXY } from '../../shared/film/filmType.ts';
import { paceOf } from '../../shared/film/paceOf.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { MovementTrial } from '../../shared/model/trial.ts';
import { requireFfmpeg } from '../media/ffmpeg.ts';
import { type FilmFacts, filmFacts } from '../media/filmFacts.ts';
import { makeProxy } from '../media/makeProxy.ts';
import type { Incoming, Making } from '../media/mediaStore.ts';
import type { Context, Handlers } from './context.ts';
import { judged } from './judged.ts';

interface Upload {
  readonly caseId: string;
  readonly trialId: string;
  readonly fileName: string;
  readonly sizeBytes: number;
  readonly pictures: number | null;
  readonly identity: string;
  /** Known from the first piece on. */
  mediaType: FilmType | null;
  readonly incoming: Incoming;
  /** Read once, when first asked for. */
  facts: Promise<FilmFacts | null> | null;
  proxy: Proxy | null;
}

/** A copy on its way. */
interface Proxy {
  readonly making: Making;
  readonly stop: AbortController;
  state: 'working' | 'done' | 'failed';
  donePictures: number;
  promisedPictures: number | null;
  words: string;
  /** Never rejects. */
  over: Promise<void>;
}

/** Films on their way in, by their ids. One service has one context. */
const UPLOADS = new WeakMap<Context, Map<string, Upload>>();

type MediaChannel =
  | 'media.begin'
  | 'media.append'
  | 'media.facts'
  | 'media.startProxy'
  | 'media.proxyState'
  | 'media.finish'
  | 'media.cancel';

export const mediaHandlers: Handlers<MediaChannel> = {
  'media.begin': async (context, { caseId, trialId, fileName, sizeBytes, modifiedAtMs, pictures }) => {
    await trialOf(context, caseId, trialId);
    const uploads = UPLOADS.get(context) ?? new Map<string, Upload>();
    UPLOADS.set(context, uploads);
    const identity = JSON.stringify([fileName, sizeBytes, modifiedAtMs, pictures]);
    // A window that was closed half way never says so. The same film goes on; any other makes way for this one.
    for (const [id, earlier] of uploads) {
      if (earlier.trialId === trialId) await (earlier.identity === identity ? leave : drop)(context, id);
    }
    const uploadId = context.newId();
    const incoming = await context.media.receive(caseId, trialId, identity);
    await context.media.forget(caseId, trialId, incoming);
    if (incoming.receivedBytes > sizeBytes) {
      await incoming.discard();
      throw new DomainError('conflict', `More of ${fileName} had arrived than there is of it. Bring it in again.`);
    }
    const mediaType = incoming.receivedBytes === 0 ? null : filmType(await incoming.head(), fileName);
    const upload = {
      caseId,
      trialId,
      fileName,
      sizeBytes,
      pictures,
      identity,
      mediaType,
      incoming,
      facts: null,
      proxy: null,
    };
    uploads.set(uploadId, upload);
    return { uploadId, receivedBytes: incoming.receivedBytes };
  },
  'media.append': async (context, { uploadId, offsetBytes, base64 }) => {
    const upload = uploadOf(context, uploadId);
    const bytes = Buffer.from(base64, 'base64');
    try {
      const { receivedBytes } = upload.incoming;
      if (offsetBytes !== receivedBytes || receivedBytes + bytes.length > upload.sizeBytes) {
        throw new DomainError(
          'conflict',
          `The film ${upload.fileName} did not arrive in one order. Bring it in again.`,
        );
      }
      upload.mediaType ??= filmType(bytes, upload.fileName);
      await upload.incoming.append(bytes);
    } catch (thrown) {
      await drop(context, uploadId);
      throw thrown;
    }
    return { receivedBytes: upload.incoming.receivedBytes };
  },
  'media.facts': async (context, { uploadId }) => {
    const upload = uploadOf(context, uploadId);
    try {
      if (NEEDS_PROXY.has(arrived(upload))) return { facts: null };
      const facts = await factsOf(upload);
      if (facts === null) {
        throw new DomainError(
          'input-malformed',
          `${upload.fileName} holds no pictures that can be read: it is sound only, damaged, or was cut off before its index.`,
        );
      }
      const { codec, times, promised, longestGroup } = facts;
      const isUneven = paceOf(times).frameTimesS !== null;
      return { facts: { codec, readablePictures: times.length, promisedPictures: promised, longestGroup, isUneven } };
    } catch (thrown) {
      await drop(context, uploadId);
      throw thrown;
    }
  },
  'media.startProxy': async (context, { uploadId }) => {
    const upload = uploadOf(context, uploadId);
    const type = arrived(upload);
    const ffmpeg = requireFfmpeg(upload.fileName);
    await stopProxy(upload);
    const proxy: Proxy = {
      making: context.media.make(),
      stop: new AbortController(),
      state: 'working',
      donePictures: 0,
      promisedPictures: upload.pictures,
      words: '',
      over: Promise.resolve(),
    };
    upload.proxy = proxy;
    proxy.over = makeCopy(ffmpeg, upload, type, proxy);
    return {};
  },
  'media.proxyState': async (context, { uploadId }) => {
    const { proxy } = uploadOf(context, uploadId);
    if (proxy === null) throw new DomainError('not-found', 'No copy of this film is being made.');
    const { state, donePictures, promisedPictures, words } = proxy;
    return { state, donePictures, promisedPictures, words };
  },
  'media.finish': async (context, { uploadId }) => {
    const upload = uploadOf(context, uploadId);
    const { caseId, trialId, fileName, sizeBytes, incoming, proxy } = upload;
    try {
      const mediaType = arrived(upload);
      if (proxy === null ? NEEDS_PROXY.has(mediaType) : proxy.state !== 'done') {
        const why = proxy === null ? '' : proxy.words;
        throw new DomainError('not-comparable', `${fileName} needs a copy that can be shown, and has none. ${why}`);
      }
      // Whoever did not ask for them: a film that cannot be listed would hold up every window that opens it.
      const facts = await factsOf(upload);
      await trialOf(context, caseId, trialId);
      // Of what only its copy can say, the copy's: it shows each picture at the film's own time.
      const shown = facts ?? (proxy === null ? null : await filmFacts(proxy.making.place));
      const { frameTimesS } = paceOf(shown?.times ?? []);
      const sha256 = await incoming.finish();
      const copy = (await proxy?.making.finish()) ?? null;
      UPLOADS.get(context)?.delete(uploadId);
      const film = { id: context.newId(), caseId, sha256, fileName, mediaType, sizeBytes, proxyOf: null };
      const made: Edit[] = [
        { op: 'create', kind: 'media', record: film },
        ...(copy === null ? [] : [copyRecord(context.newId(), film, copy)]),
        { op: 'patch', kind: 'movementTrial', id: trialId, fields: { clipSha256: sha256, frameTimesS } },
      ];
      const edits = await context.store.apply(caseId, made, context.now());
      await judged(context, caseId, made);
      return { sha256, proxySha256: copy?.sha256 ?? null, edits };
    } catch (thrown) {
      await drop(context, uploadId);
      throw thrown;
    }
  },
  'media.cancel': async (context, { uploadId }) => {
    await drop(context, uploadId);
    return {};
  },
};

/** At the end of the program: copies are given up, and what has arrived waits to be continued. */
export async function leaveFilms(context: Context): Promise<void> {
  for (const id of UPLOADS.get(context)?.keys() ?? []) await leave(context, id);
}

async function makeCopy(ffmpeg: string, upload: Upload, type: FilmType, proxy: Proxy): Promise<void> {
  const film = { place: upload.incoming.place, type, pictures: upload.pictures };
  const onPicture = (done: number) => {
    proxy.donePictures = done;
  };
  try {
    proxy.promisedPictures ??= (await factsOf(upload))?.promised ?? null;
    await makeProxy(ffmpeg, film, proxy.making.place, onPicture, proxy.stop.signal);
    proxy.state = 'done';
  } catch (thrown) {
    proxy.state = 'failed';
    proxy.words = toFailure(thrown).message;
    await proxy.making.discard().catch(() => undefined);
  }
}

function factsOf(upload: Upload): Promise<FilmFacts | null> {
  upload.facts ??= filmFacts(upload.incoming.place);
  return upload.facts;
}

function copyRecord(
  id: string,
  film: { readonly caseId: string; readonly sha256: string; readonly fileName: string },
  copy: { readonly sha256: string; readonly sizeBytes: number },
): Edit {
  const { caseId, sha256: proxyOf, fileName } = film;
  const name = `${fileName.slice(0, 280)}, shown.mp4`;
  return {
    op: 'create',
    kind: 'media',
    record: { id, caseId, ...copy, fileName: name, mediaType: 'video/mp4', proxyOf },
  };
}

/** @throws DomainError 'input-missing' while part of it is still to come */
function arrived({ mediaType, incoming, sizeBytes, fileName }: Upload): FilmType {
  if (mediaType !== null && incoming.receivedBytes === sizeBytes) return mediaType;
  throw new DomainError('input-missing', `Part of the film ${fileName} did not arrive. Bring it in again.`);
}

function uploadOf(context: Context, uploadId: string): Upload {
  const upload = UPLOADS.get(context)?.get(uploadId);
  if (upload === undefined) {
    throw new DomainError('not-found', 'This film is no longer on its way in. Choose it again.');
  }
  return upload;
}

async function stopProxy({ proxy }: Upload): Promise<void> {
  proxy?.stop.abort();
  await proxy?.over;
  await proxy?.making.discard();
}

async function drop(context: Context, uploadId: string): Promise<void> {
  const upload = await taken(context, uploadId);
  await upload?.incoming.discard();
}

async function leave(context: Context, uploadId: string): Promise<void> {
  const upload = await taken(context, uploadId);
  await upload?.incoming.leave();
}

async function taken(context: Context, uploadId: string): Promise<Upload | undefined> {
  const upload = UPLOADS.get(context)?.get(uploadId);
  UPLOADS.get(context)?.delete(uploadId);
  if (upload !== undefined) await stopProxy(upload);
  // Not every system takes away a file that is being read.
  await upload?.facts?.catch(() => undefined);
  return upload;
}

async function trialOf(context: Context, caseId: string, trialId: string): Promise<MovementTrial> {
  const trial = (await context.store.open(caseId)).movementTrials.find(({ id }) => id === trialId);
  if (trial === undefined)
    throw new DomainError('not-found', 'The trial of this film is not part of this case any more.');
  return trial;
}
