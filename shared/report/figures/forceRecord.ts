import { quantityText } from '../../format/number.ts';
import type { ForceSummary } from '../../model/jump.ts';
import { type Figure, figure } from '../blocks/figure.ts';
import type { ForceRecord } from '../evidence.ts';
import type { Mark } from '../page.ts';
import { hatch, label, line, polyline, rect } from './drawing.ts';
import { linear, ticks } from './scale.ts';

const HEIGHT = 120;
const [LEFT, RIGHT, TOP] = [40, 8, 14];
/** Shown before the onset and after the landing, s. */
const AROUND = 0.3;

const inWords = (value: { value: number; u: number | null }, unit: 'N' | 's') => quantityText({ ...value, unit });

/** The force under the feet over time, summed over the plates, with the phases of the jump and body weight. */
export function forceRecord(name: string, trace: ForceRecord, force: ForceSummary): Figure | null {
  const { onsetS, takeoffS, landingS, bodyWeightN, peakForceN } = force;
  const span = [onsetS.value - AROUND, landingS.value + AROUND] as const;
  const points = trace.timesS.flatMap((t, i) => {
    const sum = trace.forcesN.reduce((total, plate) => total + (plate[i] ?? 0), 0);
    return t < span[0] || t > span[1] ? [] : [[t, sum] as const];
  });
  if (points.length < 2) return null;
  const most = Math.max(...points.map(([, n]) => n));
  const phases = [
    { words: 'standing', from: span[0], to: onsetS.value },
    { words: 'getting ready and pushing off', from: onsetS.value, to: takeoffS.value },
    { words: 'in the air', from: takeoffS.value, to: landingS.value },
    { words: 'landing', from: landingS.value, to: span[1] },
  ];
  return figure({
    alt: `${name}: force over time. Peak force before take-off ${inWords(peakForceN, 'N')} against a body weight of ${inWords(bodyWeightN, 'N')}; start at ${inWords(onsetS, 's')}, take-off at ${inWords(takeoffS, 's')}, landing at ${inWords(landingS, 's')}.`,
    caption: `${name}: force under the feet, all plates together. Shaded: the push; hatched: in the air. Dashed: body weight, ${inWords(bodyWeightN, 'N')}.`,
    draw: (width, metrics) => {
      const at = linear(span, [LEFT, width - RIGHT]);
      const y = linear([0, most * 1.05], [HEIGHT, TOP]);
      const weight = y(bodyWeightN.value);
      const marks: Mark[] = [
        rect(at(onsetS.value), TOP, at(takeoffS.value) - at(onsetS.value), HEIGHT - TOP, 'tint'),
        ...hatch(at(takeoffS.value), TOP, at(landingS.value) - at(takeoffS.value), HEIGHT - TOP, 5),
        ...ticks([0, most], 4).flatMap((tick) => [
          line(LEFT - 3, y(tick), LEFT, y(tick), 0.5, 'muted'),
          label(`${tick} N`, LEFT - 5, y(tick) + 2.5, { size: 7, align: 'end', ink: 'muted' }, metrics),
        ]),
        ...ticks(span, 6).flatMap((tick) => [
          line(at(tick), HEIGHT, at(tick), HEIGHT + 3, 0.5),
          label(
            `${Number(tick.toFixed(2))} s`,
            at(tick),
            HEIGHT + 12,
            { size: 7.5, align: 'middle', ink: 'muted' },
            metrics,
          ),
        ]),
        line(LEFT, HEIGHT, width - RIGHT, HEIGHT, 0.5, 'muted'),
        line(LEFT, weight, width - RIGHT, weight, 0.6, 'ink', [3, 2]),
        polyline(
          points.map(([t, n]) => [at(t), y(n)]),
          1.1,
        ),
        ...phases.flatMap(({ words, from, to }) => {
          const room = at(to) - at(from);
          const name = label(words, (at(from) + at(to)) / 2, TOP - 5, { size: 7.5, align: 'middle' }, metrics);
          return name.mark === 'text' && name.width < room - 4 ? [name] : [];
        }),
      ];
      return { height: HEIGHT + 16, marks };
    },
  });
}
