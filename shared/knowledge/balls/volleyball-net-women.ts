import type { Target } from './target.ts';

export const volleyballNetWomen: Target = {
  id: 'volleyball-net-women',
  label: 'Net, women',
  sport: 'Volleyball',
  shape: { kind: 'net', heightM: 2.24, courtLengthM: 18, courtWidthM: 9 },
  marks: [{ label: 'From the end line', distanceM: 9 }],
  source: { cite: 'Net 2.24 m, court 18 m by 9 m', status: 'published' },
};
