import type { Target } from './target.ts';

export const basketballRing: Target = {
  id: 'basketball-ring',
  label: 'Ring',
  sport: 'Basketball',
  shape: { kind: 'ring', heightM: 3.05, diameterM: [0.45, 0.459] },
  marks: [
    { label: 'Free throw', distanceM: 4.225 },
    { label: 'Three-point arc', distanceM: 6.75 },
  ],
  source: {
    cite: 'Ring 3.05 m high, inner diameter 0.450-0.459 m; free-throw line 5.80 m from the end line less 1.575 m to the middle of the ring (from memory)',
    status: 'from memory',
  },
};
