import type { Edit } from '../../shared/model/edit.ts';
import type { Context } from './context.ts';

/** Puts a file into the media store and gives the edit that makes it part of a case. */
export async function keepFile(
  { media, newId }: Context,
  caseId: string,
  file: { readonly fileName: string; readonly mediaType: string; readonly bytes: Uint8Array },
): Promise<{ readonly sha256: string; readonly edit: Edit }> {
  const sha256 = await media.put(file.bytes);
  const { fileName, mediaType } = file;
  return {
    sha256,
    edit: {
      op: 'create',
      kind: 'media',
      record: { id: newId(), caseId, sha256, fileName, mediaType, sizeBytes: file.bytes.length, proxyOf: null },
    },
  };
}
