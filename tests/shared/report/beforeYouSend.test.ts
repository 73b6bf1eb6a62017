import { expect, test } from 'vitest';
import { blankShoulderRecord } from '../../../shared/model/blank.ts';
import { beforeYouSend, referralEssentials } from '../../../shared/report/beforeYouSend.ts';
import { sampleAssessment, sampleCase } from '../../support/sampleCase.ts';

test('lists questioned numbers and findings not yet decided (8 findings; 2 decided, 2 with nothing to decide → 4)', () => {
  const list = beforeYouSend(sampleCase(), sampleAssessment(), 'client');
  expect(list).toContain('Two jump heights from different methods stand side by side; they may not be compared.');
  expect(list).toContain('4\u00a0findings not yet decided on.');
});

test('asks for consent, for consent to images, and for a second look at a study of a named athlete', () => {
  const file = sampleCase();
  const athlete = { ...file.athlete, consentOn: null, consentToImages: null, isPseudonym: false };
  const list = beforeYouSend({ ...file, athlete }, sampleAssessment(), 'study');
  expect(list).toContain('Consent is not recorded.');
  expect(list).toContain('Consent to images is not recorded as given.');
  expect(list.some((sentence) => sentence.includes('recorded by name'))).toBe(true);
  const nameless = beforeYouSend({ ...file, athlete: { ...athlete, name: '' } }, sampleAssessment(), 'study');
  expect(nameless.some((sentence) => sentence.includes('recorded by name'))).toBe(false);
});

test('a letter lacks what is not recorded, item by item, until it is given', () => {
  const file = sampleCase();
  const missing = referralEssentials(file);
  for (const what of ['Addressee.', 'Urgency.', 'Consent to this letter.', 'What has been tried.']) {
    expect(missing).toContain(what);
  }
  // A posterior instability, recovering: its events, nerves and vessels, red flags and imaging belong to the letter.
  expect(missing.filter((what) => what.includes('unstable shoulder'))).toHaveLength(4);
  const record = {
    ...file.case,
    addressee: 'Shoulder clinic',
    urgency: 'soon' as const,
    urgencyReason: 'second episode',
    practitionerContact: 'by telephone',
    consentToReferral: true,
    triedSoFar: 'Exercise for six weeks.',
  };
  const athlete = { ...file.athlete, medicines: 'None.', allergies: 'None.' };
  const injuries = file.injuries.filter(({ condition }) => !condition.endsWith('instability'));
  expect(referralEssentials({ ...file, case: record, athlete, injuries })).toEqual([]);
});

test('what is left of a name in a de-identified document is named: inside a word, in a file name, in the caption of a still', () => {
  const file = sampleCase();
  const named = {
    ...file,
    athlete: {
      ...file.athlete,
      name: 'Signe Strandskov',
      isPseudonym: false,
      goals: 'A Strandskovs goal. Signe said so.',
    },
    media: [
      {
        id: file.case.id,
        caseId: file.case.id,
        sha256: '0'.repeat(64),
        fileName: 'signe_throw.mp4',
        mediaType: 'video/mp4',
        sizeBytes: 1,
        proxyOf: null,
      },
    ],
  };
  const list = beforeYouSend(named, sampleAssessment(), 'study');
  expect(list).toContain('A part of the athlete’s name remains: goals of the athlete.');
  expect(list).toContain('A part of the athlete’s name remains: file name “signe_throw.mp4”.');
  expect(beforeYouSend(named, sampleAssessment(), 'client').some((one) => one.includes('remains'))).toBe(false);
  expect(beforeYouSend(file, sampleAssessment(), 'study').some((one) => one.includes('remains'))).toBe(false);
});

test('letters that no typeface of the report holds are named with their place; accents, Greek, Cyrillic, Hebrew and Arabic are held', () => {
  const file = sampleCase();
  const of = (name: string) =>
    beforeYouSend({ ...file, athlete: { ...file.athlete, name } }, sampleAssessment(), 'client').filter((one) =>
      one.includes('typeface'),
    );
  expect(of('山田 太郎')).toEqual([
    'The report’s typeface lacks letters written here, and prints empty boxes for them: name of the athlete.',
  ]);
  expect(of('Zoë Ångström-Łukasiewiczová, Ωμέγα, Юрий, שלום עולם, نور')).toEqual([]);
});

test('Mitchell 2005: vessel signs on record and “soon” in the letter are questioned before it is sent', () => {
  const file = sampleCase();
  const injuryId = file.injuries[0]?.id ?? '';
  const record = { ...blankShoulderRecord({ id: file.case.id, injuryId }), vesselSigns: true };
  const of = (urgency: 'soon' | 'emergency') =>
    beforeYouSend(
      { ...file, case: { ...file.case, urgency }, shoulderRecords: [record] },
      sampleAssessment(),
      'referral',
    ).filter((one) => one.includes('sooner than the letter says'));
  expect(of('soon')).toHaveLength(1);
  expect(of('emergency')).toEqual([]);
});
