import { DomainError } from '../../../shared/errors.ts';

/** Whose machine the numbers of a file were written on, by the code at the head of its parameters. */
export const BYTE_ORDERS = { 84: 'intel', 85: 'dec', 86: 'mips' } as const;
export type ByteOrder = (typeof BYTE_ORDERS)[keyof typeof BYTE_ORDERS];

/** Numbers of a C3D file by their place in it. A place outside of the file is refused, whoever points there. */
export interface C3dNumbers {
  readonly length: number;
  readonly byte: (at: number) => number;
  readonly signedByte: (at: number) => number;
  readonly word: (at: number) => number;
  readonly signedWord: (at: number) => number;
  readonly real: (at: number) => number;
  readonly text: (at: number, length: number) => string;
}

/**
 * @throws DomainError 'input-malformed' from each of its functions for a place outside of the file
 * @source the public description of the C3D format, c3d.org: Intel and DEC put the low byte first, MIPS the high byte;
 *   a DEC real has its two words swapped and an exponent two higher than IEEE 754 has
 */
export function c3dNumbers(bytes: Uint8Array, order: ByteOrder): C3dNumbers {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isLow = order !== 'mips';
  const within = (at: number, size: number): number => {
    if (Number.isInteger(at) && at >= 0 && at + size <= bytes.length) return at;
    throw new DomainError(
      'input-malformed',
      `readC3d needs ${at + size} bytes by what the file announces, got ${bytes.length}; it is cut off or damaged.`,
      `byte ${at}`,
    );
  };
  const decReal = (at: number): number => {
    const first = view.getUint16(at, true);
    const exponent = (first >> 7) & 0xff;
    if (exponent === 0) return 0;
    const fraction = 1 + (((first & 0x7f) << 16) | view.getUint16(at + 2, true)) / 0x800000;
    return (first & 0x8000 ? -1 : 1) * fraction * 2 ** (exponent - 129);
  };
  return {
    length: bytes.length,
    byte: (at) => view.getUint8(within(at, 1)),
    signedByte: (at) => view.getInt8(within(at, 1)),
    word: (at) => view.getUint16(within(at, 2), isLow),
    signedWord: (at) => view.getInt16(within(at, 2), isLow),
    real: (at) => (order === 'dec' ? decReal(within(at, 4)) : view.getFloat32(within(at, 4), isLow)),
    text: (at, length) => {
      within(at, length);
      return Array.from(bytes.subarray(at, at + length), (code) => String.fromCharCode(code)).join('');
    },
  };
}
