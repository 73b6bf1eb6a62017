import type { Target } from './target.ts';

export const volleyballNetMen: Target = {
  id: 'volleyball-net-men',
  label: 'Net, men',
  sport: 'Volleyball',
  shape: { kind: 'net', heightM: 2.43, courtLengthM: 18, courtWidthM: 9 },
  marks: [{ label: 'From the end line', distanceM: 9 }],
  source: { cite: 'Net 2.43 m, court 18 m by 9 m', status: 'published' },
};
