import type { Target } from './target.ts';

export const handballGoal: Target = {
  id: 'handball-goal',
  label: 'Goal',
  sport: 'Handball',
  shape: { kind: 'goal', heightM: 2, widthM: 3 },
  marks: [
    { label: 'Goal-area line', distanceM: 6 },
    { label: 'Penalty', distanceM: 7 },
    { label: 'Free-throw line', distanceM: 9 },
  ],
  source: {
    cite: 'Goal 2 m by 3 m, goal-area line 6 m, penalty 7 m, free-throw line 9 m (from memory)',
    status: 'from memory',
  },
};
