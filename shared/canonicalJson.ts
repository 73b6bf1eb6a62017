/**
 * A JSON value as text that depends on the value only: keys sorted, no spaces. Equal texts mean equal values.
 * @param value JSON: null, booleans, finite numbers, strings, arrays and plain objects of these
 */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
