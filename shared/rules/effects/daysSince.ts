/**
 * Days between something remembered as a day or a month and a later day, at the least. Null where no such count can be
 * made: not recorded, only a year, or still ahead of that day.
 */
export function daysSince(rough: string | null, on: string | null): number | null {
  if (rough === null || on === null || rough.length === 4) return null;
  const [year = 0, month = 1] = rough.split('-').map(Number);
  const endOfMonth = Date.UTC(year, month, 0) / 86_400_000;
  if (rough.length > 7) return day(on) < day(rough) ? null : day(on) - day(rough);
  return on.slice(0, 7) < rough ? null : Math.max(0, day(on) - endOfMonth);
}

/** A day as a running number. */
function day(text: string): number {
  return Date.parse(`${text}T00:00:00Z`) / 86_400_000;
}
