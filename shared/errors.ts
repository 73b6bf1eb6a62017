/**
 * The closed list of things that can go wrong. A code travels as data through every host; the message is a whole
 * sentence that says what was needed, what arrived and, where there is one, the next step.
 */
export const ERROR_CODES = [
  'input-missing',
  'input-malformed',
  'input-out-of-range',
  'unit-mismatch',
  'not-comparable',
  'poor-geometry',
  'not-enough-data',
  'no-solution',
  'not-found',
  'conflict',
  'refused-for-safety',
  'store-locked',
  'store-unwritable',
  'store-newer',
  'store-corrupt',
  'cancelled',
  'internal',
] as const;

export type ErrorCode = (typeof ERROR_CODES)[number];

/** Misuse of a function, or input that cannot be used. Everything the program throws on purpose is one of these. */
export class DomainError extends Error {
  readonly code: ErrorCode;
  /** Where in the input: `trial.frames.12.x`, `line 3, column 2`. */
  readonly path: string | null;

  constructor(code: ErrorCode, message: string, path: string | null = null) {
    super(message);
    this.name = 'DomainError';
    this.code = code;
    this.path = path;
  }
}

/** A message without the name of the function that wrote it, for people: “This needs …” in place of “weight needs …”. */
export function plainMessage(message: string): string {
  return message.replace(/^[a-z]+[A-Z]\w* (?=(needs|found|finds|knows) )/, 'This ');
}

export interface Failure {
  readonly code: ErrorCode;
  readonly message: string;
  readonly path: string | null;
}

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: Failure };

/** Any thrown thing as data. Unforeseen errors keep their message but become `internal`. */
export function toFailure(thrown: unknown): Failure {
  if (thrown instanceof DomainError) return { code: thrown.code, message: thrown.message, path: thrown.path };
  return { code: 'internal', message: thrown instanceof Error ? thrown.message : String(thrown), path: null };
}
