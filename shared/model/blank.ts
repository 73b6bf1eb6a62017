import type { Athlete } from './athlete.ts';
import type { CaseRecord, Purpose } from './case.ts';

/** An athlete of whom nothing is recorded yet. */
export function blankAthlete(id: string): Athlete {
  return {
    id,
    name: '',
    isPseudonym: false,
    birthDate: null,
    referenceSex: null,
    massKg: null,
    massUKg: null,
    massOn: null,
    statureM: null,
    statureUM: null,
    statureOn: null,
    dominantSide: null,
    sport: '',
    position: '',
    level: '',
    goals: '',
    consentFor: '',
    consentOn: null,
    consentToImages: null,
    hasRedFlags: null,
    redFlagsClearedBy: '',
    note: '',
  };
}

/** A case opened for a purpose, with nothing else said of it yet. */
export function blankCase(
  ids: { readonly id: string; readonly athleteId: string },
  number: string,
  purpose: Purpose,
  openedOn: string,
): CaseRecord {
  return {
    ...ids,
    number,
    purpose,
    openedOn,
    practitioner: '',
    question: '',
    addressee: '',
    urgency: null,
    urgencyReason: '',
    note: '',
    isInvented: false,
    archivedOn: null,
  };
}
