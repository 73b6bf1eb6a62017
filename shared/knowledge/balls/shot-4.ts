import type { Ball } from './ball.ts';

export const shot4: Ball = {
  id: 'shot-4',
  label: 'shot, 4 kg',
  sport: 'Athletics',
  massKg: [4.0, 4.025],
  diameterM: [0.095, 0.11],
  source: { cite: 'Shot, women: 4.000 kg or more, diameter 95-110 mm (from memory)', status: 'from memory' },
  drag: {
    coefficient: 0.5,
    u: 0.05,
    source: {
      cite: 'Smooth sphere below its drag crisis 0.47, taken up a little; a convention of this program',
      status: 'convention',
    },
  },
};
