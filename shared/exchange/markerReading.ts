import { z } from 'zod';
import { line } from '../model/parts.ts';

export const AXES = ['+x', '-x', '+y', '-y', '+z', '-z'] as const;
export type Axis = (typeof AXES)[number];

/** Units of length that marker files are written in, in metres. */
export const MARKER_UNITS = { mm: 0.001, cm: 0.01, dm: 0.1, m: 1 } as const;
export type MarkerUnit = keyof typeof MARKER_UNITS;

/** How the markers of a file become the points of a trial: what a person decides. */
export const markerReading = z
  .strictObject({
    /** For each marker in the order of the file the point it is, or null; of several the point is the middle. */
    points: z.array(line.min(1).nullable()).max(70_000),
    /** Axes of the file along which the movement goes and against which things fall. */
    forward: z.enum(AXES),
    up: z.enum(AXES),
    /** Null: the file does not say, and nobody has said yet. */
    unit: z.enum(Object.keys(MARKER_UNITS) as [MarkerUnit, ...MarkerUnit[]]).nullable(),
  })
  .refine(({ forward, up }) => forward[1] !== up[1], 'two different axes for forward and up');
export type MarkerReading = z.infer<typeof markerReading>;
