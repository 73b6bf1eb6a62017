import { DomainError } from '../../../shared/errors.ts';
import {
  AXES,
  type Axis,
  MARKER_UNITS,
  type MarkerReading,
  type MarkerUnit,
} from '../../../shared/exchange/markerReading.ts';
import { plainLabel, suggestPoints } from '../../../shared/exchange/suggestPoints.ts';
import { sentenceCase } from '../../../shared/format/letterCase.ts';
import { counted } from '../../../shared/format/number.ts';
import { pointWords } from '../../../shared/kernel/trial/trialCurves.ts';
import { MOST_FRAMES } from '../../../shared/model/trial.ts';
import type { C3dFile } from './readC3d.ts';

export interface MarkersFound {
  readonly markers: readonly { readonly label: string; readonly framesSeen: number }[];
  /** By labels and by how the markers lie; the unit as the file says, null where it does not. */
  readonly suggested: MarkerReading;
}

type Place = readonly [number, number, number];

/**
 * The markers of a C3D file, and how they most likely are to be read.
 * @throws DomainError 'input-missing' for a file without markers, or of which not one place is known;
 *   'input-out-of-range' for more frames than a trial can hold
 */
export function c3dMarkers(file: C3dFile): MarkersFound {
  if (file.frames > MOST_FRAMES) {
    throw new DomainError('input-out-of-range', `c3dMarkers takes up to ${MOST_FRAMES} frames, got ${file.frames}.`);
  }
  const markers = file.pointLabels.map((label, p) => {
    let framesSeen = 0;
    for (let frame = 0; frame < file.frames; frame++) if (file.point(frame, p) !== null) framesSeen++;
    return { label, framesSeen };
  });
  if (markers.length === 0 || file.frames === 0) {
    throw new DomainError('input-missing', 'c3dMarkers needs markers; there are none in this file.');
  }
  if (markers.every(({ framesSeen }) => framesSeen === 0)) {
    throw new DomainError(
      'input-missing',
      `c3dMarkers needs places of markers: the file marks every place of its ${counted(markers.length, 'marker')} in ${counted(file.frames, 'frame')} as not seen, so there is nothing to take in.`,
    );
  }
  const points = suggestPoints(file.pointLabels).map((point, p) => (markers[p]?.framesSeen === 0 ? null : point));
  return { markers, suggested: { points, ...axesOf(file, points), unit: unitOf(file.units) } };
}

function unitOf(units: string): MarkerUnit | null {
  const said = units.trim().toLowerCase();
  const names = { mm: /^(mm|milli)/, cm: /^(cm|centi)/, dm: /^(dm|deci)/, m: /^(m|met(er|re)s?)$/ } as const;
  return (Object.keys(names) as MarkerUnit[]).find((unit) => names[unit].test(said)) ?? null;
}

/** Up is from feet to head, else as the file's screen has it, else z; forward where the points move, else reach, farthest. */
function axesOf(file: C3dFile, points: MarkerReading['points']): Pick<MarkerReading, 'forward' | 'up'> {
  const medians = (wanted: RegExp) =>
    meanOf(points.flatMap((point, p) => (point !== null && wanted.test(point) ? [middlePlace(file, p)] : [])));
  const [head, feet] = [medians(/^(vertex|cervicale|shoulder|hip)/), medians(/^(ankle|heel|toe)/)];
  const screen = file.parameters.get('POINT:Y_SCREEN')?.texts[0]?.toLowerCase();
  const up =
    (head === null || feet === null ? null : longest(head.map((one, axis) => one - (feet[axis] as number)))) ??
    AXES.find((axis) => axis === screen) ??
    '+z';
  const level = (of: readonly number[]) => of.map((one, axis) => (axis === 'xyz'.indexOf(up[1] as string) ? 0 : one));
  const [first, last] = [0, file.frames - 1].map((frame) => middleOf(file, points, frame));
  const path = first && last ? first.map((one, axis) => (last[axis] as number) - one) : [0, 0, 0];
  const [toes, heels] = [medians(/^toe/), medians(/^(heel|ankle)/)];
  const foot = toes && heels ? toes.map((one, axis) => one - (heels[axis] as number)) : [0, 0, 0];
  const size = head !== null && feet !== null ? Math.hypot(...head.map((one, i) => one - (feet[i] as number))) : 0;
  // Who goes less far than tall stays, and then faces the way the feet point.
  const goes = level(path).some((one) => Math.abs(one) > size / 2);
  const forward = (goes ? longest(level(path)) : longest(level(foot))) ?? (up[1] === 'x' ? '+y' : '+x');
  return { forward, up };
}

/** The axis along which this is longest; null where it is nowhere. */
function longest(of: readonly number[]): Axis | null {
  const most = Math.max(...of.map(Math.abs));
  if (!(most > 0)) return null;
  const axis = of.findIndex((one) => Math.abs(one) === most);
  return `${(of[axis] as number) < 0 ? '-' : '+'}${'xyz'[axis] as 'x' | 'y' | 'z'}`;
}

/** Where a marker mostly is; null where it was never seen. */
function middlePlace(file: C3dFile, p: number): Place | null {
  const seen = Array.from({ length: file.frames }, (_, frame) => file.point(frame, p)).filter((at) => at !== null);
  if (seen.length === 0) return null;
  const middle = (axis: number) =>
    seen.map((at) => at[axis] as number).toSorted((a, b) => a - b)[seen.length >> 1] as number;
  return [middle(0), middle(1), middle(2)];
}

function meanOf(places: readonly (Place | null)[]): Place | null {
  const known = places.filter((place) => place !== null);
  if (known.length === 0) return null;
  const mean = (axis: number) => known.reduce((sum, place) => sum + (place[axis] as number), 0) / known.length;
  return [mean(0), mean(1), mean(2)];
}

function middleOf(file: C3dFile, points: MarkerReading['points'], frame: number): Place | null {
  return meanOf(points.flatMap((point, p) => (point === null ? [] : [file.point(frame, p)])));
}

export interface MarkerTrial {
  /** Metres in the plane of movement, forward and up, frames from 0. */
  readonly tracks: readonly { readonly point: string; readonly samples: [number, number, number][] }[];
  /** What was done and what was left out, in words. */
  readonly words: readonly string[];
}

/** Parts of a body whose turn out of the plane is said. */
const SEGMENTS = [
  ['upper arm', 'shoulder', 'elbow'],
  ['forearm', 'elbow', 'wrist'],
  ['thigh', 'hip', 'knee'],
  ['shank', 'knee', 'ankle'],
] as const;
/** Above this a floor is not where the file has its zero, m: a convention. */
const OFF_FLOOR_M = 0.15;
const MICRO = 1e6;

/**
 * Markers as the points of a trial: in metres, seen from the side. A point of several markers is their middle in frames
 * that show all of them; what the file marks as not seen is missing.
 *
 * @throws DomainError 'input-missing' while the unit or every point is open, or of what was taken nothing was ever seen;
 *   'input-out-of-range' for a reading of another file, or a place no movement reaches
 */
export function markerTrial(file: C3dFile, reading: MarkerReading): MarkerTrial {
  const { points, forward, up, unit } = reading;
  if (points.length !== file.pointLabels.length) {
    throw new DomainError(
      'input-out-of-range',
      `markerTrial needs an answer for each of ${file.pointLabels.length} markers, got ${points.length}.`,
    );
  }
  if (unit === null) {
    throw new DomainError('input-missing', 'markerTrial needs the unit of length, which the file does not say.');
  }
  const spatial = [...new Set(points.filter((point) => point !== null))].map((point) => {
    const of = points.flatMap((one, p) => (one === point ? [p] : []));
    return { point, markers: of, places: placesOf(file, of, reading) };
  });
  const seen = spatial.filter(({ places }) => places.size > 0);
  if (seen.length === 0) {
    throw new DomainError(
      'input-missing',
      spatial.length === 0
        ? 'markerTrial needs at least one marker taken as a point.'
        : 'markerTrial needs places: of the markers taken, not one was ever seen.',
    );
  }
  refuseFarAway(seen, unit);
  return {
    tracks: seen.map(({ point, places }) => ({
      point,
      samples: [...places].map(([frame, [x, y]]) => [frame, x, y] as [number, number, number]),
    })),
    words: [
      `Seen from the side: ${forward} of the file is forward and ${up} is up, taken in ${unit}; what is along ${acrossOf(reading)} is left out.`,
      ...leftOut(seen),
      ...floorWords(seen),
      ...spatial
        .filter(({ markers }) => markers.length > 1)
        .map(
          ({ point, markers }) =>
            `${sentenceCase(pointWords(point))} is the middle of ${markers.map((p) => plainLabel(file.pointLabels[p] ?? '')).join(' and ')}.`,
        ),
      ...spatial
        .filter(({ places }) => places.size < file.frames)
        .map(
          ({ point, places }) =>
            `${sentenceCase(pointWords(point))} is not seen in ${file.frames - places.size} of ${file.frames} frames.`,
        ),
      ...(file.events.length === 0
        ? []
        : [
            `The file marks ${counted(file.events.length, 'event')} of its own, which are not taken: set those of the movement.`,
          ]),
    ],
  };
}

/** No movement that is filmed or tracked is wider: a convention. */
const FARTHEST_M = 1000;

function refuseFarAway(seen: readonly Spatial[], unit: MarkerUnit): void {
  for (const { point, places } of seen) {
    for (const [frame, place] of places) {
      if (place.every((one) => Math.abs(one) <= FARTHEST_M)) continue;
      throw new DomainError(
        'input-out-of-range',
        `markerTrial needs places within ${FARTHEST_M} m of the file’s zero, got ${Math.max(...place.map(Math.abs)).toPrecision(3)} m for ${pointWords(point)} in frame ${frame}. Either ${unit} is not its unit, or the file is damaged.`,
      );
    }
  }
}

interface Spatial {
  readonly point: string;
  /** Forward, up and across, m, by frame. */
  readonly places: ReadonlyMap<number, Place>;
}

function placesOf(file: C3dFile, markers: readonly number[], { forward, up, unit }: MarkerReading): Map<number, Place> {
  const scale = MARKER_UNITS[unit ?? 'm'];
  // A rounded minus nought is nought.
  const along = (axis: Axis, at: Place) =>
    0 +
    Math.round((axis[0] === '-' ? -1 : 1) * (at['xyz'.indexOf(axis[1] as string)] as number) * scale * MICRO) / MICRO;
  const across: Axis = `+${acrossOf({ forward, up })}`;
  const places = new Map<number, Place>();
  for (let frame = 0; frame < file.frames; frame++) {
    const here = markers.map((p) => file.point(frame, p));
    const middle = here.includes(null) ? null : meanOf(here);
    if (middle !== null) places.set(frame, [along(forward, middle), along(up, middle), along(across, middle)]);
  }
  return places;
}

function acrossOf({ forward, up }: Pick<MarkerReading, 'forward' | 'up'>): 'x' | 'y' | 'z' {
  return (['x', 'y', 'z'] as const).find((axis) => axis !== forward[1] && axis !== up[1]) ?? 'y';
}

/** How much of the movement is not in the plane. */
function leftOut(seen: readonly Spatial[]): string[] {
  const frames = [...new Set(seen.flatMap(({ places }) => [...places.keys()]))];
  const whole = frames.filter((frame) => seen.every(({ places }) => places.has(frame)));
  // A middle of other points in other frames would move without any of them.
  const middles = (whole.length === 0 ? frames : whole)
    .map((frame) => meanOf(seen.map(({ places }) => places.get(frame) ?? null)))
    .filter((middle) => middle !== null);
  const range = ([0, 1, 2] as const).map((axis) => {
    const along = middles.map((middle) => middle[axis]).toSorted((a, b) => a - b);
    return (along.at(-1) ?? 0) - (along[0] ?? 0);
  });
  const [ahead = 0, rise = 0, aside = 0] = range;
  const byName = new Map(seen.map(({ point, places }) => [point, places]));
  const turns = SEGMENTS.flatMap(([name, from, to]) =>
    (['left', 'right'] as const).flatMap((side) => {
      const [a, b] = [byName.get(`${from}-${side}`), byName.get(`${to}-${side}`)];
      const angles = [...(a ?? [])].flatMap(([frame, [x, y, z]]) => {
        const end = b?.get(frame);
        return end === undefined ? [] : [Math.atan2(Math.abs(end[2] - z), Math.hypot(end[0] - x, end[1] - y))];
      });
      const most = angles.toSorted((p, q) => p - q)[Math.floor(0.95 * (angles.length - 1))];
      return most === undefined ? [] : [{ name: `${side} ${name}`, most }];
    }),
  ).toSorted((a, b) => b.most - a.most);
  const [worst] = turns;
  return [
    `The middle of the points moves by ${ahead.toFixed(2)} m along the plane, ${rise.toFixed(2)} m up and down in it, and ${aside.toFixed(2)} m across it.`,
    ...(worst === undefined
      ? []
      : [
          `Farthest out of the plane stands the ${worst.name}, by up to ${Math.round((180 * worst.most) / Math.PI)}° in 95 of 100 frames: so much shorter it looks, and its angles with it.`,
        ]),
  ];
}

function floorWords(seen: readonly Spatial[]): string[] {
  const lowest = seen
    .flatMap(({ places }) => [...places.values()])
    .reduce((least, [, up]) => Math.min(least, up), Infinity);
  const said = `The lowest point is ${Math.abs(lowest).toFixed(2)} m ${lowest < 0 ? 'below' : 'above'} the file’s zero, which is taken as the floor.`;
  return [Math.abs(lowest) > OFF_FLOOR_M ? `${said} Heights above the floor are as far off as that is.` : said];
}
