import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { CASE_FILE_SCHEMA } from '../../../shared/exchange/caseFileSchema.ts';
import { sampleCase } from '../../support/sampleCase.ts';

const SAMPLE = sampleCase();

/** A general validator, which knows nothing of ours; formats are left to ours. */
const validate = new Ajv2020({ strict: false, validateFormats: false, allErrors: true }).compile(
  CASE_FILE_SCHEMA as object,
);

test('the published schema of a case takes a whole case, by a second validator', () => {
  expect([validate(SAMPLE), validate.errors]).toEqual([true, null]);
});

test.each([
  ['a record of no known field', { ...SAMPLE, extra: 1 }],
  ['a mass that is a text', { ...SAMPLE, athlete: { ...SAMPLE.athlete, massKg: '72' } }],
  ['a mass of nothing', { ...SAMPLE, athlete: { ...SAMPLE.athlete, massKg: 0 } }],
  ['no list of injuries', { ...SAMPLE, injuries: undefined }],
  ['an unknown purpose', { ...SAMPLE, case: { ...SAMPLE.case, purpose: 'audit' } }],
])('and refuses %s', (_what, broken) => {
  expect(validate(JSON.parse(JSON.stringify(broken)))).toBe(false);
});
