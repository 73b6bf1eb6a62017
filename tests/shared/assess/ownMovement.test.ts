import { expect, test } from 'vitest';
import { assessCase } from '../../../shared/assess/assessCase.ts';
import { NO_RULES } from '../../../shared/assess/checkRuled.ts';
import { movementOf, movementsOf } from '../../../shared/assess/movementOf.ts';
import type { OwnMovement } from '../../../shared/model/ownMovement.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { sampleCase } from '../../support/sampleCase.ts';

const OWN: OwnMovement = {
  id: '00000000-0000-4000-8000-000000000777',
  caseId: sampleCase().case.id,
  label: 'Turn and push',
  sport: 'handball',
  events: [
    { id: 'take-off', label: 'Take-off', means: '' },
    { id: 'own-turn', label: 'Turn', means: '' },
    { id: 'landing', label: 'Landing', means: '' },
  ],
  phases: [
    { id: 'rise', label: 'Rise', startsAt: 'take-off', endsAt: 'own-turn', means: '' },
    { id: 'open', label: 'Open', startsAt: 'own-turn', endsAt: '', means: '' },
  ],
  checkpoints: [
    { phase: 'rise', measure: 'trunk.lean' },
    { phase: 'open', measure: 'knee.flexPeak' },
  ],
  aimsAtTarget: false,
  isAirborneSkill: true,
};

/** The sample's trial as one of the own movement, in the air from 0.2 s to 0.5 s. */
function ownCase(): CaseFile {
  const file = sampleCase();
  const trial = file.movementTrials[0];
  if (trial === undefined) throw new Error('the sample has a trial');
  const event = (n: number, name: string, timeS: number) =>
    ({
      id: `00000000-0000-4000-8000-00000000088${n}`,
      trialId: trial.id,
      event: name,
      timeS,
      uS: null,
      origin: 'by-hand',
    }) as const;
  return {
    ...file,
    ownMovements: [OWN],
    movementTrials: [{ ...trial, movementId: OWN.id }],
    trialEvents: [event(1, 'take-off', 0.2), event(2, 'own-turn', 0.5)],
  };
}

test('an own movement can be chosen like a shipped one, and is the same object while it is not edited', () => {
  const file = ownCase();
  expect(movementsOf(file).at(-1)?.label).toBe('Turn and push');
  expect(movementOf(file, OWN.id)).toBe(movementOf(file, OWN.id));
  expect(movementOf(file, 'handball-jump-throw')?.label).toBe('Handball jump throw');
  expect(movementOf({ ownMovements: [] }, OWN.id)).toBeNull();
});

test('a phase without both its instants is left out, with what was to be measured in it', () => {
  const movement = movementOf(ownCase(), OWN.id);
  expect(movement?.phases.map(({ id }) => id)).toEqual(['rise']);
  expect(movement?.checkpoints).toEqual([{ phase: 'rise', measure: 'trunk.lean' }]);
});

test('definition: its phases last from one instant to the next, in real seconds', () => {
  const { facts } = assessCase(ownCase());
  const lasted = facts.find((fact) => fact.measure === 'phase.duration' && fact.phase === 'rise');
  if (lasted?.value.kind !== 'number' || !isKnown(lasted.value.reading)) throw new Error('not known');
  expect(lasted.value.reading.value).toBeCloseTo(0.3, 12);
});

const said = (file: CaseFile, rules = SHIPPED_RULES) =>
  assessCase(file, rules).checks.filter(({ id }) => id === NO_RULES);

test('where no rule knows the movement, the case says so, and says it no more once one does', () => {
  expect(said(ownCase())[0]).toMatchObject({ verdict: 'cannot tell', about: sampleCase().movementTrials[0]?.id });
  expect(said(sampleCase())).toEqual([]);
  const [rule] = SHIPPED_RULES.filter((one) => one.movement === 'handball-jump-throw');
  if (rule === undefined) throw new Error('there are rules for the jump throw');
  expect(said(ownCase(), [{ ...rule, id: 'own/one', movement: OWN.id }])).toEqual([]);
});
