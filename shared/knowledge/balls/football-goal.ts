import type { Target } from './target.ts';

export const footballGoal: Target = {
  id: 'football-goal',
  label: 'Goal',
  sport: 'Football',
  shape: { kind: 'goal', heightM: 2.44, widthM: 7.32 },
  marks: [{ label: 'Penalty', distanceM: 11 }],
  source: { cite: 'Goal 7.32 m by 2.44 m, penalty 11 m (from memory)', status: 'from memory' },
};
