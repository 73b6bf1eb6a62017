import type { JumpTest } from '../../../shared/model/jump.ts';

export const KIND_WORDS: Record<JumpTest['kind'], string> = {
  countermovement: 'Countermovement jump',
  squat: 'Squat jump',
  drop: 'Drop jump',
};

export const METHOD_WORDS: Record<JumpTest['method'], string> = {
  'flight-time': 'by flight time',
  'jump-and-reach': 'by jump and reach',
  'force-plate': 'on a force plate',
};

export const ARMS_WORDS: Record<NonNullable<JumpTest['arms']>, string> = {
  free: 'free to swing',
  hips: 'on the hips',
};
