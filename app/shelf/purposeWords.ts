import type { Purpose } from '../../shared/model/case.ts';

/** What a case can be for, and what that asks of it. */
export const PURPOSE_WORDS: Readonly<Record<Purpose, { readonly label: string; readonly means: string }>> = {
  intake: {
    label: 'Intake',
    means: 'Screen and jump one athlete, find what must be seen to first, and hand over a client report.',
  },
  study: {
    label: 'Case study',
    means: 'Analyse one movement phase by phase, with every number shown to its source.',
  },
  referral: {
    label: 'Referral',
    means: 'Put history, tests and the question into a letter on which the next clinician can act.',
  },
};
