import { type Ball, fromCircumference } from './ball.ts';

export const volleyball: Ball = {
  id: 'volleyball',
  label: 'volleyball',
  sport: 'Volleyball',
  massKg: [0.26, 0.28],
  diameterM: fromCircumference(0.65, 0.67),
  source: { cite: 'Rules of volleyball: circumference 65-67 cm, 260-280 g', status: 'published' },
  drag: {
    coefficient: 0.45,
    u: 0.05,
    source: {
      cite: 'Chosen near a smooth sphere below its drag crisis (0.47); a convention of this program',
      status: 'convention',
    },
  },
};
