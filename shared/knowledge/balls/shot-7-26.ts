import type { Ball } from './ball.ts';

export const shot726: Ball = {
  id: 'shot-7-26',
  label: 'shot, 7.26 kg',
  sport: 'Athletics',
  massKg: [7.26, 7.285],
  diameterM: [0.11, 0.13],
  source: { cite: 'Shot, men: 7.260 kg or more, diameter 110-130 mm (from memory)', status: 'from memory' },
  drag: {
    coefficient: 0.5,
    u: 0.05,
    source: {
      cite: 'Smooth sphere below its drag crisis 0.47, taken up a little; a convention of this program',
      status: 'convention',
    },
  },
};
