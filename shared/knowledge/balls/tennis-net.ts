import type { Target } from './target.ts';

export const tennisNet: Target = {
  id: 'tennis-net',
  label: 'Net',
  sport: 'Tennis',
  shape: { kind: 'net', heightM: 0.914, courtLengthM: 23.77, courtWidthM: 8.23 },
  marks: [{ label: 'From the baseline', distanceM: 11.885 }],
  source: {
    cite: 'Net 0.914 m at its middle (1.07 m at the posts), court 23.77 m by 8.23 m, service line 6.40 m beyond the net (from memory)',
    status: 'from memory',
  },
};
