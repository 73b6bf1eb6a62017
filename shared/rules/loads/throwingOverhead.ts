import type { Load } from '../load.ts';

export const throwingOverhead = {
  id: 'throwing-overhead',
  means: 'Throws, hits or serves overhead at speed.',
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'replace',
      change:
        'No throws or hits with the arm drawn back. Work in front of the body and below shoulder height: rows and isometric rotation with the arm at the side. Throws return last, when cleared.',
      plain:
        'No throws or hits with your arm drawn back. Work in front of your body and below shoulder height: rows, and pressing your hand out and in without moving, elbow at your side. Throws come back last, when cleared.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
    {
      condition: 'posterior-shoulder-instability',
      effect: 'replace',
      change:
        'No throws or hits that finish across the body. Rows and external rotation with the arm at the side. Throws return last, when cleared.',
      plain:
        'No throws or hits that end across your body. Rows, and turning your arm out with the elbow at your side. Throws come back last, when cleared.',
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
        'Never at full speed. Only where pain stays tolerable and settles within a day. New loss of lifting after an injury is urgent.',
      unsafeFor: [],
    },
    {
      condition: 'superior-labrum',
      effect: 'replace',
      change:
        'No fast throws or hits, no heavy biceps load and no pull on the arm. Cuff and shoulder-blade work with the arm at the side until throwing is cleared.',
      plain:
        'No fast throws or hits, no heavy arm curls and no pull on your arm. Train turning your arm with the elbow at your side, and your shoulder blade, until throwing is cleared.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
    {
      condition: 'acromioclavicular-joint',
      effect: 'modify',
      change: 'No fast finish across the body; stop with pain on top of the shoulder.',
      unsafeFor: [],
    },
    {
      condition: 'elbow-ulnar-collateral-ligament',
      effect: 'replace',
      change:
        'No throwing or hitting. Cuff work with the arm at the side and forearm flexors; graded throwing only after clearance.',
      plain:
        'No throwing or hitting. Train turning your arm with the elbow at your side, and your grip. Throwing comes back step by step, only when you are cleared.',
      unsafeFor: ['multidirectional-shoulder-instability'],
    },
  ],
} as const satisfies Load;
