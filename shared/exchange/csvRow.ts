/** One row of a table of comma-separated values with its line end (RFC 4180). */
export function csvRow(cells: readonly (string | number)[]): string {
  return `${cells.map(cell).join(',')}\r\n`;
}

/** A label that someone typed must not run as a formula in a spreadsheet; a number may begin with its minus. */
function cell(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
