/**
 * Files in one archive, stored as they are. Without a clock: every entry has the first day that the format knows, so that
 * the same files give the same bytes.
 * @param files names in ASCII
 * @source APPNOTE of the ZIP format, 4.3
 */
export function storedZip(
  files: readonly { readonly name: string; readonly bytes: Uint8Array }[],
): Uint8Array<ArrayBuffer> {
  const parts: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let at = 0;
  for (const { name, bytes } of files) {
    const path = Uint8Array.from(name, (c) => c.charCodeAt(0));
    const about = [
      [20, 2],
      [0, 2],
      [0, 2],
      [0, 2],
      [FIRST_DAY, 2],
      [crc32(bytes), 4],
      [bytes.length, 4],
      [bytes.length, 4],
      [path.length, 2],
      [0, 2],
    ] as const;
    directory.push(numbers([[0x02014b50, 4], [20, 2], ...about, [0, 2], [0, 2], [0, 2], [0, 4], [at, 4]]), path);
    parts.push(numbers([[0x04034b50, 4], ...about]), path, bytes);
    at += 30 + path.length + bytes.length;
  }
  const length = directory.reduce((sum, part) => sum + part.length, 0);
  const end = numbers([
    [0x06054b50, 4],
    [0, 2],
    [0, 2],
    [files.length, 2],
    [files.length, 2],
    [length, 4],
    [at, 4],
    [0, 2],
  ]);
  return joined([...parts, ...directory, end]);
}

/** 1 January 1980. */
const FIRST_DAY = (1 << 5) | 1;

/** Whole numbers, each in so many bytes, the least first. */
function numbers(list: readonly (readonly [number, number])[]): Uint8Array {
  return Uint8Array.from(
    list.flatMap(([value, size]) => Array.from({ length: size }, (_, i) => (value >>> (8 * i)) & 0xff)),
  );
}

/** The check of ISO 3309, polynomial 0xedb88320 in reverse. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}
