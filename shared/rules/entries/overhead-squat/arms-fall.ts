import type { RuleEntry } from '../../ruleEntry.ts';

export const armsFall = {
  id: 'overhead-squat/arms-fall',
  kind: 'intervention',
  movement: 'overhead-squat',
  phase: 'bottom',
  region: 'shoulder',
  all: [{ measure: 'squat.armDrift', comparator: '>', threshold: 20, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your arms fall forward in the squat: {value}.',
      intervention:
        'Do the upper-back and shoulder mobility work without weight. Hold the weight in front when you squat.',
    },
    practitioner: {
      finding: 'The arms fall forward at the bottom: {value}.',
      intervention:
        'Upper-back and shoulder mobility overhead, unloaded; squats with the weight held in front meanwhile.',
    },
    clinician: {
      finding: 'Forward arm drift at the bottom: {value} (criterion above {threshold}).',
      intervention: 'Thoracic and overhead shoulder mobility, unloaded; front-loaded squats meanwhile.',
    },
  },
  drill: 'overhead-mobility',
  retest: { measure: 'squat.armDrift', afterDays: 28 },
  loads: ['overhead-light', 'practice'],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'replace',
      change: 'No overhead hold, behind-neck bar or stretch behind the head. Weight held close in front, arms low.',
      unsafeFor: ['posterior-shoulder-instability', 'multidirectional-shoulder-instability'],
    },
    { condition: 'low-back-pain', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['convention', 'kolber2010', 'durall2001'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
