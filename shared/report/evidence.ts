/** What reports show of the files beside the records, read by whoever holds the media store. */
export interface Evidence {
  /** Force records of jumps by the id of the jump, thinned for drawing. */
  readonly traces: Readonly<Record<string, ForceRecord>>;
  /** Pictures by their SHA-256. */
  readonly images: Readonly<
    Record<string, { readonly dataUri: string; readonly width: number; readonly height: number }>
  >;
}

export interface ForceRecord {
  readonly timesS: readonly number[];
  /** One list a plate column. */
  readonly forcesN: readonly (readonly number[])[];
}

export const NO_EVIDENCE: Evidence = { traces: {}, images: {} };
