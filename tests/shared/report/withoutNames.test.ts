import { expect, test } from 'vitest';
import { z } from 'zod';
import type { OwnMovement } from '../../../shared/model/ownMovement.ts';
import { line, text } from '../../../shared/model/parts.ts';
import { KINDS, RECORDS } from '../../../shared/model/records.ts';
import { caseData, typedIn, withoutNames } from '../../../shared/report/caseData.ts';
import { redactionFor } from '../../../shared/report/steps/redact.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { aCopy, anItem } from '../../support/ownBattery.ts';
import { sampleCase, sampleId } from '../../support/sampleCase.ts';

// What data without names must not hold is a promise of the program (design, "private by default"), not a published value.

const NAME = 'Nora Quist';
const says = `As ${NAME} does it, and QUIST alone`;
const [rule] = SHIPPED_RULES.filter(({ drill }) => drill !== null);

const movement: OwnMovement = {
  id: sampleId(801),
  caseId: sampleId(1),
  label: says,
  sport: says,
  events: [{ id: 'touch', label: says, means: says }],
  phases: [{ id: 'swing', label: says, startsAt: 'touch', endsAt: 'touch', means: says }],
  checkpoints: [{ phase: 'swing', measure: 'knee.flexion' }],
  aimsAtTarget: false,
  isAirborneSkill: false,
};

function namedThroughout() {
  const file = sampleCase();
  const battery = {
    ...aCopy(),
    label: says,
    items: [...aCopy().items, anItem({ label: says, caution: says, instructions: [says] })],
  };
  return {
    ...file,
    athlete: { ...file.athlete, name: NAME, isPseudonym: false, goals: says },
    screeningSessions: file.screeningSessions.map((session) => ({ ...session, battery })),
    ownMovements: [movement],
    ownRules: [
      {
        id: sampleId(802),
        caseId: sampleId(1),
        isOn: true,
        rule: {
          ...JSON.parse(JSON.stringify(rule)),
          wording: { athlete: { finding: says, intervention: says } },
          sources: [{ cite: says, status: 'convention' }],
          defersTo: [says],
        },
      },
    ],
  };
}

test('data without names hold no part of the name: not in the words of a battery, a movement or a rule of one’s own either', () => {
  const file = namedThroughout();
  const data = withoutNames(caseData(file), redactionFor(file.athlete));
  expect(JSON.stringify(file)).toMatch(/nora/i);
  expect(JSON.stringify(data)).not.toMatch(/nora|quist/i);
  expect(data.ownRules[0]?.rule['id']).toBe(rule?.id);
  expect(data.ownMovements[0]?.phases[0]).toMatchObject({ id: 'swing', startsAt: 'touch', endsAt: 'touch' });
});

test('what is typed deeper down is looked through for what is left of a name', () => {
  const { ownRules, ownMovements } = namedThroughout();
  for (const [kind, record] of [
    ['ownRule', ownRules[0]],
    ['ownMovement', ownMovements[0]],
  ] as const) {
    if (record === undefined) throw new Error('no record');
    expect(typedIn(kind, record).map(({ text: typed }) => typed)).toContainEqual(expect.stringContaining(NAME));
  }
});

test('no kind of record has words deeper down that nobody redacts', () => {
  const redacted = ['screeningSession.battery', 'jumpTrial.force', 'ownMovement.events', 'ownMovement.phases'];
  const ofTheProgram = ['movementTrial.ballId', 'enteredMeasure.phase'];
  const has = (schema: unknown): boolean => {
    if (schema === line || schema === text) return true;
    if (schema instanceof z.ZodObject) return Object.values(schema.shape).some(has);
    if (schema instanceof z.ZodArray) return has(schema.element);
    if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) return has(schema.unwrap());
    if (schema instanceof z.ZodUnion) return schema.options.some(has);
    return false;
  };
  const deep = KINDS.flatMap((kind) =>
    Object.entries<unknown>(RECORDS[kind].schema.shape).flatMap(([field, schema]) =>
      schema !== line && schema !== text && has(schema) ? [`${kind}.${field}`] : [],
    ),
  );
  expect(deep.toSorted()).toEqual([...redacted, ...ofTheProgram].toSorted());
});
