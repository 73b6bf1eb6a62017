import { parse } from 'csv-parse/sync';
import { fitRelease, type FlightSample } from '../../shared/kernel/flight/fitRelease.ts';
import { DomainError } from '../../shared/errors.ts';
import { counted } from '../../shared/format/number.ts';
import { type Command, readText, UsageError } from './command.ts';
import { ballNamed, dragOf } from './flight.ts';
import { readingsToJson, readingsToLines } from './readings.ts';

export const flightFit: Command = {
  name: 'flight fit',
  usage: 'FILE.csv --columns t,x,y [--ball NAME] [--drag on|off]',
  does: 'release speed and angle, and the gravity found, from a ball’s free flight (s, m)',
  words: 1,
  options: { columns: { type: 'string' }, ball: { type: 'string' }, drag: { type: 'string' } },
  run({ words: [file = ''], options }) {
    const names = String(options['columns'] ?? '').split(',');
    if (names.length !== 3) throw new UsageError('--columns needs three names: time, x and y, as t,x,y.');
    const drag = dragOf(ballNamed(options['ball']), options['drag']);
    const samples = readFlight(readText(file), names);
    const fit = fitRelease(
      samples,
      'no digitising uncertainty was given; the scatter about the path is used',
      drag === null ? null : { k: drag.value },
    );
    const rows = [
      { key: 'releaseSpeed', label: 'Release speed', reading: fit.releaseSpeed },
      { key: 'releaseAngle', label: 'Release angle', reading: fit.releaseAngle },
      { key: 'releaseHeight', label: 'Height at the first sample', reading: fit.y },
      { key: 'gravity', label: 'Gravity found', reading: fit.gravity },
      { key: 'residual', label: 'Residual', reading: fit.residual, shownIn: 'mm' },
    ] as const;
    return {
      json: {
        ...readingsToJson(rows),
        verdict: fit.verdict,
        reasons: fit.reasons,
        frames: fit.frames,
        drag: drag !== null,
      },
      lines: [
        `${counted(fit.frames, 'frame')} of flight`,
        ...readingsToLines(rows),
        `Gravity check: ${fit.verdict} – ${fit.reasons.join('; ')}.`,
      ],
    };
  },
};

/** @throws DomainError with the line and column at fault */
function readFlight(text: string, names: readonly string[]): FlightSample[] {
  const rows: string[][] = parse(text, {
    bom: true,
    comment: '#',
    trim: true,
    skip_empty_lines: true,
    relax_column_count: true,
  });
  const [header, ...body] = rows;
  const columns = names.map((name) => {
    const column = header?.findIndex((title) => title.toLowerCase() === name.trim().toLowerCase()) ?? -1;
    if (column >= 0) return column;
    throw new DomainError(
      'input-missing',
      `There is no column called ${name}; the columns are ${header?.join(', ') ?? 'none, as the file is empty'}.`,
      `column ${name}`,
    );
  });
  return body.map((row, i) => {
    const [t = 0, x = 0, y = 0] = columns.map((column) => {
      const cell = row[column] ?? '';
      const value = cell === '' ? Number.NaN : Number(cell);
      if (Number.isFinite(value)) return value;
      const place = `row ${i + 1}, column ${header?.[column]}`;
      throw new DomainError('input-malformed', `A number is needed in ${place}, and “${cell}” is none.`, place);
    });
    return { t, x, y };
  });
}
