import type { Load } from '../load.ts';

export const practice = {
  id: 'practice',
  means: 'Light practice of a skill, or slow exercise.',
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
      effect: 'modify',
      change:
        'No contact, fall risk or held breath. Stop on bleeding, fluid loss, chest pain, faintness or contractions.',
      unsafeFor: [],
    },
    {
      condition: 'postpartum',
      effect: 'modify',
      change: 'Stop on heaviness, leaking, bleeding or pain.',
      unsafeFor: [],
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
