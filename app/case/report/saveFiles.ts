import { storedZip } from '../../../shared/exchange/storedZip.ts';

interface NamedFile {
  readonly name: string;
  readonly mediaType: string;
  readonly base64: string;
}

/** Offers files to be saved: one as it is, several in one archive named after the first. */
export function saveFiles(files: readonly NamedFile[]): void {
  const [first, ...others] = files.map(({ base64, ...file }) => ({ ...file, bytes: bytesOf(base64) }));
  if (first === undefined) return;
  if (others.length === 0) return save(first.name, first.mediaType, first.bytes);
  save(first.name.replace(/\.\w+$/, '.zip'), 'application/zip', storedZip([first, ...others]));
}

function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
}

function save(name: string, type: string, bytes: Uint8Array<ArrayBuffer>): void {
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has begun to read it by then.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
