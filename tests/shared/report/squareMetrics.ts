import type { FontMetrics } from '../../../shared/report/metrics.ts';

/** Half as wide as high, every letter there: enough to lay out by when only the words matter. */
export const squareMetrics: FontMetrics = {
  width: (text, _face, size) => Array.from(text).length * size * 0.5,
  ascent: (_face, size) => size * 0.8,
  descent: (_face, size) => size * 0.2,
  covers: () => true,
};
