import type { Load } from '../load.ts';

export const ankleMobility = {
  id: 'ankle-mobility',
  means: 'Bending the ankle under body weight.',
  effects: [
    { condition: 'anterior-cruciate-ligament', effect: 'modify', change: 'No twisting over the foot.', unsafeFor: [] },
    {
      condition: 'patellar-tendinopathy',
      effect: 'modify',
      change: 'No deep knee bend that hurts the tendon.',
      plain: 'No deep knee bend that hurts below the kneecap.',
      unsafeFor: [],
    },
    {
      condition: 'ankle-sprain',
      effect: 'modify',
      change: 'No forced lunge in an acute sprain or with a pinch in front of the ankle; refer if nothing is gained.',
      plain:
        'Do not force the lunge in the first days or when it pinches in front of the ankle. Have it looked at if it gets no better.',
      unsafeFor: [],
    },
    { condition: 'hamstring', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'groin', effect: 'keep', change: '', unsafeFor: [] },
    {
      condition: 'bone-stress',
      effect: 'stop',
      change: 'No forced lunge with pain at one spot of shin or foot.',
      unsafeFor: [],
    },
  ],
} as const satisfies Load;
