import { type Ball, fromCircumference } from './ball.ts';

export const handball3: Ball = {
  id: 'handball-3',
  label: 'handball, size 3',
  sport: 'Handball',
  massKg: [0.425, 0.475],
  diameterM: fromCircumference(0.58, 0.6),
  source: {
    cite: 'Rules of handball, rule 3: circumference 58-60 cm, 425-475 g (recent rule changes not checked)',
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
