import { DomainError } from '../../shared/errors.ts';
import type { Handlers } from './context.ts';
import { judged } from './judged.ts';
import { keepFile } from './keepFile.ts';

export const stillHandlers: Handlers<'still.keep' | 'export.keep'> = {
  'still.keep': async (context, { caseId, png, ...said }) => {
    const { movementTrials } = await context.store.open(caseId);
    if (!movementTrials.some(({ id }) => id === said.trialId))
      throw new DomainError('not-found', 'The trial of this still is not part of this case any more.');
    const stillId = context.newId();
    const file = { fileName: `still-${stillId.slice(-12)}.png`, mediaType: 'image/png', bytes: pngBytes(png) };
    const kept = await keepFile(context, caseId, file);
    const record = { id: stillId, ...said, mediaSha: kept.sha256 };
    const made = [kept.edit, { op: 'create', kind: 'still', record }] as const;
    const edits = await context.store.apply(caseId, made, context.now());
    await judged(context, caseId, made);
    return { stillId, edits };
  },
  'export.keep': async (context, { caseId, fileName, file }) => {
    const { media } = await context.store.open(caseId);
    const name = fileName.replaceAll(/[^\w.-]+/g, '-');
    const bytes = file.kind === 'png' ? pngBytes(file.base64) : new TextEncoder().encode(file.text);
    const mediaType = file.kind === 'png' ? 'image/png' : 'text/csv';
    const kept = await keepFile(context, caseId, { fileName: name, mediaType, bytes });
    // The same export twice is one file.
    const isKept = media.some(({ sha256, fileName: earlier }) => sha256 === kept.sha256 && earlier === name);
    const edits = isKept
      ? await context.store.editState(caseId)
      : await context.store.apply(caseId, [kept.edit], context.now());
    if (!isKept) await judged(context, caseId, [kept.edit]);
    return { href: `/files/${kept.sha256}/${name}`, edits };
  },
};

/**
 * @throws DomainError 'input-malformed' for anything that is no PNG
 * @source PNG specification, third edition (W3C 2025), 5.2: the signature
 */
function pngBytes(base64: string): Uint8Array {
  const bytes = Buffer.from(base64, 'base64');
  if (!bytes.subarray(0, 8).equals(PNG_SIGNATURE))
    throw new DomainError('input-malformed', 'The picture that was sent is no PNG; nothing was kept.', 'png');
  return bytes;
}

const PNG_SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
