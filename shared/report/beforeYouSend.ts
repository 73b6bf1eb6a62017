import type { Assessment } from '../assess/assessment.ts';
import { unstableShoulders } from '../assess/classifyInstability.ts';
import { judgeShoulder } from '../assess/judgeShoulder.ts';
import { standingOf } from '../assess/standing.ts';
import { counted } from '../format/number.ts';
import { TIER_WORDS } from '../knowledge/shoulder/words.ts';
import { SHOULDER_FLAGS } from '../model/shoulder.ts';
import type { CaseFile } from '../model/records.ts';
import { fieldWords, KIND_WORDS } from '../model/words.ts';
import { DATA_KINDS, dataOf, redactTyped, typedIn } from './caseData.ts';
import type { ReportKind } from './compose.ts';
import { isSooner } from './parts/classification.ts';
import { namesOf, redactionFor } from './steps/redact.ts';

/**
 * What a practitioner should look at before a report leaves the house, as sentences. Empty: nothing is left to see to.
 * Says what; never prevents.
 */
export function beforeYouSend(
  file: CaseFile,
  assessment: Assessment,
  kind: ReportKind,
  deidentify: boolean = kind === 'study',
): string[] {
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
    ...(deidentify ? namesThatRemain(file) : []),
    ...unprintable(file),
    ...(kind === 'referral' ? [...soonerThanStated(file), ...referralEssentials(file)] : []),
  ];
}

/** Where the red flags on record ask for more haste than the letter does. */
function soonerThanStated(file: CaseFile): string[] {
  return unstableShoulders(file).flatMap((injury) => {
    const tier = judgeShoulder(file, injury)?.urgency.tier;
    return tier !== undefined && isSooner(tier, file.case.urgency)
      ? [`By the answers recorded the shoulder is to be seen sooner than the letter says: ${TIER_WORDS[tier]}.`]
      : [];
  });
}

/** Letters of a script that the typefaces of the report do not hold: they come out as empty boxes. */
const NOT_HELD =
  /[^\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Common}\p{Script=Inherited}]/u;

function unprintable(file: CaseFile): string[] {
  const places = DATA_KINDS.flatMap((kind) =>
    dataOf(file, kind).flatMap((record) =>
      typedIn(kind, record).flatMap(({ field, text }) =>
        NOT_HELD.test(text) ? [`${fieldWords(field)} of the ${KIND_WORDS[kind]}`] : [],
      ),
    ),
  );
  return [...new Set(places)].map(
    (where) => `The report’s typeface lacks letters written here, and prints empty boxes for them: ${where}.`,
  );
}

/**
 * Where a part of the athlete's name is left after it was taken out: inside a longer word, in the name of a file, in the
 * caption of a still. What cannot be found by machine, such as nicknames and clubs, is asked for.
 */
function namesThatRemain(file: CaseFile): string[] {
  const { athlete } = file;
  if (athlete.isPseudonym || athlete.name.trim() === '') return [];
  const parts = namesOf(athlete.name).map((part) => part.toLowerCase());
  const clean = redactTyped(file, redactionFor(athlete));
  const places = DATA_KINDS.flatMap((kind) =>
    dataOf(clean, kind).flatMap((record) =>
      typedIn(kind, record).map(({ field, text }) => ({
        where: `${fieldWords(field)} of the ${KIND_WORDS[kind]}`,
        text,
      })),
    ),
  );
  const fileNames = file.media.map(({ fileName }) => ({ where: `file name “${fileName}”`, text: fileName }));
  const found = [...places, ...fileNames].filter(({ text }) => parts.some((part) => text.toLowerCase().includes(part)));
  return [
    ...[...new Set(found.map(({ where }) => where))].map((where) => `A part of the athlete’s name remains: ${where}.`),
    'The athlete is recorded by name. It is taken out wherever it was typed; read once more for nicknames, clubs and dates.',
    ...(file.stills.length > 0 && athlete.consentToImages === true ? ['The stills may show the athlete’s face.'] : []),
  ];
}

/** What a referral letter needs before it can be called final. */
export function referralEssentials(file: CaseFile): string[] {
  const { case: record, athlete, injuries } = file;
  const needs: [boolean, string][] = [
    [record.addressee === '', 'Addressee.'],
    [record.urgency === null, 'Urgency.'],
    [record.urgency !== null && record.urgencyReason === '', 'The reason for the urgency.'],
    [record.question === '', 'One clear question.'],
    [athlete.birthDate === null, 'Birth date.'],
    [record.practitioner === '', 'Name of the referring practitioner.'],
    [record.practitionerContact === '', 'How the practitioner can be reached.'],
    [record.consentToReferral !== true, 'Consent to this letter.'],
    [athlete.hasRedFlags === null, 'Health questions asked and answered.'],
    [athlete.medicines === '', 'Medicines, or that there are none.'],
    [athlete.allergies === '', 'Allergies, or that there are none.'],
    [record.triedSoFar === '', 'What has been tried.'],
    [injuries.length === 0, 'The injury or complaint.'],
    [injuries.some((injury) => injury.onset === null), 'Dates of all injuries.'],
    ...unstableShoulders(file).flatMap((injury): [boolean, string][] => {
      const ofInjury = ({ injuryId }: { readonly injuryId: string }) => injuryId === injury.id;
      const records = file.shoulderRecords.filter(ofInjury);
      return [
        [!file.instabilityEvents.some(ofInjury), 'The dated events of the unstable shoulder.'],
        [!file.neurovascularChecks.some(ofInjury), 'Nerves and vessels of the unstable shoulder.'],
        [
          !records.some((one) => SHOULDER_FLAGS.every((flag) => one[flag] !== null)),
          'Every red flag of the unstable shoulder answered.',
        ],
        [!records.some((one) => one.wasImaged !== null), 'Whether the unstable shoulder was imaged.'],
      ];
    }),
  ];
  return needs.flatMap(([isMissing, what]) => (isMissing ? [what] : []));
}
