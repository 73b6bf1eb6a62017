import { type Ball, fromCircumference } from './ball.ts';

export const handball1: Ball = {
  id: 'handball-1',
  label: 'handball, size 1',
  sport: 'Handball',
  massKg: [0.29, 0.33],
  diameterM: fromCircumference(0.5, 0.52),
  source: {
    cite: 'Rules of handball, rule 3: circumference 50-52 cm, 290-330 g (recent rule changes not checked)',
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
