import { type Ball, fromCircumference } from './ball.ts';

export const basketball6: Ball = {
  id: 'basketball-6',
  label: 'basketball, size 6',
  sport: 'Basketball',
  massKg: [0.51, 0.567],
  diameterM: fromCircumference(0.724, 0.737),
  source: {
    cite: 'Basketball, women: circumference 0.724-0.737 m, 0.510-0.567 kg (secondary source). Newer limits 0.715-0.730 m, 0.510-0.550 kg (from memory, to be checked)',
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
