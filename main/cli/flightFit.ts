import { fitRelease, type FlightSample } from '../../shared/kernel/flight/fitRelease.ts';
import { counted } from '../../shared/format/number.ts';
import { readSeriesCsv } from '../exchange/seriesCsv.ts';
import { type Command, readText, UsageError } from './command.ts';
import { ballNamed, dragOf } from './namedBall.ts';
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

function readFlight(text: string, names: readonly string[]): FlightSample[] {
  const [t = [], x = [], y = []] = readSeriesCsv(text, names).columns;
  return t.map((time, i) => ({ t: time, x: x[i] as number, y: y[i] as number }));
}
