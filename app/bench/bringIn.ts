import { DomainError, type Result } from '../../shared/errors.ts';
import type { MovementTrial } from '../../shared/model/trial.ts';
import { filmDoor } from '../api.ts';
import { base64Of } from '../parts/base64Of.ts';
import { openFilm } from './film.ts';

/** Three bytes become four characters of a request; the contract takes 8 million of those. */
const PIECE_BYTES = 3 * 1024 * 1024;

/**
 * Looks whether a film can be used here, and only then sends it to the store, piece by piece.
 * @throws DomainError saying what is wrong with the film, or 'cancelled'; nothing is kept then
 */
export async function bringIn(
  file: File,
  trial: Pick<MovementTrial, 'id' | 'caseId'>,
  { onWords, signal }: { onWords: (words: string) => void; signal: AbortSignal },
): Promise<void> {
  const film = await openFilm(file, file.name);
  film.close();
  const { uploadId } = valueOf(
    await filmDoor.begin({ caseId: trial.caseId, trialId: trial.id, fileName: file.name, sizeBytes: file.size }),
  );
  try {
    for (let offsetBytes = 0; offsetBytes < file.size; offsetBytes += PIECE_BYTES) {
      if (signal.aborted) throw new DomainError('cancelled', 'Stopped as asked.');
      onWords(`Bringing in ${file.name}: ${megabytes(offsetBytes)} of ${megabytes(file.size)} MB.`);
      const base64 = await base64Of(file.slice(offsetBytes, offsetBytes + PIECE_BYTES));
      valueOf(await filmDoor.append({ uploadId, offsetBytes, base64 }));
    }
    onWords(`Keeping ${file.name}…`);
    valueOf(await filmDoor.finish({ uploadId }));
  } catch (thrown) {
    await filmDoor.cancel({ uploadId });
    throw thrown;
  }
}

function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new DomainError(result.error.code, result.error.message, result.error.path);
  return result.value;
}

function megabytes(bytes: number): string {
  return (bytes / 1e6).toFixed(1);
}
