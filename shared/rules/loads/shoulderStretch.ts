import type { Load } from '../load.ts';

export const shoulderStretch = {
  id: 'shoulder-stretch',
  means: 'Stretching the back of the shoulder.',
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'modify',
      change: 'Never stretched into external rotation, and never by force.',
      plain: 'Never stretch your arm turned out, and never by force.',
      unsafeFor: [],
    },
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change: 'No cross-body or side-lying stretch. Soft-tissue work and cuff strength with the arm at the side.',
      plain:
        'No stretch across your body or lying on your side. Massage, and turning your arm with the elbow at your side.',
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
    { condition: 'rotator-cuff', effect: 'modify', change: 'Only as far as it does not pinch.', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'modify', change: 'No side-lying stretch if it pinches.', unsafeFor: [] },
    {
      condition: 'acromioclavicular-joint',
      effect: 'replace',
      change: 'No cross-body stretch. Soft-tissue work at the back of the shoulder.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
} as const satisfies Load;
