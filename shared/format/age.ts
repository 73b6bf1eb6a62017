/** Whole years from one day to another, both `2026-11-25` or an instant. Negative if the birth lies after. */
export function ageOn(birthDate: string, on: string): number {
  const years = Number(on.slice(0, 4)) - Number(birthDate.slice(0, 4));
  return on.slice(5, 10) < birthDate.slice(5, 10) ? years - 1 : years;
}
