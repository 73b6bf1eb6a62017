/** Completed years from one calendar day to another (`2008-03-01`, `2026-02-28` → 17). Negative days give a negative. */
export function wholeYears(from: string, to: string): number {
  const years = Number(to.slice(0, 4)) - Number(from.slice(0, 4));
  return to.slice(5) < from.slice(5) ? years - 1 : years;
}
