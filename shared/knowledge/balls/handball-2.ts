import { type Ball, fromCircumference } from './ball.ts';

export const handball2: Ball = {
  id: 'handball-2',
  label: 'handball, size 2',
  sport: 'Handball',
  massKg: [0.325, 0.375],
  diameterM: fromCircumference(0.54, 0.56),
  source: {
    cite: 'Rules of handball, rule 3: circumference 54-56 cm, 325-375 g (recent rule changes not checked)',
    status: 'published',
  },
  drag: {
    coefficient: 0.5,
    u: 0.05,
    source: {
      cite: 'Smooth sphere below its drag crisis 0.47, taken up a little for seams; a convention of this program',
      status: 'convention',
    },
  },
};
