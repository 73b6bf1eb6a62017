/**
 * Placed pages: the end of the pure report pipeline. Coordinates in points (1/72 in), origin at the top left, y down.
 * The PDF writer and the screen preview draw exactly this; neither measures nor decides anything.
 */

export const FACES = [
  'sans',
  'sansItalic',
  'sansBold',
  'serif',
  'serifBold',
  'hebrew',
  'hebrewBold',
  'arabic',
  'arabicBold',
] as const;
export type Face = (typeof FACES)[number];

/** Role of a structure element in the tagged PDF (ISO 32000-1, 14.8.4). */
export type Role =
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'
  | 'Caption'
  | 'Formula'
  | 'Note'
  | 'Artifact';

export type Mark =
  | {
      readonly mark: 'text';
      readonly x: number;
      readonly baseline: number;
      readonly text: string;
      readonly face: Face;
      readonly size: number;
      readonly ink: Ink;
      /** Advance width, spaces at either end included. */
      readonly width: number;
      readonly tabular?: boolean;
      /** `text` is in reading order, to be drawn from the right end of its width. */
      readonly rightToLeft?: true;
      /** What is meant where `text` stands in for letters that the typeface lacks. */
      readonly actual?: string;
      /** Id of the element this text leads to. */
      readonly goTo?: string;
    }
  | {
      readonly mark: 'line';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly weight: number;
      readonly ink: Ink;
      readonly dash?: readonly number[];
    }
  | {
      readonly mark: 'rect';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly fill: Ink | null;
      readonly stroke: Ink | null;
      readonly weight: number;
    }
  | {
      /** A picture of the media store. */
      readonly mark: 'image';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly sha256: string;
    }
  | {
      readonly mark: 'path';
      /** Absolute M, L, C, Q and Z only. */
      readonly d: string;
      readonly fill: Ink | null;
      readonly stroke: Ink | null;
      readonly weight: number;
      readonly dash?: readonly number[];
    };

/** Inks by what they mean; the drawer knows the colours. All legible in black and white. */
export type Ink = 'ink' | 'muted' | 'accent' | 'tint' | 'rule' | 'paper';

/** A structure element with what is drawn for it. Rows and cells nest; leaves carry marks. */
export interface Placed {
  readonly role: Role;
  /** Same id on two pages: one element that continues. */
  readonly id: string;
  readonly alt?: string;
  readonly scope?: 'Column' | 'Row';
  readonly marks: readonly Mark[];
  readonly children: readonly Placed[];
}

export interface Page {
  readonly number: number;
  readonly width: number;
  readonly height: number;
  readonly content: readonly Placed[];
}

export interface PlacedReport {
  readonly title: string;
  readonly language: string;
  readonly author: string;
  readonly subject: string;
  /** Versions and the SHA-256 of the case, for the document's metadata. */
  readonly keywords: string;
  /** Instant written into the file; part of the case data, never the clock. */
  readonly createdAt: string;
  readonly pages: readonly Page[];
}
