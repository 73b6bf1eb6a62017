import type { Ball } from './ball.ts';

export const tennisBall: Ball = {
  id: 'tennis-ball',
  label: 'tennis ball',
  sport: 'Tennis',
  massKg: [0.056, 0.0594],
  diameterM: [0.0654, 0.0686],
  source: { cite: 'Rules of tennis, appendix on the ball: diameter 6.54-6.86 cm, 56.0-59.4 g', status: 'published' },
  drag: {
    coefficient: 0.55,
    u: 0.05,
    source: {
      cite: 'Sources disagree: wind tunnel 0.6-0.7 (Mehta, Alam & Subic 2008, Sports Technol), free flight 0.507 ± 0.024 (Cross & Lindsey 2013); 0.55 lies between',
      status: 'published',
    },
  },
};
