import type { Load } from '../load.ts';

export const running = {
  id: 'running',
  means: 'Running, sprinting, changes of direction.',
  effects: [
    {
      condition: 'anterior-cruciate-ligament',
      effect: 'replace',
      change:
        'No pivoting or unplanned cuts. Closed-chain strength and planned straight-line work as the surgical team allows.',
      plain:
        'No turning on that leg and no sudden cuts. Train strength with your foot on the floor and go straight ahead, as the surgical team allows.',
      unsafeFor: [
        'patellar-tendinopathy',
        'ankle-sprain',
        'hamstring',
        'groin',
        'bone-stress',
        'pregnancy',
        'postpartum',
      ],
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
      change: 'No uneven or unplanned cuts; none in the acute phase.',
      plain: 'No sudden cuts and none on uneven ground; none at all in the first days after the injury.',
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
      change: 'No side-stepping or kicking volume, and only with squeeze pain of 2 of 10 or less.',
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
