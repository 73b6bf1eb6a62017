import { storedZip } from '../../../shared/exchange/storedZip.ts';
import { saveBlob } from '../../parts/saveBlob.ts';

interface NamedFile {
  readonly name: string;
  readonly mediaType: string;
  readonly base64: string;
}

/** Offers files to be saved: one as it is, several in one archive named after the first. */
export function saveFiles(files: readonly NamedFile[]): void {
  const [first, ...others] = files.map(({ base64, ...file }) => ({ ...file, bytes: bytesOf(base64) }));
  if (first === undefined) return;
  if (others.length === 0) return saveBlob(first.name, new Blob([first.bytes], { type: first.mediaType }));
  const zip = new Blob([storedZip([first, ...others])], { type: 'application/zip' });
  saveBlob(first.name.replace(/\.\w+$/, '.zip'), zip);
}

function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
}
