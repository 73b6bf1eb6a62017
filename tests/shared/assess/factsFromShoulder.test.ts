import { expect, test } from 'vitest';
import { assessCase } from '../../../shared/assess/assessCase.ts';
import { factsFromShoulder } from '../../../shared/assess/factsFromShoulder.ts';
import { blankShoulderRecord } from '../../../shared/model/blank.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { SHOULDER_FLAGS, type ProvocationTest, type ShoulderRecord } from '../../../shared/model/shoulder.ts';
import { EXAMPLES } from '../../conformance/examples.ts';
import { sampleCase, sampleId } from '../../support/sampleCase.ts';

const NO_FLAG = Object.fromEntries(SHOULDER_FLAGS.map((flag) => [flag, false]));

function shoulder(record: Partial<ShoulderRecord>, tests: readonly Partial<ProvocationTest>[] = []): CaseFile {
  const file = sampleCase();
  return {
    ...file,
    screeningResults: [],
    shoulderRecords: [{ ...blankShoulderRecord({ id: sampleId(900), injuryId: sampleId(3) }), ...record }],
    provocationTests: tests.map((one, i) => ({
      ...EXAMPLES.provocationTest,
      id: sampleId(901 + i),
      injuryId: sampleId(3),
      ...one,
    })),
  };
}

const valueOf = (file: CaseFile, measure: string) =>
  factsFromShoulder(file).find((fact) => fact.measure === measure)?.value;

test('Mitchell 2005, BMJ 331:1124: one emergency sign in the record stops the case, whatever else is unanswered', () => {
  const { stops } = assessCase(shoulder({ vesselSigns: true }));
  expect(stops.map(({ words }) => words)).toContain('Stop and be seen: an emergency sign is recorded');
});

test('three answers: no needs all nine emergency signs answered; a slower flag is no emergency', () => {
  expect(valueOf(shoulder({ ...NO_FLAG, locking: true }), 'flag.emergency')).toEqual({ kind: 'flag', flag: false });
  expect(valueOf(shoulder({ ...NO_FLAG, openWound: null }), 'flag.emergency')).toMatchObject({ kind: 'unknown' });
  expect(valueOf(shoulder({}), 'flag.emergency')).toBeUndefined();
});

test('Lo 2004: apprehension is the answer, pain alone is not; the newest day counts', () => {
  const old = { testedOn: '2025-01-10', apprehension: true };
  const now = { testedOn: '2026-11-18', apprehension: false, painNrs: 7 };
  expect(valueOf(shoulder({}, [now]), 'flag.apprehension')).toEqual({ kind: 'flag', flag: false });
  expect(valueOf(shoulder({}, [old, now]), 'flag.apprehension')).toEqual({ kind: 'flag', flag: false });
  expect(valueOf(shoulder({}, [now, { ...now, apprehension: true }]), 'flag.apprehension')).toEqual({
    kind: 'flag',
    flag: true,
  });
  expect(valueOf(shoulder({}, [{ apprehension: null }]), 'flag.apprehension')).toBeUndefined();
});

test('Malfait 2017: six of nine signs at 23 years are one point over the cut-off of five', () => {
  const signs = {
    littleFingerLeft: true,
    littleFingerRight: true,
    thumbLeft: true,
    thumbRight: true,
    elbowLeft: true,
    elbowRight: true,
    kneeLeft: false,
    kneeRight: false,
    palmsToFloor: false,
  };
  expect(valueOf(shoulder(signs), 'hyper.beightonOverCut')).toMatchObject({ reading: { value: 1 } });
  expect(valueOf(shoulder({ ...signs, palmsToFloor: null }), 'hyper.beightonOverCut')).toBeUndefined();
});

test('a resolved shoulder says nothing', () => {
  const file = shoulder({ vesselSigns: true }, [{ apprehension: true }]);
  const injuries = file.injuries.map((injury) => ({ ...injury, status: 'resolved' as const }));
  expect(factsFromShoulder({ ...file, injuries })).toEqual([]);
});
