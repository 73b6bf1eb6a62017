import type { CaseFile } from '../model/records.ts';
import type { SectionState } from './assessment.ts';
import { missingOfAthlete } from './sectionStates.ts';

/** What is still needed for the case's purpose, in words, in the order of the spine. */
export function missingWords(file: CaseFile, sections: readonly SectionState[]): string[] {
  const open = new Set(sections.filter((one) => one.isRequired && !one.isComplete).map((one) => one.section));
  const screening = sections.find((one) => one.section === 'screening');
  const words: string[] = [];
  if (open.has('athlete')) words.push(`needs ${missingOfAthlete(file).join(', ')}`);
  if (open.has('injuries')) words.push('needs the injury that is referred');
  if (open.has('screening')) words.push(`screening: ${screening?.words ?? ''}`);
  if (open.has('jumps')) words.push('needs a jump');
  if (open.has('trials')) words.push('needs a trial with events or values');
  if (file.case.purpose === 'referral') {
    if (file.case.addressee.trim() === '') words.push('needs the addressee');
    if (file.case.urgency === null) words.push('needs the urgency');
    if (file.case.question.trim() === '') words.push('needs the question asked');
  }
  return words;
}
