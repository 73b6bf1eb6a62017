import type { Load } from '../load.ts';

export const overheadLight = {
  id: 'overhead-light',
  means: 'Reaching or lifting overhead with little or no load.',
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'replace',
      change:
        'No work overhead or with the arm behind the line of the ear. Work in front of the body and below shoulder height: raises in the plane of the shoulder blade, rows, isometric rotation at the side. No loaded arm out to the side and turned back until a clinician clears it.',
      plain:
        'No work overhead or with your arm behind your ear. Work in front of your body and below shoulder height: lifts a little to the side, rows, pressing your hand out and in without moving. No weight with your arm out and turned back until a clinician clears it.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
    {
      condition: 'posterior-shoulder-instability',
      effect: 'modify',
      change: 'Never pushed to lock-out overhead under load.',
      unsafeFor: [],
    },
    {
      condition: 'multidirectional-shoulder-instability',
      effect: 'replace',
      change:
        'Low-load control in the mid-range, shoulder blade first, in the steps of a physiotherapist. No stretching, hanging or long-lever load.',
      plain:
        'Easy control in the middle of the movement, shoulder blade first, in the steps of your physiotherapist. No stretching, no hanging and no weight far from your body.',
      unsafeFor: [],
    },
    {
      condition: 'rotator-cuff',
      effect: 'modify',
      change: 'Only inside the pain-free arc, in small volume; stop if night pain follows.',
      unsafeFor: [],
    },
    {
      condition: 'superior-labrum',
      effect: 'modify',
      change: 'No heavy balls and no fast arm; small volume.',
      unsafeFor: [],
    },
    {
      condition: 'acromioclavicular-joint',
      effect: 'modify',
      change: 'Only as high as the top of the shoulder stays quiet.',
      unsafeFor: [],
    },
    {
      condition: 'elbow-ulnar-collateral-ligament',
      effect: 'modify',
      change: 'No forced snap of the elbow and no long range.',
      unsafeFor: [],
    },
  ],
} as const satisfies Load;
