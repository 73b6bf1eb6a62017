import { asymmetryUnnamed } from '../kernel/check/asymmetryUnnamed.ts';
import { asymmetryWithinVariation } from '../kernel/check/asymmetryWithinVariation.ts';
import { bodyWeightAsForceNeeded } from '../kernel/check/bodyWeightAsForceNeeded.ts';
import { bodyWeightNotSubtracted } from '../kernel/check/bodyWeightNotSubtracted.ts';
import { degreesAsRadians } from '../kernel/check/degreesAsRadians.ts';
import { heightWithoutTheEighth } from '../kernel/check/heightWithoutTheEighth.ts';
import { metresInCentimetreEquation } from '../kernel/check/metresInCentimetreEquation.ts';
import { peakVelocityAsTakeoff } from '../kernel/check/peakVelocityAsTakeoff.ts';
import { powerBeyondBand } from '../kernel/check/powerBeyondBand.ts';
import { strengthIndicesMixed } from '../kernel/check/strengthIndicesMixed.ts';
import { weightAsMassTimesTen } from '../kernel/check/weightAsMassTimesTen.ts';
import { measureById, possibleRangeSi } from '../knowledge/measures/index.ts';
import type { CaseFile } from '../model/records.ts';
import type { EnteredMeasure } from '../model/trial.ts';
import type { CaseCheck, Fact } from './assessment.ts';
import { compared, contentOne, factKeyOf, hasNumber, readingOf } from './checkedFacts.ts';

/** A number that the author of the case worked out and typed in, with what it may be held against. */
interface Stated {
  readonly value: number;
  readonly entered: EnteredMeasure;
  readonly file: CaseFile;
  readonly facts: readonly Fact[];
  readonly about: string;
}

/** Numbers typed into a case, held against what its records give. Those of a filmed trial: checkTrial. */
export function checkStated(file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  const each = file.enteredMeasures.flatMap((entered): CaseCheck[] => {
    const { id, measureId, valueSi: value } = entered;
    if (value === null) return [];
    const stated = { value, entered, file, facts, about: factKeyOf(facts, id, measureId) };
    return [...impossibleAngle(stated), ...(CHECKS[measureId]?.(stated) ?? [])];
  });
  return [...each, ...sidesOf(file, facts)];
}

const NOTHING = { unknown: 'not recorded' } as const;

const CHECKS: Readonly<Record<string, (stated: Stated) => CaseCheck[]>> = {
  'body.weight': ({ value, file, about }) => [
    weightAsMassTimesTen({ statedWeightN: value, massKg: file.athlete.massKg, about }),
  ],
  'jump.forceToLeave': ({ value, facts, about }) => [
    bodyWeightAsForceNeeded({
      statedForceN: value,
      weight: readingOf(facts, 'body.weight', 'N'),
      height: readingOf(facts, 'jump.height.force', 'm'),
      pushOffDistance: readingOf(facts, 'jump.countermovementDepth', 'm'),
      about,
    }),
  ],
  'jump.shareOfStanding': ({ facts, about }) => {
    const rise = facts.find((fact) => fact.measure === 'com.riseInSkill');
    const jump = facts.findLast((fact) => fact.measure.startsWith('jump.height.') && fact.from.kind === 'jumpTest');
    return compared(rise, jump, about);
  },
  'jump.takeoffVelocity': ({ value, file, facts, about }) => {
    const forces = file.jumpTrials.filter(({ force }) => force !== null);
    return [
      bodyWeightNotSubtracted({
        takeoffVelocityMPerS: value,
        integratedS: forces[0]?.force?.timeToTakeoffS.value ?? null,
        about,
      }),
      ...contentOne(
        forces.map(({ id }) =>
          peakVelocityAsTakeoff({
            statedMPerS: value,
            takeoff: readingOf(
              facts.filter((fact) => fact.from.id === id),
              'jump.takeoffVelocity',
              'm/s',
            ),
            peakMPerS: null,
            about,
          }),
        ),
      ),
    ];
  },
  'jump.height.flightTime': ({ value, file, about }) => {
    const typed = file.enteredMeasures.filter(({ measureId }) => measureId === 'jump.flightTime');
    const times = [...typed.map(({ valueSi }) => valueSi), ...file.jumpTrials.map(({ flightTimeS }) => flightTimeS)];
    const known = times.filter((time) => time !== null).toSorted((a, b) => b - a);
    return contentOne(known.map((flightTimeS) => heightWithoutTheEighth({ statedHeightM: value, flightTimeS, about })));
  },
  'jump.peakPower': power,
  'jump.peakPowerEstimated': (stated) => [
    ...contentOne(
      stated.facts
        .filter((fact) => fact.measure.startsWith('jump.height.') && fact.key !== stated.about && hasNumber(fact))
        .map((fact) =>
          metresInCentimetreEquation({
            statedPowerW: stated.value,
            height: readingOf([fact], fact.measure, 'm'),
            massKg: stated.file.athlete.massKg,
            about: stated.about,
          }),
        )
        .toSorted((a, b) => Number(b.verdict === 'questioned') - Number(a.verdict === 'questioned')),
    ),
    ...power(stated),
  ],
  'jump.rsi': ({ value, file, facts, about }) => {
    const modified = readingOf(facts, 'jump.rsiModified', 'm/s');
    const drops = file.jumpTrials.filter(({ contactTimeS }) => contactTimeS !== null);
    const asked = drops.map(({ id }) => {
      const own = facts.filter((fact) => fact.from.id === id);
      const [index, ratio] = [readingOf(own, 'jump.rsi', 'm/s'), readingOf(own, 'jump.rsr', '1')];
      return strengthIndicesMixed({ statedIndex: value, index, ratio, modified, about });
    });
    const alone = strengthIndicesMixed({ statedIndex: value, index: NOTHING, ratio: NOTHING, modified, about });
    return contentOne(asked.length > 0 ? asked : [alone]);
  },
  // The measure is defined by its formula; what remains open is which side is weaker.
  'force.asymmetry': ({ value, entered, about }) => [
    asymmetryUnnamed({
      stated: value,
      formula: 'percentage-difference',
      weakerSide: entered.side,
      sides: null,
      about,
    }),
  ],
};

function power({ value, file, about }: Stated): CaseCheck[] {
  return [powerBeyondBand({ statedPowerW: value, massKg: file.athlete.massKg, about })];
}

/** An angle that no body has: asked only where it was refused as a fact, so that the reason stands beside it. */
function impossibleAngle({ value, entered, about }: Stated): CaseCheck[] {
  if (measureById(entered.measureId)?.unit !== 'rad') return [];
  const range = possibleRangeSi(entered.measureId);
  if (range === null || (value >= range[0] && value <= range[1])) return [];
  const greatest = Math.max(Math.abs(range[0]), Math.abs(range[1]));
  return [degreesAsRadians({ stated: value, expected: NOTHING, greatest, about })];
}

/** Both sides of one measure typed on one day, trial by trial. */
function sidesOf(file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  const sided = file.enteredMeasures.filter(
    ({ trialId, side, valueSi }) => trialId === null && side !== 'none' && valueSi !== null,
  );
  const groups = Map.groupBy(sided, ({ measureId, takenOn }) => `${measureId} ${takenOn}`);
  return [...groups.values()].flatMap((group): CaseCheck[] => {
    const [first] = group;
    const unit = first === undefined ? null : (measureById(first.measureId)?.unit ?? null);
    const of = (side: string) => group.flatMap((one) => (one.side === side ? [one.valueSi as number] : []));
    const [left, right] = [of('left'), of('right')];
    if (first === undefined || unit === null || left.length === 0 || right.length === 0) return [];
    const about = factKeyOf(facts, first.id, first.measureId);
    return [asymmetryWithinVariation({ formula: 'percentage-difference', left, right, unit, about })];
  });
}
