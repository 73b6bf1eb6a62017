import { describe, expect, test } from 'vitest';
import { assessCase } from '../../../shared/assess/assessCase.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { sampleCase, sampleId } from '../../support/sampleCase.ts';

// The mistakes are those of ../shared/reference/mechanics.md, section 6, by their numbers there. What each check says
// is tested with the kernel; here only that a case asks it, of the right record.

const checksOf = (change: (file: CaseFile) => Partial<CaseFile>) => {
  const file = sampleCase();
  return assessCase({ ...file, ...change(file) }).checks;
};
const one = (checks: ReturnType<typeof checksOf>, id: string, about?: string) =>
  checks.find((check) => check.id === id && (about === undefined || check.about === about));
/** Key of the fact that a record became. */
const fact = (measure: string, n: number, phase = '') => `${measure}/${sampleId(n)}/${phase}/none`;

const typed = (
  measureId: string,
  valueSi: number,
  trialId: string | null = null,
): CaseFile['enteredMeasures'][number] => ({
  id: sampleId(60),
  caseId: sampleId(1),
  trialId,
  measureId,
  phase: null,
  side: 'none',
  takenOn: '2026-11-18',
  valueSi,
  uSi: null,
  flag: null,
  note: '',
});

const weight = (newtons: number) =>
  one(
    checksOf((file) => ({
      athlete: { ...file.athlete, massKg: 72 },
      enteredMeasures: [typed('body.weight', newtons)],
    })),
    'weight-as-mass-times-ten',
  );

test('mistake 1: 720 N for 72 kg is questioned, 706 N is not', () => {
  expect(weight(720)).toMatchObject({ verdict: 'questioned', about: fact('body.weight', 60) });
  expect(weight(706)).toMatchObject({ verdict: 'fine' });
});

test('mistake 4: body weight as the force needed is questioned', () => {
  const checks = checksOf((file) => ({
    athlete: { ...file.athlete, massKg: 72 },
    enteredMeasures: [typed('jump.forceToLeave', 706)],
  }));
  expect(one(checks, 'body-weight-as-force-needed')).toMatchObject({
    verdict: 'questioned',
    about: fact('jump.forceToLeave', 60),
  });
});

describe('mistake 2: slowed seconds', () => {
  test('1.2 s in the air is questioned, of that jump', () => {
    const checks = checksOf((file) => ({
      jumpTrials: file.jumpTrials.map((trial, i) => (i === 1 ? { ...trial, flightTimeS: 1.2 } : trial)),
    }));
    expect(one(checks, 'slowed-seconds', fact('jump.flightTime', 22))).toMatchObject({ verdict: 'questioned' });
  });

  test('a ball that falls with 2.45 m/s² is questioned: four times too slow in time squared, twice in time', () => {
    const checks = checksOf((file) => ({
      enteredMeasures: [{ ...typed('ball.gravityFound', 2.45, sampleId(30)), uSi: 0.05 }],
      trialEvents: file.trialEvents.filter((event) => event.event !== 'landing'),
    }));
    const check = one(checks, 'slowed-seconds', fact('ball.gravityFound', 60));
    expect(check?.verdict).toBe('questioned');
    expect(check?.sentence).toContain('2.0 times');
  });
});

describe('mistake 3: unlike heights', () => {
  test('a rise in the skill over a standing jump is questioned', () => {
    const checks = checksOf(() => ({
      enteredMeasures: [
        { ...typed('com.riseInSkill', 0.42, sampleId(30)), id: sampleId(61) },
        typed('jump.shareOfStanding', 0.9),
      ],
    }));
    expect(one(checks, 'unlike-heights-compared')).toMatchObject({
      verdict: 'questioned',
      about: fact('jump.shareOfStanding', 60),
    });
  });

  test('two tests with the arms held otherwise are questioned, of the later one', () => {
    const checks = checksOf((file) => {
      const [test] = file.jumpTests;
      const [trial] = file.jumpTrials;
      if (test === undefined || trial === undefined) throw new Error('the sample jumps');
      return {
        jumpTests: [{ ...test, id: sampleId(90), heldOn: '2026-09-01', arms: 'free' }, test],
        jumpTrials: [{ ...trial, id: sampleId(92), testId: sampleId(90) }, ...file.jumpTrials],
      };
    });
    expect(one(checks, 'unlike-heights-compared', fact('jump.height.flightTime', 20))).toMatchObject({
      verdict: 'questioned',
    });
  });
});

test('mistake 14: a ball released below least speed is questioned', () => {
  const checks = checksOf(() => ({
    enteredMeasures: [
      { ...typed('ball.releaseSpeed', 4.39, sampleId(30)), id: sampleId(61), uSi: 0.05 },
      { ...typed('ball.leastSpeed', 5.82, sampleId(30)), id: sampleId(62), uSi: 0.05 },
    ],
  }));
  expect(one(checks, 'impossible-release')).toMatchObject({
    verdict: 'questioned',
    about: fact('ball.releaseSpeed', 61),
  });
});

test('a release angle without a target is questioned', () => {
  const checks = checksOf((file) => ({
    movementTrials: file.movementTrials.map((trial) => ({ ...trial, targetDistanceM: null })),
    enteredMeasures: [typed('ball.releaseAngle', 0.9, sampleId(30))],
  }));
  expect(one(checks, 'release-angle-without-target')).toMatchObject({ verdict: 'questioned' });
});

test('a case that states nothing is asked nothing', () => {
  const checks = checksOf(() => ({ jumpTests: [], jumpTrials: [], movementTrials: [], trialEvents: [] }));
  expect(checks).toEqual([]);
});
