import { DomainError } from '../../shared/errors.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { Evidence, ForceRecord } from '../../shared/report/evidence.ts';
import { readForceCsv } from '../exchange/forceCsv.ts';
import { thinTrace } from '../exchange/thinTrace.ts';
import type { MediaStore } from '../media/mediaStore.ts';

/** Reads what a report of a case draws from files: force records of its jumps and its stills. */
export async function loadEvidence(media: Pick<MediaStore, 'read'>, file: CaseFile): Promise<Evidence> {
  const traces: Record<string, ForceRecord> = {};
  for (const { id, force, mediaSha256 } of file.jumpTrials) {
    if (force === null || mediaSha256 === null) continue;
    const bytes = await readOrNull(media, mediaSha256);
    if (bytes === null) continue;
    const text = new TextDecoder().decode(bytes);
    const { plates, rateHz } = readForceCsv(text, { columns: force.columns, rateHz: force.rateHz });
    traces[id] = thinTrace(plates, rateHz);
  }
  const images: Record<string, Evidence['images'][string]> = {};
  for (const { mediaSha } of file.stills) {
    const read = await readOrNull(media, mediaSha);
    if (read === null || read.length < 24) continue;
    const bytes = Buffer.from(read);
    // Width and height stand at fixed places of the first chunk (ISO/IEC 15948, 11.2.2).
    const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
    images[mediaSha] = { dataUri: `data:image/png;base64,${bytes.toString('base64')}`, width, height };
  }
  return { traces, images };
}

/** A file that is gone or damaged is not drawn, and a report is made all the same; checking the store names it. */
async function readOrNull(media: Pick<MediaStore, 'read'>, sha256: string): Promise<Uint8Array | null> {
  try {
    return await media.read(sha256);
  } catch (thrown) {
    if (thrown instanceof DomainError && (thrown.code === 'not-found' || thrown.code === 'store-corrupt')) return null;
    throw thrown;
  }
}
