import { DomainError } from '../../shared/errors.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { MovementTrial } from '../../shared/model/trial.ts';
import type { Incoming } from '../media/mediaStore.ts';
import type { Context, Handlers } from './context.ts';
import { filmType } from './filmType.ts';
import { judged } from './judged.ts';

interface Upload {
  readonly caseId: string;
  readonly trialId: string;
  readonly fileName: string;
  readonly sizeBytes: number;
  /** Known from the first piece on. */
  mediaType: string | null;
  readonly incoming: Incoming;
}

/** Films on their way in, by their ids. One service has one context. */
const UPLOADS = new WeakMap<Context, Map<string, Upload>>();

export const mediaHandlers: Handlers<'media.begin' | 'media.append' | 'media.finish' | 'media.cancel'> = {
  'media.begin': async (context, { caseId, trialId, fileName, sizeBytes }) => {
    await trialOf(context, caseId, trialId);
    const uploads = UPLOADS.get(context) ?? new Map<string, Upload>();
    UPLOADS.set(context, uploads);
    // A window that was closed half way never says so; its film makes way for the next one of that trial.
    for (const [id, earlier] of uploads) {
      if (earlier.trialId === trialId) await drop(context, id);
    }
    const uploadId = context.newId();
    const incoming = await context.media.receive();
    uploads.set(uploadId, { caseId, trialId, fileName, sizeBytes, mediaType: null, incoming });
    return { uploadId };
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
  'media.finish': async (context, { uploadId }) => {
    const { caseId, trialId, fileName, sizeBytes, mediaType, incoming } = uploadOf(context, uploadId);
    try {
      if (mediaType === null || incoming.receivedBytes !== sizeBytes) {
        throw new DomainError('input-missing', `Part of the film ${fileName} did not arrive. Bring it in again.`);
      }
      await trialOf(context, caseId, trialId);
      const sha256 = await incoming.finish();
      UPLOADS.get(context)?.delete(uploadId);
      const record = { id: context.newId(), caseId, sha256, fileName, mediaType, sizeBytes };
      const made: Edit[] = [
        { op: 'create', kind: 'media', record },
        { op: 'patch', kind: 'movementTrial', id: trialId, fields: { clipSha256: sha256 } },
      ];
      const edits = await context.store.apply(caseId, made, context.now());
      await judged(context, caseId, made);
      return { sha256, edits };
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

function uploadOf(context: Context, uploadId: string): Upload {
  const upload = UPLOADS.get(context)?.get(uploadId);
  if (upload === undefined) {
    throw new DomainError('not-found', 'This film is no longer on its way in. Choose it again.');
  }
  return upload;
}

async function drop(context: Context, uploadId: string): Promise<void> {
  const upload = UPLOADS.get(context)?.get(uploadId);
  UPLOADS.get(context)?.delete(uploadId);
  await upload?.incoming.discard();
}

async function trialOf(context: Context, caseId: string, trialId: string): Promise<MovementTrial> {
  const trial = (await context.store.open(caseId)).movementTrials.find(({ id }) => id === trialId);
  if (trial === undefined)
    throw new DomainError('not-found', 'The trial of this film is not part of this case any more.');
  return trial;
}
