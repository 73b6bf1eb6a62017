import type { Load } from '../load.ts';

export const shoulderStrength = {
  id: 'shoulder-strength',
  means: 'Rotation strength of the shoulder, slow.',
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'replace',
      change: 'Only with the arm at the side or below about 45°, isometric first. Nothing at 90° until cleared.',
      plain:
        'Only with your arm at your side or a little away from it, first without moving. Nothing with the arm raised until cleared.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
    {
      condition: 'posterior-shoulder-instability',
      effect: 'modify',
      change: 'No fast finish across the body.',
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
      change:
        'Only where pain stays tolerable and settles within a day. New loss of lifting after an injury is urgent. Isometric before slow range.',
      plain:
        'Only while it hurts little and is gone within a day. If you suddenly cannot lift your arm after an injury, that is urgent. First press without moving, then move slowly.',
      unsafeFor: [],
    },
    {
      condition: 'superior-labrum',
      effect: 'modify',
      change: 'No fast work at 90° until throwing is cleared.',
      unsafeFor: [],
    },
    {
      condition: 'acromioclavicular-joint',
      effect: 'modify',
      change: 'Below shoulder height; stop with pain on top of the shoulder.',
      unsafeFor: [],
    },
    {
      condition: 'elbow-ulnar-collateral-ligament',
      effect: 'modify',
      change: 'No grip load that opens the inside of the elbow.',
      unsafeFor: [],
    },
  ],
} as const satisfies Load;
