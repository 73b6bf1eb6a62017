/**
 * Which single values differ between two states of some fields, however deep they lie: `calibration.lengthM`. A whole part
 * that appears or goes is none of them, a list whose length changes is one.
 */
export function changedLeaves(before: unknown, after: unknown, path = ''): string[] {
  if (Object.is(before, after)) return [];
  const isList = Array.isArray(before) && Array.isArray(after);
  if (isParts(before) && isParts(after) && (!isList || before.length === after.length)) {
    const [from, to] = [before as Record<string, unknown>, after as Record<string, unknown>];
    const names = new Set([...Object.keys(from), ...Object.keys(to)]);
    return [...names].flatMap((name) => changedLeaves(from[name], to[name], path === '' ? name : `${path}.${name}`));
  }
  return isParts(before) !== isParts(after) ? [] : [path];
}

function isParts(value: unknown): boolean {
  return typeof value === 'object' && value !== null;
}
