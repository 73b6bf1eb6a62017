import { DomainError } from '../../errors.ts';
import { refuseUnusable } from './refuseUnusable.ts';
import { zeroLagButterworth } from './zeroLagButterworth.ts';

export interface ResidualAnalysis {
  /** The cut-off it suggests, Hz, or why it suggests none. */
  readonly suggestion: { readonly cutoffHz: number } | { readonly unknown: string };
  /** For the plot: RMS of raw minus filtered, in the samples' unit, at each cut-off. */
  readonly residuals: readonly { readonly cutoffHz: number; readonly rms: number }[];
  /** The straight part: residual = noise + slope · cut-off. Its height at 0 Hz is the noise. */
  readonly line: { readonly noise: number; readonly slope: number; readonly fromHz: number; readonly toHz: number };
}

/** The straight part, as a share of the sampling rate: a convention (12 to 20 Hz at 50 Hz). */
const LINE_FROM = 0.24;
const LINE_TO = 0.4;

/**
 * Where signal ends and noise begins: filters at many cut-offs, fits a line to the part where more passband only lets
 * more noise through, and suggests the cut-off whose residual equals that line's height at 0 Hz.
 * A suggestion to look at, not a verdict: it tends to be too low, more so at high sampling rates (Yu et al. 1999).
 *
 * @param samples evenly spaced, finite, at least 20
 * @param rateHz samples a second
 * @throws DomainError 'not-enough-data', 'input-out-of-range'
 * @source Winter 2009, residual analysis (from memory); Yu, Gabriel, Noble & An 1999, J Appl Biomech 15(3):318-329
 */
export function residualAnalysis(samples: readonly number[], rateHz: number): ResidualAnalysis {
  refuseUnusable('residualAnalysis', samples, 20);
  if (!(Number.isFinite(rateHz) && rateHz > 0)) {
    throw new DomainError('input-out-of-range', `residualAnalysis needs a sampling rate above 0 Hz, got ${rateHz}`);
  }
  const [fromHz, toHz] = [LINE_FROM * rateHz, LINE_TO * rateHz];
  const step = toHz / 80;
  const residuals = Array.from({ length: 80 }, (_, i) => {
    const cutoffHz = (i + 1) * step;
    const smooth = zeroLagButterworth(samples, rateHz, cutoffHz);
    const sum = samples.reduce((total, x, j) => total + (x - (smooth[j] as number)) ** 2, 0);
    return { cutoffHz, rms: Math.sqrt(sum / samples.length) };
  });
  const straight = residuals.filter(({ cutoffHz }) => cutoffHz >= fromHz);
  const meanF = straight.reduce((sum, { cutoffHz }) => sum + cutoffHz, 0) / straight.length;
  const meanR = straight.reduce((sum, { rms }) => sum + rms, 0) / straight.length;
  const slope =
    straight.reduce((sum, { cutoffHz, rms }) => sum + (cutoffHz - meanF) * (rms - meanR), 0) /
    straight.reduce((sum, { cutoffHz }) => sum + (cutoffHz - meanF) ** 2, 0);
  const noise = meanR - slope * meanF;
  return { suggestion: suggest(residuals, noise), residuals, line: { noise, slope, fromHz, toHz } };
}

function suggest(residuals: ResidualAnalysis['residuals'], noise: number): ResidualAnalysis['suggestion'] {
  const below = residuals.findIndex(({ rms }) => rms <= noise);
  const [a, b] = [residuals[below - 1], residuals[below]];
  if (below === -1 || b === undefined) return { unknown: 'the residual never falls to the level of the noise' };
  if (a === undefined || a.rms === b.rms) return { cutoffHz: b.cutoffHz };
  return { cutoffHz: a.cutoffHz + ((a.rms - noise) / (a.rms - b.rms)) * (b.cutoffHz - a.cutoffHz) };
}
