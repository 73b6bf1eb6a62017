import { DomainError } from '../../shared/errors.ts';

/** Top-level boxes an MP4 or MOV may begin with. */
const BOXES = ['ftyp', 'moov', 'mdat', 'wide', 'free', 'skip'];

/**
 * What kind of film a file is, by its first bytes; its name proves nothing.
 * @returns the media type
 * @throws DomainError 'input-malformed' for anything else
 * @source ISO/IEC 14496-12 (box: 4 bytes of size, 4 of type); RFC 8794, section 11.2.1 (EBML header 1A 45 DF A3)
 */
export function filmType(head: Uint8Array, fileName: string): string {
  const box = String.fromCharCode(...head.subarray(4, 8));
  if (BOXES.includes(box))
    return String.fromCharCode(...head.subarray(8, 10)) === 'qt' ? 'video/quicktime' : 'video/mp4';
  if ([0x1a, 0x45, 0xdf, 0xa3].every((byte, i) => head[i] === byte)) {
    return /\.webm$/i.test(fileName) ? 'video/webm' : 'video/matroska';
  }
  throw new DomainError('input-malformed', `${fileName} is not a film that can be read here (MP4, MOV, MKV or WebM).`);
}
