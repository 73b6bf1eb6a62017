import { angleFromForearm } from '../kernel/check/angleFromForearm.ts';
import { degreesAsRadians } from '../kernel/check/degreesAsRadians.ts';
import { dragIgnored } from '../kernel/check/dragIgnored.ts';
import { entryTakenAsRelease } from '../kernel/check/entryTakenAsRelease.ts';
import { eventsWithoutUncertainty } from '../kernel/check/eventsWithoutUncertainty.ts';
import { fortyFiveIsBest } from '../kernel/check/fortyFiveIsBest.ts';
import { hipAsCentreOfMass } from '../kernel/check/hipAsCentreOfMass.ts';
import { imageYDown } from '../kernel/check/imageYDown.ts';
import { impossibleRelease } from '../kernel/check/impossibleRelease.ts';
import { insideAngleAsFlexion } from '../kernel/check/insideAngleAsFlexion.ts';
import { ratesSwapped } from '../kernel/check/ratesSwapped.ts';
import { releaseAngleWithoutTarget } from '../kernel/check/releaseAngleWithoutTarget.ts';
import { scaleInAnotherPlane } from '../kernel/check/scaleInAnotherPlane.ts';
import { segmentTurned } from '../kernel/check/segmentTurned.ts';
import { slowedSeconds } from '../kernel/check/slowedSeconds.ts';
import { speedFromDistanceOverTime } from '../kernel/check/speedFromDistanceOverTime.ts';
import { dragFactor } from '../kernel/flight/dragFactor.ts';
import { derive } from '../kernel/quantity/derive.ts';
import { ballById, BALLS } from '../knowledge/balls/index.ts';
import { measureById } from '../knowledge/measures/index.ts';
import type { Movement } from '../knowledge/movement.ts';
import type { CaseFile } from '../model/records.ts';
import type { EnteredMeasure, MovementTrial } from '../model/trial.ts';
import { isKnown, measured, type Reading, type Source } from '../quantity.ts';
import type { Unit } from '../units.ts';
import type { CaseCheck, Fact } from './assessment.ts';
import { factKeyOf, readingOf } from './checkedFacts.ts';
import { measuredTrial } from './measuredTrial.ts';
import { movementOf } from './movementOf.ts';
import { crownAboveFeet, forearmAtRelease, hipRise } from './trialPlaces.ts';

interface Seen {
  readonly trial: MovementTrial;
  readonly movement: Movement | null;
  readonly file: CaseFile;
  /** What the trial says, typed values in place of computed ones. */
  readonly own: readonly Fact[];
  /** The fact of a measure, for `about`. */
  readonly about: (measure: string) => string;
  /** What the points give, whatever was typed. */
  readonly computed: <U extends Unit>(measure: string, unit: U, phase?: string | null, side?: string) => Reading<U>;
}

/** What one filmed trial could have got wrong: its clock and axes, its flight, and the numbers typed for it. */
export function checkTrial(trial: MovementTrial, file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  const own = facts.filter((fact) => fact.from.id === trial.id);
  if (own.length === 0) return [];
  const measures = measuredTrial(file, trial)?.measures ?? [];
  const seen: Seen = {
    trial,
    movement: movementOf(file, trial.movementId),
    file,
    own,
    about: (measure) => factKeyOf(own, trial.id, measure),
    computed: (measure, unit, phase = null, side = 'none') => {
      const fits = measures.filter(
        (one) =>
          one.measure === measure &&
          (phase === null || one.phase === phase) &&
          (side === 'none' || one.side === side) &&
          isKnown(one.reading) &&
          one.reading.unit === unit,
      );
      return (
        (fits[0]?.reading as Reading<typeof unit> | undefined) ?? { unknown: 'it is not computed from the points' }
      );
    },
  };
  const typed = file.enteredMeasures.filter(({ trialId, valueSi }) => trialId === trial.id && valueSi !== null);
  return [
    ...clock(seen),
    ...axes(seen),
    ...depths(seen),
    ...aim(seen),
    ...typed.flatMap((entered) => [...(TYPED[entered.measureId]?.(seen, entered) ?? []), ...typedAngle(seen, entered)]),
  ];
}

function clock({ trial, file, own, about }: Seen): CaseCheck[] {
  const rise = readingOf(own, 'com.riseInSkill', 'm');
  const events = file.trialEvents.filter(({ trialId }) => trialId === trial.id);
  const labels = movementOf(file, trial.movementId)?.events ?? [];
  return [
    slowedSeconds({
      flightTimeS: inTheAir(trial.id, file),
      riseM: isKnown(rise) ? rise.value : null,
      gravityFound: readingOf(own, 'ball.gravityFound', 'm/s2'),
      about: about('ball.gravityFound'),
    }),
    ...(trial.playbackRateHz === null
      ? []
      : [ratesSwapped({ captureRateHz: trial.captureRateHz, playbackRateHz: trial.playbackRateHz, about: trial.id })]),
    ...(events.length === 0
      ? []
      : [
          eventsWithoutUncertainty({
            events: events.map(({ event, uS }) => ({
              label: labels.find(({ id }) => id === event)?.label ?? event,
              uS,
            })),
            captureRateHz: trial.captureRateHz,
            about: trial.id,
          }),
        ]),
  ];
}

function inTheAir(trialId: string, { trialEvents }: CaseFile): number | null {
  const at = (event: string) => trialEvents.find((one) => one.trialId === trialId && one.event === event)?.timeS;
  const [off, down] = [at('take-off'), at('landing')];
  return off === undefined || down === undefined || down <= off ? null : down - off;
}

function axes({ trial, file, own, computed }: Seen): CaseCheck[] {
  const gravityFound = computed('ball.gravityFound', 'm/s2');
  const headAboveFeetM = crownAboveFeet(file, trial);
  const turns = own.filter((fact) => fact.measure === 'segment.outOfPlane');
  return [
    ...(isKnown(gravityFound) || headAboveFeetM !== null
      ? [imageYDown({ gravityFound, headAboveFeetM, about: trial.id })]
      : []),
    ...turns.flatMap(({ value, key }) =>
      value.kind === 'number' && isKnown(value.reading)
        ? [
            segmentTurned({
              turn: value.reading as Reading<'rad'>,
              segment: `the ${value.reading.working.name.split(': ')[1]?.replace(/ at (.*)$/, ' ($1)') ?? 'segment'}`,
              about: key,
            }),
          ]
        : [],
    ),
  ];
}

/** Asked where somebody has measured it; the plane is then corrected for it. */
function depths({ trial: { id, calibration } }: Seen): CaseCheck[] {
  if (calibration === null || calibration.kind === 'metres' || calibration.depth === undefined) return [];
  const { cameraM, bodyNearerM, ballNearerM, uM } = calibration.depth;
  const farthest = Math.abs(ballNearerM) > Math.abs(bodyNearerM) ? ballNearerM : bodyNearerM;
  return [
    scaleInAnotherPlane({
      cameraDistance: measured('D', 'camera to the scale', cameraM, 'm', uM),
      nearerBy: measured('d', 'movement nearer than the scale', farthest, 'm', uM),
      isCorrected: true,
      about: id,
    }),
  ];
}

/** Only where the movement aims at something and anything of the ball is known. */
function aim({ trial, movement, own, about, computed }: Seen): CaseCheck[] {
  if (movement === null || !movement.aimsAtTarget || !hasBall(own)) return [];
  const releaseAngle = readingOf(own, 'ball.releaseAngle', 'rad');
  const { distance, rise } = target(trial, own);
  const ball = trial.ballId === null ? null : ballById(trial.ballId);
  const usual = ball ?? BALLS.find(({ sport }) => sport === movement.sport) ?? null;
  const isFitted = isKnown(computed('ball.releaseSpeed', 'm/s'));
  return [
    impossibleRelease({
      releaseSpeed: readingOf(own, 'ball.releaseSpeed', 'm/s'),
      leastSpeed: readingOf(own, 'ball.leastSpeed', 'm/s'),
      entryAngle: readingOf(own, 'ball.entryAngle', 'rad'),
      mustFall: movement.checkpoints.some(({ measure }) => measure === 'ball.entryAngle'),
      about: about('ball.releaseSpeed'),
    }),
    releaseAngleWithoutTarget({
      releaseAngle,
      targetDistanceM: trial.targetDistanceM,
      targetHeightM: trial.targetHeightM,
      aimsAtTarget: movement.aimsAtTarget,
      about: about('ball.releaseAngle'),
    }),
    ...(isFitted
      ? [
          dragIgnored({
            angle: releaseAngle,
            distance,
            rise,
            drag: usual === null ? null : dragFactor(usual),
            isDragIncluded: ball !== null,
            about: about('ball.releaseSpeed'),
          }),
        ]
      : []),
  ];
}

/** Whether anything of the ball is known: a trial without one is not questioned about it. */
function hasBall(own: readonly Fact[]): boolean {
  return own.some(
    (fact) => fact.measure.startsWith('ball.') && fact.value.kind === 'number' && isKnown(fact.value.reading),
  );
}

const DEFINITION: Source = { cite: 'Definition', status: 'derived' };

/** Without an uncertainty it counts as exact, so that a check can still be made. */
function entered(symbol: string, name: string, value: number | null, u: number | null): Reading<'m'> {
  return value === null ? { unknown: 'the target is not entered' } : measured(symbol, name, value, 'm', u ?? 0);
}

/** Distance and rise from release to target, as far as they are known. */
function target(
  { targetDistanceM, targetHeightM, targetDistanceUM, targetHeightUM }: MovementTrial,
  own: readonly Fact[],
): { readonly distance: Reading<'m'>; readonly rise: Reading<'m'> } {
  const height = entered('y_t', 'height of the target', targetHeightM, targetHeightUM);
  const release = readingOf(own, 'ball.releaseHeight', 'm');
  return {
    distance: entered('d', 'distance to the target', targetDistanceM, targetDistanceUM),
    rise: !isKnown(height)
      ? height
      : !isKnown(release)
        ? { unknown: 'the height of release is not known' }
        : derive(
            { symbol: 'Δh', name: 'rise to the target', unit: 'm', formula: 'Δh = y_t - y_r', source: DEFINITION },
            { y_t: height, y_r: release },
            ({ y_t, y_r }) => y_t - y_r,
          ),
  };
}

/** Typed values held against the points, or against what follows from release and target. */
const TYPED: Readonly<Record<string, (seen: Seen, entered: EnteredMeasure) => CaseCheck[]>> = {
  'ball.releaseSpeed': ({ about, computed }, { valueSi }) => {
    const [speed, angle] = [computed('ball.releaseSpeed', 'm/s'), computed('ball.releaseAngle', 'rad')];
    if (!isKnown(speed) || !isKnown(angle)) return [];
    const horizontal = derive(
      {
        symbol: 'v_x',
        name: 'horizontal velocity at release',
        unit: 'm/s',
        formula: 'v_x = v cos θ',
        source: DEFINITION,
      },
      { v: speed, θ: angle },
      ({ v, θ }) => v * Math.cos(θ),
    );
    return [speedFromDistanceOverTime({ statedMPerS: valueSi, horizontal, speed, about: about('ball.releaseSpeed') })];
  },
  'ball.releaseAngle': ({ trial, file, about, computed }, { valueSi }) => [
    angleFromForearm({
      statedRad: valueSi,
      flight: computed('ball.releaseAngle', 'rad'),
      forearm: forearmAtRelease(file, trial),
      about: about('ball.releaseAngle'),
    }),
  ],
  'ball.entryAngle': ({ trial, own, about }, { valueSi }) => [
    entryTakenAsRelease({
      statedEntryRad: valueSi,
      releaseAngle: readingOf(own, 'ball.releaseAngle', 'rad'),
      ...target(trial, own),
      about: about('ball.entryAngle'),
    }),
  ],
  'ball.leastSpeedAngle': ({ trial, own, about }, { valueSi }) => [
    fortyFiveIsBest({ statedBestRad: valueSi, ...target(trial, own), about: about('ball.leastSpeedAngle') }),
  ],
  'com.riseInSkill': ({ trial, file, about, computed }, { valueSi }) => {
    const centreRise = computed('com.riseInSkill', 'm');
    if (!isKnown(centreRise)) return [];
    const hip = hipRise(file, trial);
    return [hipAsCentreOfMass({ statedRiseM: valueSi, hipRise: hip, centreRise, about: about('com.riseInSkill') })];
  },
};

/** Joints whose flexion is 180° less the angle inside. */
const HINGE = /^(knee|elbow)\.flex/;

function typedAngle({ own, computed }: Seen, { id, measureId, valueSi, phase, side }: EnteredMeasure): CaseCheck[] {
  if (measureById(measureId)?.unit !== 'rad') return [];
  const seen = computed(measureId, 'rad', phase, side);
  if (!isKnown(seen)) return [];
  const about = own.find((fact) => fact.key.includes(id))?.key ?? factKeyOf(own, id, measureId);
  return HINGE.test(measureId)
    ? [
        insideAngleAsFlexion({
          statedFlexionRad: valueSi,
          flexion: seen,
          joint: `the ${measureId.split('.')[0]}`,
          about,
        }),
      ]
    : [degreesAsRadians({ stated: valueSi, expected: seen, greatest: null, about })];
}
