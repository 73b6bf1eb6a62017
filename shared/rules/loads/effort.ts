import type { Load } from '../load.ts';

export const effort = {
  id: 'effort',
  means: 'Hard or maximal effort, or impact.',
  effects: [
    {
      condition: 'concussion',
      effect: 'stop',
      change:
        'No exertion, no risk of a blow and no step forward in the graded return until free of symptoms and cleared by a physician.',
      plain:
        'No effort and nothing that could hit your head. Take no step forward until all signs are gone and a doctor clears you.',
      unsafeFor: [],
    },
    {
      condition: 'pregnancy',
      effect: 'replace',
      change:
        'Moderate effort at a talking pace, without contact, fall risk or held breath; change position if lying on the back brings symptoms. Stop on bleeding, fluid loss, chest pain, faintness or contractions.',
      unsafeFor: [],
    },
    {
      condition: 'postpartum',
      effect: 'replace',
      change:
        'No impact. Walking, pelvic-floor and strength work until about 12 weeks and a pelvic-health check; stop on heaviness, leaking or bleeding.',
      plain:
        'No impact. Walk and do pelvic-floor and strength work until about 12 weeks and a check of your pelvic floor. Stop if you feel heavy, leak or bleed.',
      unsafeFor: ['bone-stress', 'pregnancy'],
    },
    {
      condition: 'cardiac-red-flag',
      effect: 'stop',
      change: 'No maximal or symptom-limited effort until a physician has cleared the athlete.',
      plain: 'No hard effort until a doctor has cleared you.',
      unsafeFor: [],
    },
  ],
} as const satisfies Load;
