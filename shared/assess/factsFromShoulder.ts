import { FLAG_TIERS } from '../kernel/shoulder/referralUrgency.ts';
import type { Injury } from '../model/injury.ts';
import type { CaseFile } from '../model/records.ts';
import { SHOULDER_FLAGS, type ShoulderRecord } from '../model/shoulder.ts';
import { measured } from '../quantity.ts';
import { asOf } from './asOf.ts';
import type { Fact } from './assessment.ts';
import { judgeShoulder } from './judgeShoulder.ts';
import { computed, makeFact, unknown } from './makeFact.ts';

const EMERGENCIES = SHOULDER_FLAGS.filter((flag) => FLAG_TIERS[flag] === 'emergency');

/** What the fuller record of a shoulder says to the rules: an emergency, apprehension, laxity. Resolved ones say nothing. */
export function factsFromShoulder(file: CaseFile): Fact[] {
  return file.injuries
    .filter(({ status }) => status !== 'resolved')
    .flatMap((injury) => {
      const record = file.shoulderRecords.find(({ injuryId }) => injuryId === injury.id);
      return [
        ...(record === undefined ? [] : emergency(record, file)),
        ...apprehension(file, injury),
        ...laxity(file, injury),
      ];
    });
}

/** One yes is enough; no needs every answer. */
function emergency(record: ShoulderRecord, file: CaseFile): Fact[] {
  const answers = EMERGENCIES.map((flag) => record[flag]);
  if (answers.every((answer) => answer === null)) return [];
  const value = answers.includes(true)
    ? ({ kind: 'flag', flag: true } as const)
    : answers.includes(null)
      ? unknown('not every red flag of the shoulder is answered')
      : ({ kind: 'flag', flag: false } as const);
  return [
    makeFact({
      measure: 'flag.emergency',
      value,
      from: { kind: 'shoulderRecord', id: record.id },
      provenance: 'from the red flags of the shoulder record',
      takenOn: record.examinedOn ?? asOf(file),
    }),
  ];
}

/** Of the newest day on which any provocation test was done: what an older day showed may have passed. */
function apprehension(file: CaseFile, injury: Injury): Fact[] {
  const tests = file.provocationTests.filter((test) => test.injuryId === injury.id && test.apprehension !== null);
  const days = tests.flatMap(({ testedOn }) => (testedOn === null ? [] : [testedOn])).toSorted();
  const newest = days.at(-1) ?? null;
  // A test without a day may be of today.
  const counted = tests.filter(({ testedOn }) => testedOn === null || testedOn === newest);
  const [said = null] = counted.toSorted((a, b) => Number(b.apprehension) - Number(a.apprehension));
  if (said === null) return [];
  return [
    makeFact({
      measure: 'flag.apprehension',
      value: { kind: 'flag', flag: said.apprehension === true },
      from: { kind: 'provocationTest', id: said.id },
      provenance: 'from the provocation tests of the shoulder record',
      takenOn: newest ?? asOf(file),
    }),
  ];
}

function laxity(file: CaseFile, injury: Injury): Fact[] {
  const judgement = judgeShoulder(file, injury);
  const record = file.shoulderRecords.find(({ injuryId }) => injuryId === injury.id);
  if (judgement === null || record === undefined) return [];
  const { points } = judgement.laxity;
  const { laxityCutoff } = judgement;
  if (points === null || laxityCutoff === null) return [];
  return [
    makeFact({
      measure: 'hyper.beightonOverCut',
      value: computed(() =>
        measured(
          'L',
          'laxity points less the cut-off',
          points - laxityCutoff,
          '{points}',
          'counted, signs as examined',
        ),
      ),
      from: { kind: 'shoulderRecord', id: record.id },
      provenance: `${points} of 9 signs, cut-off ${laxityCutoff} for the age`,
      takenOn: record.examinedOn ?? asOf(file),
    }),
  ];
}
