import { type Ball, fromCircumference } from './ball.ts';

export const basketball7: Ball = {
  id: 'basketball-7',
  label: 'basketball, size 7',
  sport: 'Basketball',
  massKg: [0.567, 0.65],
  diameterM: fromCircumference(0.749, 0.78),
  source: {
    cite: 'Basketball, men: circumference 0.749-0.780 m, 0.567-0.650 kg (secondary source). Newer limits 0.750-0.770 m, 0.580-0.620 kg (from memory, to be checked)',
    status: 'published',
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
