import { DomainError, type Result } from '../../shared/errors.ts';
import { filmType, HEAD_BYTES, NEEDS_PROXY } from '../../shared/film/filmType.ts';
import { MOST_GROUP } from '../../shared/film/readablePictures.ts';
import { sequenceOf } from '../../shared/film/sequenceOf.ts';
import type { MovementTrial } from '../../shared/model/trial.ts';
import { filmDoor } from '../api.ts';
import { base64Of } from '../parts/base64Of.ts';
import { openFilm } from './film.ts';

/** Three bytes become four characters of a request; the contract takes 8 million of those. */
const PIECE_BYTES = 3 * 1024 * 1024;

/** How often a copy on its way is asked how far it is, ms. */
const ASK_EVERY_MS = 300;

interface Way {
  readonly onWords: (words: string) => void;
  readonly signal: AbortSignal;
}

/**
 * Sends a film to the store, piece by piece; goes on where it stopped if its beginning came before. The store looks at it
 * before the window does: some damage sends a reader in circles, which would end the window. What the window cannot show, or steps through slowly, gets a copy that it can.
 * @param files a film, or the numbered pictures of a sequence
 * @throws DomainError saying what is wrong with the film, or 'cancelled'; nothing is kept then
 */
export async function bringIn(
  files: readonly File[],
  trial: Pick<MovementTrial, 'id' | 'caseId'>,
  way: Way,
): Promise<void> {
  const { blob, ...named } = oneOf(files);
  const { fileName, sizeBytes } = named;
  // What is no film at all need not be sent to be refused.
  const type = filmType(new Uint8Array(await blob.slice(0, HEAD_BYTES).arrayBuffer()), fileName);
  const { uploadId, receivedBytes } = valueOf(
    await filmDoor.begin({ caseId: trial.caseId, trialId: trial.id, ...named }),
  );
  try {
    for (let offsetBytes = receivedBytes; offsetBytes < sizeBytes; offsetBytes += PIECE_BYTES) {
      refuseIfStopped(way.signal);
      way.onWords(`Bringing in ${fileName}: ${megabytes(offsetBytes)} of ${megabytes(sizeBytes)} MB.`);
      const base64 = await base64Of(blob.slice(offsetBytes, offsetBytes + PIECE_BYTES));
      valueOf(await filmDoor.append({ uploadId, offsetBytes, base64 }));
    }
    way.onWords(`Looking at ${fileName}…`);
    valueOf(await filmDoor.facts({ uploadId }));
    refuseIfStopped(way.signal);
    const copy = NEEDS_PROXY.has(type) ? 'needed' : await copyFor(blob, fileName);
    if (copy !== 'none') await makeCopy(uploadId, fileName, copy, way);
    way.onWords(`Keeping ${fileName}…`);
    valueOf(await filmDoor.finish({ uploadId }));
  } catch (thrown) {
    await filmDoor.cancel({ uploadId });
    throw thrown;
  }
}

/** Pictures of a sequence, one after the other, count as one file. */
function oneOf(files: readonly File[]) {
  const { inOrder, fileName, pictures } = sequenceOf(files);
  const blob = inOrder.length === 1 ? (inOrder[0] ?? new Blob()) : new Blob([...inOrder]);
  const modifiedAtMs = Math.max(...inOrder.map(({ lastModified }) => lastModified));
  return { blob, fileName, sizeBytes: blob.size, modifiedAtMs, pictures };
}

/** Whether the film must have a copy to be shown, would be the better for one, or needs none. */
async function copyFor(blob: Blob, name: string): Promise<'none' | 'helpful' | 'needed'> {
  try {
    const film = await openFilm(blob, name);
    film.close();
    return film.longestGroup > MOST_GROUP ? 'helpful' : 'none';
  } catch (thrown) {
    if (thrown instanceof DomainError && thrown.code === 'not-comparable') return 'needed';
    throw thrown;
  }
}

async function makeCopy(uploadId: string, name: string, copy: 'helpful' | 'needed', way: Way): Promise<void> {
  const started = await filmDoor.startProxy({ uploadId });
  // Without ffmpeg a film that can be shown is kept as it is; it only steps back more slowly.
  if (!started.ok && copy === 'helpful') return;
  valueOf(started);
  for (;;) {
    refuseIfStopped(way.signal);
    const { state, donePictures, promisedPictures, words } = valueOf(await filmDoor.proxyState({ uploadId }));
    if (state === 'failed') throw new DomainError('input-malformed', `${name}: ${words}`);
    if (state === 'done') return;
    const of = promisedPictures === null ? '' : ` of ${promisedPictures}`;
    const why = copy === 'needed' ? 'that can be shown here' : 'that steps quickly';
    way.onWords(`Making a copy ${why}: ${donePictures}${of} pictures.`);
    await new Promise((resolve) => {
      setTimeout(resolve, ASK_EVERY_MS);
    });
  }
}

function refuseIfStopped(signal: AbortSignal): void {
  if (signal.aborted) throw new DomainError('cancelled', 'Stopped as asked.');
}

function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new DomainError(result.error.code, result.error.message, result.error.path);
  return result.value;
}

function megabytes(bytes: number): string {
  return (bytes / 1e6).toFixed(1);
}
