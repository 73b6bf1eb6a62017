import { type Ball, fromCircumference } from './ball.ts';

export const football5: Ball = {
  id: 'football-5',
  label: 'football, size 5',
  sport: 'Football',
  massKg: [0.41, 0.45],
  diameterM: fromCircumference(0.68, 0.7),
  source: { cite: 'Laws of football: circumference 68-70 cm, 410-450 g (from memory)', status: 'from memory' },
  drag: {
    coefficient: 0.47,
    u: 0.1,
    source: {
      cite: 'Smooth sphere below its drag crisis; above about 15 m/s a football has less, so flights are understated',
      status: 'convention',
    },
  },
};
