import fs from 'node:fs/promises';
import path from 'node:path';
import { Worker } from 'node:worker_threads';
import { DomainError } from '../../shared/errors.ts';
import type { ReadablePictures } from '../../shared/film/readablePictures.ts';

export interface FilmFacts extends ReadablePictures {
  /** `avc`, `hevc`; as the file names it where that is not a known one. */
  readonly codec: string;
}

/** A sound film is listed in much less, even where every byte of it must be passed: conventions. */
const MOST_MS = 6000;
const BYTES_PER_MORE_MS = 50_000;
const MOST_MEMORY_MB = 1024;

/** Beside this file, with its ending: TypeScript from source, JavaScript in the bundle. */
const READER = new URL(`./filmReader${path.extname(import.meta.filename)}`, import.meta.url);

/**
 * What a film file says of itself and which of its pictures are there, without decoding any; null for a file that has
 * no pictures, or whose container is not one that can be read without ffmpeg.
 * @throws DomainError 'input-malformed' for one so damaged that reading it comes to no end
 */
export async function filmFacts(file: string): Promise<FilmFacts | null> {
  const { size } = await fs.stat(file);
  const worker = new Worker(READER, {
    workerData: file,
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB },
  });
  const mostMs = MOST_MS + size / BYTES_PER_MORE_MS;
  let watch: NodeJS.Timeout | undefined;
  try {
    return await new Promise<FilmFacts | null>((resolve, reject) => {
      watch = setTimeout(() => reject(endless()), mostMs);
      worker.once('message', resolve);
      worker.once('error', (thrown: NodeJS.ErrnoException) =>
        reject(thrown.code === 'ERR_WORKER_OUT_OF_MEMORY' ? endless() : thrown),
      );
    });
  } finally {
    clearTimeout(watch);
    await worker.terminate();
  }
}

function endless(): DomainError {
  return new DomainError(
    'input-malformed',
    'This film is damaged in a way that its pictures cannot be listed: reading it came to no end and was stopped. Save it again with the program it came from, then bring it in.',
  );
}
