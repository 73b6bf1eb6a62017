import { expect, test } from 'vitest';
import { assessCase } from '../../../shared/assess/assessCase.ts';
import { summarise } from '../../../shared/assess/summarise.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { sampleCase } from '../../support/sampleCase.ts';

const assess = (change: (file: CaseFile) => Partial<CaseFile> = () => ({})) => {
  const file = sampleCase();
  return assessCase({ ...file, ...change(file) });
};
const words = (assessment: ReturnType<typeof assess>, section: string) =>
  assessment.sections.find((one) => one.section === section)?.words;

// What follows for the invented player of tests/support/sampleCase.ts, told by hand.

test('her spine says how far each section is', () => {
  const assessment = assess();
  expect(words(assessment, 'athlete')).toBe('complete');
  expect(words(assessment, 'injuries')).toBe('2 on file, 1 not cleared');
  expect(words(assessment, 'jumps')).toBe('3\u00a0trials in 1\u00a0test');
  // Her shoulder leaves out rotations, hands behind the back and touches; the squat overhead is in, having been done:
  // 1 + 2 clearing, 1 + 2 graded, 2 lunges, 1 squeeze, 2 hops.
  expect(words(assessment, 'screening')).toBe('8 of 11 entered');
});

const bare = (purpose: CaseFile['case']['purpose']) =>
  assess((file) => ({
    case: { ...file.case, purpose, question: '' },
    athlete: { ...file.athlete, massKg: null, statureM: null, dominantSide: null },
    jumpTests: [],
    jumpTrials: [],
  })).missing;

test('what the purpose asks decides what is missing', () => {
  expect(bare('intake')[0]).toBe('needs body mass');
  expect(bare('study')[0]).toBe('needs body mass, stature');
  expect(bare('referral')).toEqual([
    'needs dominant side',
    'needs the addressee',
    'needs the urgency',
    'needs the question asked',
  ]);
});

test('pain and a positive clearing test stop her, in words that say where, and lead back to the record', () => {
  const { stops } = assess();
  expect(stops.map((stop) => stop.words)).toEqual([
    'Stop and be seen: the clearing movement of the shoulder brought on pain, right',
    'Stop and be seen: pain 3 of 10 in raising the arm sideways, right',
  ]);
  expect(stops.every((stop) => stop.about.includes('00000000000d'))).toBe(true);
});

test('the shelf shows what is missing and every caution', () => {
  const summary = summarise(assess());
  expect(summary.cautions.slice(0, 2).every((one) => one.startsWith('Stop and be seen'))).toBe(true);
  expect(summary.missing.join(' ')).toContain('screening');
});

test('law: the same file gives the same assessment, and the file is left as it was', () => {
  const file = sampleCase();
  const before = structuredClone(file);
  expect(assessCase(file)).toEqual(assessCase(structuredClone(file)));
  expect(file).toEqual(before);
});

test('an empty case can be assessed: nothing is found, all is open', () => {
  const { findings, sections, stops } = assess((file) => ({
    athlete: { ...file.athlete, massKg: null, birthDate: null, referenceSex: null },
    injuries: [],
    screeningSessions: [],
    screeningResults: [],
    jumpTests: [],
    jumpTrials: [],
    movementTrials: [],
    trialEvents: [],
    enteredMeasures: [],
    findingDecisions: [],
  }));
  expect(stops).toEqual([]);
  expect(new Set(findings.map((one) => one.outcome))).toEqual(new Set(['not-assessed']));
  expect(sections.filter((one) => one.isRequired && one.isComplete)).toEqual([]);
});

test('no two findings share a key', () => {
  const keys = assess().findings.map((one) => one.key);
  expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
});
