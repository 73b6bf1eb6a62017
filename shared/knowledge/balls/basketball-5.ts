import { type Ball, fromCircumference } from './ball.ts';

export const basketball5: Ball = {
  id: 'basketball-5',
  label: 'basketball, size 5',
  sport: 'Basketball',
  massKg: [0.47, 0.51],
  diameterM: fromCircumference(0.69, 0.71),
  source: {
    cite: 'Basketball, youth: circumference 0.69-0.71 m, 0.47-0.51 kg (from memory, to be checked)',
    status: 'from memory',
  },
  drag: {
    coefficient: 0.5,
    u: 0.03,
    source: {
      cite: 'Okubo & Hubbard 2006, 0.54 for a basketball (from memory); smooth sphere 0.47; 0.50 lies between',
      status: 'from memory',
    },
  },
};
