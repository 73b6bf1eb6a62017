import type { Load } from '../load.ts';

export const jumping = {
  id: 'jumping',
  means: 'Jumps and landings.',
  effects: [
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'modify',
      change:
        'No single-leg maximal landing, pivoting or contact, nothing unplanned or high, until strength and hop are at least 90 %, nine months have passed and the surgical team agrees.',
      plain:
        'No hard landing on one leg, no turning on it and no contact. Nothing sudden and nothing high. First your strength and your hop must reach 90 %, nine months must have passed and your surgeon must agree.',
      unsafeFor: [],
    },
    {
      condition: 'patellar-tendinopathy',
      effect: 'replace',
      change:
        'No jump or landing volume. Isometric, then slow heavy knee-extensor work; spring-type work returns in stages while pain stays about 3 of 10 or less and is no worse the next day.',
      plain:
        'No jumps and landings. First hold your knee still against weight, then train the front of your thigh slowly and heavily. Bouncing comes back in steps while it hurts about 3 of 10 or less and no more the next day.',
      unsafeFor: ['anterior-cruciate-ligament', 'pregnancy'],
    },
    {
      condition: 'ankle-sprain',
      effect: 'modify',
      change:
        'None in the acute phase; no single-leg landing before balance and two-leg landings are steady and free of pain.',
      plain:
        'None in the first days after the injury. No landing on one leg until your balance and two-leg landings are steady and do not hurt.',
      unsafeFor: [],
    },
    {
      condition: 'hamstring',
      effect: 'modify',
      change:
        'No maximal sprint or fast lengthened load until strength and range are free of pain and graded runs are done.',
      plain:
        'No full sprint and no fast stretch under load until strength and stretching do not hurt and you have run faster step by step.',
      unsafeFor: [],
    },
    {
      condition: 'groin',
      effect: 'modify',
      change: 'No side-stepping or wide stance, and only with squeeze pain of 2 of 10 or less.',
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
