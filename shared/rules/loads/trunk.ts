import type { Load } from '../load.ts';

export const trunk = {
  id: 'trunk',
  means: 'Turning, bending or stiffening the trunk at speed or under load.',
  effects: [
    {
      condition: 'low-back-pain',
      effect: 'modify',
      change:
        'Trunk near mid-range and the load low; no repeated end-range bending and, in the young, no extension with rotation. Change in bladder, bowel, saddle feeling or leg strength is an emergency.',
      plain:
        'Keep your back near its middle position and the weight low. No repeated full bending, and when you are young no arching back with a twist. A change when you pee or poo, numbness between your legs or weak legs is an emergency.',
      unsafeFor: [],
    },
  ],
} as const satisfies Load;
