import type { C3dFile } from './readC3d.ts';

export interface C3dPlate {
  readonly number: number;
  readonly type: number;
  /** Corners of the top, in the unit of the points. */
  readonly corners: readonly (readonly [number, number, number])[];
  readonly channels: readonly string[];
  /** Upward force of the plate on the athlete at each sample, N; null with the reason beside it. */
  readonly verticalN: Float64Array | null;
  readonly reason: string | null;
}

/**
 * The force plates of a C3D file with the vertical force each took. Types 1 (forces and centre of pressure), 2 (forces
 * and moments) and 4 (the same through a calibration matrix) have the vertical force in their third component; types 3
 * and 5 in four sensors under the corners, of which 5 has a matrix of six rows and eight columns. Another type is named
 * and left. A stretch that the file sets aside for the unloaded plate is taken off as its mean.
 *
 * Which way is up differs from file to file; a plate can be pressed and not pulled, so the sign is the one that makes
 * the mean force a load.
 *
 * @source the public description of the C3D format, c3d.org, FORCE_PLATFORM: TYPE, CHANNEL, CORNERS, CAL_MATRIX, ZERO
 */
export function c3dPlates(file: C3dFile): C3dPlate[] {
  const numbers = (name: string) => file.parameters.get(`FORCE_PLATFORM:${name}`)?.numbers ?? [];
  const used = Math.min(Math.max(numbers('USED')[0] ?? 0, 0), numbers('TYPE').length);
  const perPlate = file.parameters.get('FORCE_PLATFORM:CHANNEL')?.dimensions[0] ?? 0;
  const zero = unloaded(file, numbers('ZERO'));
  return Array.from({ length: used }, (_, p) => {
    const type = numbers('TYPE')[p] ?? 0;
    const channels = numbers('CHANNEL')
      .slice(p * perPlate, (p + 1) * perPlate)
      .map((channel) => channel - 1);
    const corners = [0, 1, 2, 3].map(
      (corner) =>
        [0, 1, 2].map((axis) => numbers('CORNERS')[p * 12 + corner * 3 + axis] ?? 0) as unknown as readonly [
          number,
          number,
          number,
        ],
    );
    const known = {
      number: p + 1,
      type,
      corners,
      channels: channels.map((channel) => file.analogLabels[channel] ?? ''),
    };
    const weights = verticalWeights(type, numbers('CAL_MATRIX'), p);
    if (typeof weights === 'string') return { ...known, verticalN: null, reason: weights };
    const parts = weights.map(({ place, weight }) => ({ channel: channels[place] ?? -1, weight }));
    if (parts.length === 0)
      return { ...known, verticalN: null, reason: 'its calibration matrix gives no vertical force' };
    const missing = parts.find(({ channel }) => file.analog[channel] === undefined);
    if (missing !== undefined) {
      return { ...known, verticalN: null, reason: 'a channel that the file gives this plate is not in it' };
    }
    const units = [...new Set(parts.map(({ channel }) => file.analogUnits[channel] ?? ''))];
    const scale = type === 4 || type === 5 ? 1 : scaleToNewtons(units);
    if (scale === null) {
      return {
        ...known,
        verticalN: null,
        reason: `the file says that its channels are in ${units.join(' and ')}, not in newtons`,
      };
    }
    const sum = new Float64Array(file.frames * file.samplesPerFrame);
    for (const { channel, weight } of parts) {
      const samples = file.analog[channel] as Float64Array;
      const rest = zero === null ? 0 : mean(samples.subarray(...zero));
      for (let k = 0; k < sum.length; k++) {
        sum[k] = (sum[k] as number) + ((samples[k] as number) - rest) * weight * scale;
      }
    }
    if (!sum.every(Number.isFinite)) return { ...known, verticalN: null, reason: 'some of its samples are no numbers' };
    const sign = Math.sign(mean(sum)) || 1;
    return { ...known, verticalN: sum.map((force) => force * sign), reason: null };
  });
}

/** Which of a plate's channels make its vertical force, and with what weight; or why that cannot be said. */
function verticalWeights(
  type: number,
  matrix: readonly number[],
  plate: number,
): readonly { readonly place: number; readonly weight: number }[] | string {
  if (type === 1 || type === 2) return [{ place: 2, weight: 1 }];
  if (type === 3) return [4, 5, 6, 7].map((place) => ({ place, weight: 1 }));
  if (type !== 4 && type !== 5) return `plates of type ${type} are not read yet`;
  const columns = type === 4 ? 6 : 8;
  // A matrix has six rows, its first dimension; the third row gives the vertical force.
  const row = Array.from({ length: columns }, (_, column) => matrix[plate * 6 * columns + column * 6 + 2]);
  if (row.some((weight) => weight === undefined)) return 'its calibration matrix is not in the file';
  return row.map((weight = 0, place) => ({ place, weight })).filter(({ weight }) => weight !== 0);
}

function scaleToNewtons(units: readonly string[]): number | null {
  const unit = units[0]?.toLowerCase() ?? '';
  if (units.length > 1) return null;
  return unit === '' || unit === 'n' || unit.startsWith('newton') ? 1 : unit === 'kn' ? 1000 : null;
}

/** First sample and the one after the last of the stretch without load; null where the file names none. */
function unloaded(file: C3dFile, [first = 0, last = 0]: readonly number[]): readonly [number, number] | null {
  const from = (first - 1) * file.samplesPerFrame;
  const to = last * file.samplesPerFrame;
  return first > 0 && last > first && to <= file.frames * file.samplesPerFrame ? [from, to] : null;
}

function mean(values: Float64Array): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
