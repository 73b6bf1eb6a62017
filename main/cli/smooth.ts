import { DomainError } from '../../shared/errors.ts';
import { counted } from '../../shared/format/number.ts';
import { derivative } from '../../shared/kernel/signal/derivative.ts';
import { resample } from '../../shared/kernel/signal/resample.ts';
import { residualAnalysis, type ResidualAnalysis } from '../../shared/kernel/signal/residualAnalysis.ts';
import { spacing } from '../../shared/kernel/signal/spacing.ts';
import { zeroLagButterworth } from '../../shared/kernel/signal/zeroLagButterworth.ts';
import { readSeriesCsv } from '../exchange/seriesCsv.ts';
import { choiceFrom, type Command, numberFrom, readText, UsageError } from './command.ts';

export const smooth: Command = {
  name: 'smooth',
  usage: 'FILE.csv --columns t,y [--cutoff HZ|auto] [--derivative 0|1|2]',
  does: 'a record low-passed without delay (Butterworth, both ways), or its derivative; auto looks for the cut-off',
  words: 1,
  options: { columns: { type: 'string' }, cutoff: { type: 'string' }, derivative: { type: 'string' } },
  run({ words: [file = ''], options }) {
    const names = String(options['columns'] ?? '').split(',');
    if (names.length !== 2) throw new UsageError('--columns needs two names: time and value, as t,y.');
    const order = Number(choiceFrom(options['derivative'], '--derivative', ['0', '1', '2'], '0')) as 0 | 1 | 2;
    const wanted = options['cutoff'] ?? 'auto';
    const given = wanted === 'auto' ? null : numberFrom(wanted, '--cutoff');

    const even = evenly(readText(file), names);
    const analysis = given === null ? residualAnalysis(even.values, even.rateHz) : null;
    const cutoffHz = given ?? suggested(analysis);
    const smoothed = zeroLagButterworth(even.values, even.rateHz, cutoffHz);
    const values = order === 0 ? smoothed : derivative(smoothed, even.rateHz, order);
    const residual = Math.sqrt(
      even.values.reduce((sum, x, i) => sum + (x - (smoothed[i] as number)) ** 2, 0) / smoothed.length,
    );
    const times = smoothed.map((_, i) => even.startS + i / even.rateHz);
    return {
      json: {
        rateHz: even.rateHz,
        cutoffHz,
        cutoffFrom: given === null ? 'residual analysis' : 'given',
        derivative: order,
        times,
        values,
        residual,
        ...(analysis === null ? {} : { residualAnalysis: { curve: analysis.residuals, line: analysis.line } }),
        warnings: even.warnings,
      },
      lines: [
        `${counted(values.length, 'sample')} at ${even.rateHz.toFixed(2)} Hz, cut-off ${cutoffHz.toFixed(2)} Hz (${given === null ? 'suggested by residual analysis; look at it' : 'given'})`,
        `Residual ${residual.toPrecision(4)}, in the unit of ${names[1]}`,
        ...even.warnings.map((warning) => `Look at: ${warning}`),
        ...values.map((value, i) => `${times[i]?.toFixed(6)}\t${value === null ? '' : value.toPrecision(7)}`),
      ],
    };
  },
};

interface Even {
  readonly startS: number;
  readonly rateHz: number;
  readonly values: readonly number[];
  readonly warnings: readonly string[];
}

/** The record on an even clock; unevenly timed samples are put on one by their own times, never by their number. */
function evenly(text: string, names: readonly string[]): Even {
  const { columns, placeOf } = readSeriesCsv(text, names);
  const [times = [], values = []] = columns;
  const found = spacing(times, 'smooth', (row) => placeOf(row, names[0] ?? ''));
  const startS = times[0] ?? 0;
  switch (found.kind) {
    case 'even':
      return { startS, rateHz: found.rateHz, values, warnings: [] };
    case 'rounded':
      return {
        startS,
        rateHz: found.rateHz,
        values,
        warnings: [`Times are written to ${found.resolutionS.toPrecision(1)} s only; the rate is from first and last.`],
      };
    case 'uneven':
      return resample(times, values, 1 / found.medianS);
  }
}

function suggested(analysis: ResidualAnalysis | null): number {
  if (analysis !== null && 'cutoffHz' in analysis.suggestion) return analysis.suggestion.cutoffHz;
  throw new DomainError('no-solution', 'smooth needs --cutoff HZ: residual analysis suggests none for this record');
}
