/** Signatures of a local and a central entry of an archive (APPNOTE of the ZIP format, 4.3.7 and 4.3.12). */
const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;

/**
 * The same archive with one date on every entry, in UTC, so that the same content gives the same bytes. Archives without
 * 64-bit extensions only, which documents never need.
 */
export function setZipDates(archive: Uint8Array, instant: string): Uint8Array {
  const bytes = archive.slice();
  const view = new DataView(bytes.buffer);
  const at = new Date(instant);
  const time = (at.getUTCHours() << 11) | (at.getUTCMinutes() << 5) | (at.getUTCSeconds() >> 1);
  const date = (Math.max(0, at.getUTCFullYear() - 1980) << 9) | ((at.getUTCMonth() + 1) << 5) | at.getUTCDate();
  const stamp = (offset: number) => {
    view.setUint16(offset, time, true);
    view.setUint16(offset + 2, date, true);
  };
  let end = bytes.length - 22;
  while (view.getUint32(end, true) !== END) end -= 1;
  let offset = view.getUint32(end + 16, true);
  while (view.getUint32(offset, true) === CENTRAL) {
    stamp(offset + 12);
    const local = view.getUint32(offset + 42, true);
    if (view.getUint32(local, true) === LOCAL) stamp(local + 10);
    const [name, extra, comment] = [28, 30, 32].map((field) => view.getUint16(offset + field, true));
    offset += 46 + (name ?? 0) + (extra ?? 0) + (comment ?? 0);
  }
  return bytes;
}
