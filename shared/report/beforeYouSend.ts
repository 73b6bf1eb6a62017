import type { Assessment } from '../assess/assessment.ts';
import { standingOf } from '../assess/standing.ts';
import { counted } from '../format/number.ts';
import type { CaseFile } from '../model/records.ts';
import type { ReportKind } from './compose.ts';

/**
 * What a practitioner should look at before a report leaves the house, as sentences. Empty: nothing is left to see to.
 * Says what; never prevents.
 */
export function beforeYouSend(file: CaseFile, assessment: Assessment, kind: ReportKind): string[] {
  const undecided = assessment.findings.filter((finding) => {
    const { state } = standingOf(finding, file.findingDecisions);
    return state === 'to decide' || state === 'changed since';
  }).length;
  const { athlete } = file;
  return [
    ...assessment.checks.filter((check) => check.verdict === 'questioned').map((check) => check.sentence),
    ...(undecided === 0 ? [] : [`${counted(undecided, 'finding')} not yet decided on.`]),
    ...(athlete.consentOn === null ? ['Consent is not recorded.'] : []),
    ...(file.movementTrials.length > 0 && athlete.consentToImages !== true
      ? ['Consent to images is not recorded as given.']
      : []),
    ...(kind === 'study' && !athlete.isPseudonym
      ? [
          'The athlete is recorded by name. It is taken out of the study wherever it was typed; read it once more for nicknames, clubs and file names.',
        ]
      : []),
    ...(kind === 'referral' ? referralEssentials(file) : []),
  ];
}

/** What a referral letter needs before it can be called final. */
export function referralEssentials({ case: record, athlete, injuries }: CaseFile): string[] {
  const needs: [boolean, string][] = [
    [record.addressee === '', 'Addressee.'],
    [record.urgency === null, 'Urgency.'],
    [record.urgency !== null && record.urgencyReason === '', 'The reason for the urgency.'],
    [record.question === '', 'One clear question.'],
    [athlete.birthDate === null, 'Birth date.'],
    [record.practitioner === '', 'Name of the referring practitioner.'],
    [athlete.consentOn === null, 'Consent.'],
    [athlete.hasRedFlags === null, 'Health questions asked and answered.'],
    [injuries.length === 0, 'The injury or complaint.'],
    [injuries.some((injury) => injury.onset === null), 'Dates of all injuries.'],
  ];
  return needs.flatMap(([isMissing, what]) => (isMissing ? [what] : []));
}
