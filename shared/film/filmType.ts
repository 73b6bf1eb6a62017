import { DomainError } from '../errors.ts';

/** Top-level boxes an MP4 or MOV may begin with. */
const BOXES = ['ftyp', 'moov', 'mdat', 'wide', 'free', 'skip'];
/** Enough of a file to tell what kind of film it is. */
export const HEAD_BYTES = 512;
/** One packet of a transport stream, bytes. */
const PACKET = 188;

export const FILM_TYPES = [
  'video/mp4',
  'video/quicktime',
  'video/matroska',
  'video/webm',
  'video/x-msvideo',
  'video/mp2t',
  'image/png',
  'image/jpeg',
] as const;
export type FilmType = (typeof FILM_TYPES)[number];

/** Kinds that no window shows as they are: each needs a copy of its pictures that can be shown. */
export const NEEDS_PROXY: ReadonlySet<FilmType> = new Set<FilmType>(['video/x-msvideo', 'image/png', 'image/jpeg']);

/**
 * What kind of film a file is, by its first bytes; its name proves nothing. Pictures one after the other count as a
 * film, of pictures without times.
 * @returns the media type
 * @throws DomainError 'input-malformed' for anything else
 * @source ISO/IEC 14496-12 (box: 4 bytes of size, 4 of type); RFC 8794, section 11.2.1 (EBML header 1A 45 DF A3);
 *   RIFF with form type AVI; ISO/IEC 13818-1 (47 every 188 bytes); PNG and JPEG signatures
 */
export function filmType(head: Uint8Array, fileName: string): FilmType {
  const ascii = (from: number, to: number) => String.fromCharCode(...head.subarray(from, to));
  const begins = (...bytes: readonly number[]) => bytes.every((byte, i) => head[i] === byte);
  if (BOXES.includes(ascii(4, 8))) return ascii(8, 10) === 'qt' ? 'video/quicktime' : 'video/mp4';
  if (begins(0x1a, 0x45, 0xdf, 0xa3)) return /\.webm$/i.test(fileName) ? 'video/webm' : 'video/matroska';
  if (ascii(0, 4) === 'RIFF' && ascii(8, 12) === 'AVI ') return 'video/x-msvideo';
  if (begins(0x47) && head[PACKET] === 0x47 && head[2 * PACKET] === 0x47) return 'video/mp2t';
  if (begins(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return 'image/png';
  if (begins(0xff, 0xd8, 0xff)) return 'image/jpeg';
  throw new DomainError(
    'input-malformed',
    `${fileName} is not a film that can be read here (MP4, MOV, MKV, WebM, AVI, MPEG-TS, or pictures as PNG or JPEG).`,
  );
}
