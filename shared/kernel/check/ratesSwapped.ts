import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Real time is playback time over k, with k = capture rate over playback rate',
  status: 'derived',
};

/**
 * Mistake 2, before any free fall is there to tell: were capture and playback rate entered the wrong way round? Slow
 * motion plays slower than it was captured.
 *
 * @param seen frames a second, Hz; null: not entered
 * @source k = capture rate over playback rate
 */
export function ratesSwapped(seen: {
  readonly captureRateHz: number | null;
  readonly playbackRateHz: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'rates-swapped', about: seen.about, source: SOURCE };
  const { captureRateHz: capture, playbackRateHz: playback } = seen;
  if (capture === null || playback === null) {
    return cannotTell(
      base,
      `Whether this clip was slowed cannot be told: its ${capture === null ? 'true capture rate' : 'playback rate'} is not entered.`,
    );
  }
  if (playback > capture * 1.01) {
    return questioned(
      base,
      `A clip captured at ${capture.toFixed(0)} and played at ${playback.toFixed(0)} frames a second would run fast. The two rates look swapped: every time would be ${(playback / capture).toFixed(1)} times too long.`,
      { label: 'Capture rate', value: capture, unit: 'Hz' },
      { label: 'Playback rate', value: playback, unit: 'Hz' },
    );
  }
  return fine(base, `Capture over playback rate is ${(capture / playback).toFixed(1)}.`);
}
