import { DomainError } from '../../../shared/errors.ts';
import { BYTE_ORDERS, type ByteOrder, type C3dNumbers, c3dNumbers } from './c3dNumbers.ts';
import { type C3dParameters, c3dParameters } from './c3dParameters.ts';

export interface C3dFile {
  readonly byteOrder: ByteOrder;
  readonly storedAs: 'integer' | 'real';
  readonly firstFrame: number;
  readonly frames: number;
  readonly pointRateHz: number;
  /** Of the points, as the file names it; empty where it does not. */
  readonly units: string;
  readonly pointLabels: readonly string[];
  /** Place of a point in a frame, both from 0, in the file's unit; null where the file says that it was not seen. */
  readonly point: (frame: number, point: number) => readonly [number, number, number] | null;
  readonly analogLabels: readonly string[];
  readonly analogUnits: readonly string[];
  readonly samplesPerFrame: number;
  readonly analogRateHz: number;
  /** All samples of each channel, scaled as the file says. */
  readonly analog: readonly Float64Array[];
  readonly events: readonly { readonly label: string; readonly timeS: number }[];
  readonly parameters: C3dParameters;
  readonly warnings: readonly string[];
}

const BLOCK = 512;
const MARK = 0x50;
const EVENT_KEY = 12345;
const MOST_HEADER_EVENTS = 18;

/** Whether bytes begin as a C3D file does. */
export function isC3d(bytes: Uint8Array): boolean {
  return bytes.length >= BLOCK && bytes[1] === MARK && (bytes[0] ?? 0) > 0;
}

/**
 * Reads a C3D file: points, analog channels, events and every parameter. All three byte orders, integer and real data,
 * signed and unsigned samples. Nothing is filtered or filled in; a point that the file calls invalid is null.
 *
 * @throws DomainError 'input-malformed' for a file that is no C3D, or is cut off or damaged; 'input-out-of-range' for a
 *   rate that is none
 * @source the public description of the C3D format, c3d.org: header, parameters, 3D point and analog data
 */
export function readC3d(bytes: Uint8Array): C3dFile {
  if (!isC3d(bytes)) {
    throw new DomainError('input-malformed', 'readC3d needs a C3D file; this one does not begin as one.');
  }
  const start = ((bytes[0] as number) - 1) * BLOCK;
  const code = bytes[start + 3] ?? 0;
  const byteOrder = BYTE_ORDERS[code as keyof typeof BYTE_ORDERS] as ByteOrder | undefined;
  if (byteOrder === undefined) {
    throw new DomainError(
      'input-malformed',
      `readC3d needs the byte order 84 (Intel), 85 (DEC) or 86 (MIPS) at the head of the parameters, got ${code}.`,
      `byte ${start + 3}`,
    );
  }
  const file = c3dNumbers(bytes, byteOrder);
  const parameters = c3dParameters(file, start);
  const numbers = (name: string) => parameters.get(name)?.numbers ?? [];
  const texts = (name: string) => parameters.get(name)?.texts ?? [];

  const points = file.word(2);
  const perFrame = file.word(4);
  const samplesPerFrame = perFrame === 0 ? 0 : file.word(18);
  const channels = samplesPerFrame === 0 ? 0 : Math.floor(perFrame / samplesPerFrame);
  const scale = numbers('POINT:SCALE')[0] ?? file.real(12);
  const storedAs = scale < 0 ? 'real' : 'integer';
  const firstFrame = longFrame(numbers('TRIAL:ACTUAL_START_FIELD')) ?? file.word(6);
  const lastFrame = longFrame(numbers('TRIAL:ACTUAL_END_FIELD')) ?? file.word(8);
  const frames = Math.max(0, lastFrame - firstFrame + 1);
  const pointRateHz = numbers('POINT:RATE')[0] ?? file.real(20);
  if (!(Number.isFinite(pointRateHz) && pointRateHz > 0 && pointRateHz <= 100_000)) {
    throw new DomainError(
      'input-out-of-range',
      `readC3d needs a rate of frames above 0 Hz, got ${pointRateHz}.`,
      'POINT:RATE',
    );
  }
  const size = storedAs === 'real' ? 4 : 2;
  const data = (file.word(16) - 1) * BLOCK;
  const frameBytes = (points * 4 + channels * samplesPerFrame) * size;
  if (frames > 0 && frameBytes > 0) file.byte(data + frames * frameBytes - 1);

  const read = storedAs === 'real' ? file.real : file.signedWord;
  const unit = storedAs === 'real' ? 1 : Math.abs(scale);
  const analog = readAnalog(file, {
    channels,
    samplesPerFrame,
    frames,
    firstByte: data + points * 4 * size,
    frameBytes,
    size,
    read: storedAs === 'integer' && texts('ANALOG:FORMAT')[0]?.toUpperCase() === 'UNSIGNED' ? file.word : read,
    scales: numbers('ANALOG:SCALE').map((one) => one * (numbers('ANALOG:GEN_SCALE')[0] ?? 1)),
    offsets: numbers('ANALOG:OFFSET'),
  });
  return {
    byteOrder,
    storedAs,
    firstFrame,
    frames,
    pointRateHz,
    units: texts('POINT:UNITS')[0] ?? '',
    pointLabels: named(parameters, 'POINT:LABELS', points, 'point'),
    point: (frame, point) => {
      if (!(frame >= 0 && frame < frames && point >= 0 && point < points)) return null;
      const at = data + frame * frameBytes + point * 4 * size;
      if (!(read(at + 3 * size) >= 0)) return null;
      const xyz = [read(at) * unit, read(at + size) * unit, read(at + 2 * size) * unit] as const;
      return xyz.every(Number.isFinite) ? xyz : null;
    },
    analogLabels: named(parameters, 'ANALOG:LABELS', channels, 'channel'),
    analogUnits: Array.from({ length: channels }, (_, i) => all(parameters, 'ANALOG:UNITS')[i] ?? ''),
    samplesPerFrame,
    analogRateHz: pointRateHz * samplesPerFrame,
    analog,
    events: headerEvents(file),
    parameters,
    warnings:
      scale === 0 && points > 0 ? ['The file gives the points a scale of nought: their places are not known.'] : [],
  };
}

/** A frame number in two words, low one first, for files of more frames than the header can count. */
function longFrame([low, high]: readonly number[]): number | null {
  return low === undefined || high === undefined ? null : (low & 0xffff) + (high & 0xffff) * 65_536;
}

/** Lists of more than 255 lines go on in `LABELS2`, `LABELS3` … */
function all(parameters: C3dParameters, name: string): readonly string[] {
  const lists: string[] = [];
  for (let i = 1; ; i++) {
    const next = parameters.get(i === 1 ? name : `${name}${i}`);
    if (next === undefined) return lists;
    lists.push(...next.texts);
  }
}

function named(parameters: C3dParameters, name: string, count: number, otherwise: string): string[] {
  const labels = all(parameters, name);
  return Array.from({ length: count }, (_, i) => labels[i] || `${otherwise} ${i + 1}`);
}

interface AnalogLayout {
  readonly channels: number;
  readonly samplesPerFrame: number;
  readonly frames: number;
  readonly firstByte: number;
  readonly frameBytes: number;
  readonly size: number;
  readonly read: (at: number) => number;
  readonly scales: readonly number[];
  readonly offsets: readonly number[];
}

function readAnalog(file: C3dNumbers, layout: AnalogLayout): Float64Array[] {
  const { channels, samplesPerFrame, frames, firstByte, frameBytes, size, read, scales, offsets } = layout;
  // Offsets of unsigned samples are unsigned too, in a parameter that has no such type.
  const isUnsigned = read === file.word;
  return Array.from({ length: channels }, (_, channel) => {
    const offset = offsets[channel] ?? 0;
    const from = isUnsigned && offset < 0 ? offset + 65_536 : offset;
    const scale = scales[channel] ?? 1;
    return Float64Array.from({ length: frames * samplesPerFrame }, (__, sample) => {
      const frame = Math.floor(sample / samplesPerFrame);
      const at = firstByte + frame * frameBytes + ((sample % samplesPerFrame) * channels + channel) * size;
      return (read(at) - from) * scale;
    });
  });
}

function headerEvents(file: C3dNumbers): { label: string; timeS: number }[] {
  if (file.word(298) !== EVENT_KEY) return [];
  const count = Math.min(file.word(300), MOST_HEADER_EVENTS);
  return Array.from({ length: count }, (_, i) => ({
    label: file.text(396 + i * 4, 4).trim(),
    timeS: file.real(304 + i * 4),
  })).filter(({ timeS }) => Number.isFinite(timeS));
}
