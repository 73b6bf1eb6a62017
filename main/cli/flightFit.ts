import { fitDrag } from '../../shared/kernel/flight/fitDrag.ts';
import { fitRelease, type FlightSample } from '../../shared/kernel/flight/fitRelease.ts';
import { counted } from '../../shared/format/number.ts';
import { isKnown } from '../../shared/quantity.ts';
import { readSeriesCsv } from '../exchange/seriesCsv.ts';
import { type Command, readText, UsageError } from './command.ts';
import { ballNamed, dragOf } from './namedBall.ts';
import { readingsToJson, readingsToLines, type Row } from './readings.ts';

export const flightFit: Command = {
  name: 'flight fit',
  usage: 'FILE.csv --columns t,x,y [--ball NAME] [--drag on|off|fitted]',
  does: 'release speed and angle, and the gravity found, from a ball’s free flight (s, m)',
  words: 1,
  options: { columns: { type: 'string' }, ball: { type: 'string' }, drag: { type: 'string' } },
  run({ words: [file = ''], options }) {
    const names = String(options['columns'] ?? '').split(',');
    if (names.length !== 3) throw new UsageError('--columns needs three names: time, x and y, as t,x,y.');
    const ball = ballNamed(options['ball']);
    const samples = readFlight(readText(file), names);
    const why = 'no digitising uncertainty was given; the scatter about the path is used';
    const isFitted = options['drag'] === 'fitted';
    const found = isFitted ? fitDrag(samples, why) : null;
    // A flight that does not show its drag falls back on the ball's own, if one is named.
    const drag = found !== null && isKnown(found) ? found : dragOf(ball, isFitted ? undefined : options['drag']);
    const fit = fitRelease(
      samples,
      why,
      drag === null ? null : { k: drag.value, ...(isFitted && drag.u !== null ? { u: drag.u } : {}) },
    );
    const rows = [
      { key: 'releaseSpeed', label: 'Release speed', reading: fit.releaseSpeed },
      { key: 'releaseAngle', label: 'Release angle', reading: fit.releaseAngle },
      { key: 'releaseHeight', label: 'Height at the first sample', reading: fit.y },
      { key: 'gravity', label: 'Gravity found', reading: fit.gravity },
      { key: 'residual', label: 'Residual', reading: fit.residual, shownIn: 'mm' },
      ...(found === null ? [] : [{ key: 'dragFactor', label: 'Drag factor found', reading: found }]),
    ] satisfies readonly Row[];
    // Drag found with g taken as standard leaves g nothing of its own to be checked by.
    const [verdict, reasons] =
      found !== null && isKnown(found)
        ? (['cannot tell', ['drag was fitted with g taken as standard, so gravity is no check']] as const)
        : [fit.verdict, fit.reasons];
    return {
      json: {
        ...readingsToJson(rows),
        verdict,
        reasons,
        frames: fit.frames,
        drag: drag !== null,
      },
      lines: [
        `${counted(fit.frames, 'frame')} of flight`,
        ...readingsToLines(rows),
        `Gravity check: ${verdict} – ${reasons.join('; ')}.`,
      ],
    };
  },
};

function readFlight(text: string, names: readonly string[]): FlightSample[] {
  const [t = [], x = [], y = []] = readSeriesCsv(text, names).columns;
  return t.map((time, i) => ({ t: time, x: x[i] as number, y: y[i] as number }));
}
