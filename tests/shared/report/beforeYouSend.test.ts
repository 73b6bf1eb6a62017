import { expect, test } from 'vitest';
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
});

test('a letter lacks addressee and urgency until they are given', () => {
  const file = sampleCase();
  expect(referralEssentials(file)).toEqual(['Addressee.', 'Urgency.']);
  const record = {
    ...file.case,
    addressee: 'Shoulder clinic',
    urgency: 'soon' as const,
    urgencyReason: 'second episode',
  };
  expect(referralEssentials({ ...file, case: record })).toEqual([]);
});
