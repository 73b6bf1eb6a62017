import type { Target } from './target.ts';

export const shotSector: Target = {
  id: 'shot-sector',
  label: 'Throwing sector',
  sport: 'Athletics',
  shape: { kind: 'sector', circleDiameterM: 2.135, angleDeg: 34.92, boardHeightM: 0.1 },
  marks: [],
  source: { cite: 'Circle 2.135 m, sector 34.92°, stop board 0.10 m high', status: 'published' },
};
