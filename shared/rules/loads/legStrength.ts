import type { Load } from '../load.ts';

export const legStrength = {
  id: 'leg-strength',
  means: 'Slow strength and control of the legs, no impact.',
  effects: [
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'modify',
      change: 'Closed chain only; open-chain range as the surgeon says.',
      plain: 'Only exercises with your foot on the floor. Leg extensions only as far as the surgeon says.',
      unsafeFor: [],
    },
    {
      condition: 'patellar-tendinopathy',
      effect: 'modify',
      change: 'No deep or fast loading; pain about 3 of 10 or less and settled the next day.',
      unsafeFor: [],
    },
    {
      condition: 'ankle-sprain',
      effect: 'modify',
      change: 'Only in the pain-free range; no load on one leg before balance is steady.',
      unsafeFor: [],
    },
    {
      condition: 'hamstring',
      effect: 'modify',
      change: 'No fast lengthened load; only as far as range is free of pain.',
      unsafeFor: [],
    },
    {
      condition: 'groin',
      effect: 'modify',
      change: 'No wide stance, and only with squeeze pain of 2 of 10 or less.',
      unsafeFor: [],
    },
    {
      condition: 'bone-stress',
      effect: 'stop',
      change:
        'No impact. Off-feet conditioning only until the bone is not tender, walking is free of pain and the treating clinician agrees.',
      unsafeFor: [],
    },
  ],
} as const satisfies Load;
