import type { CaseFile } from '../model/records.ts';
import { csvRow } from './csvRow.ts';

const HEAD = ['trial', 'point', 'origin', 'frame', 'x', 'y', 'unit'] as const;

/**
 * Every digitised point as a table of comma-separated values (RFC 4180), a row each, frames from 0: pixels with y down,
 * or metres with y up where the trial is given in metres. Empty: there are none.
 */
export function pointsCsv({
  movementTrials,
  landmarkTracks,
}: Pick<CaseFile, 'movementTrials' | 'landmarkTracks'>): string {
  const rows = movementTrials.flatMap(({ id, label, calibration }) => {
    const unit = calibration?.kind === 'metres' ? 'm' : 'px';
    return landmarkTracks
      .filter(({ trialId }) => trialId === id)
      .flatMap(({ point, origin, samples }) =>
        samples.map(([frame, x, y]) => [label, point, origin, frame, x, y, unit] as const),
      );
  });
  return rows.length === 0 ? '' : [HEAD, ...rows].map(csvRow).join('');
}
