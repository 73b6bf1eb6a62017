/** `2026-014` after `2026-013`: one more than the highest running number of the year. */
export function numberAfter(year: number, numbers: readonly string[]): string {
  const used = numbers.filter((number) => /^\d{4}-\d{1,6}$/.test(number) && number.startsWith(`${year}-`));
  const next = 1 + used.reduce((highest, number) => Math.max(highest, Number(number.slice(5))), 0);
  return `${year}-${String(next).padStart(3, '0')}`;
}
