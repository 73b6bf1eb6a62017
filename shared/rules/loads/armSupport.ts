import type { Load } from '../load.ts';

export const armSupport = {
  id: 'arm-support',
  means: 'Weight on the hands: push-up and plank positions.',
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'modify',
      change: 'Hands never wider than the shoulders, never below an incline, no deep range.',
      unsafeFor: [],
    },
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change: 'No push-up or plank with the arm forward. Rows and external rotation with the arm at the side.',
      plain: 'No push-up or plank with your arm forward. Rows, and turning your arm out with the elbow at your side.',
      unsafeFor: ['multidirectional-shoulder-instability'],
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
      change:
        'Only where pain stays tolerable and settles within a day. New loss of lifting after an injury is urgent.',
      unsafeFor: [],
    },
    {
      condition: 'superior-labrum',
      effect: 'modify',
      change: 'No deep range; stop with pain or catching.',
      unsafeFor: [],
    },
    {
      condition: 'acromioclavicular-joint',
      effect: 'modify',
      change: 'No wide or deep pressing and no dips.',
      unsafeFor: [],
    },
    {
      condition: 'elbow-ulnar-collateral-ligament',
      effect: 'modify',
      change: 'No load that forces the elbow inward.',
      unsafeFor: [],
    },
  ],
} as const satisfies Load;
