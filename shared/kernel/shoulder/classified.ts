/** One word of a classification and what it rests on, or null and why none can be given. Never a guess. */
export interface Classified<T extends string> {
  readonly is: T | null;
  readonly because: string;
}
