import { movementOf } from '../../assess/movementOf.ts';
import type { Fact } from '../../assess/assessment.ts';
import { measureTrial } from '../../kernel/trial/measureTrial.ts';
import type { Movement } from '../../knowledge/movement.ts';
import type { MovementTrial } from '../../model/trial.ts';
import { curves } from '../figures/curves.ts';
import { dragFactor } from '../../kernel/flight/dragFactor.ts';
import { ballById } from '../../knowledge/balls/index.ts';
import { ballPath } from '../figures/ballPath.ts';
import { isKnown, type Quantity } from '../../quantity.ts';
import type { Block } from '../blocks/block.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { right, table } from '../blocks/table.ts';
import { plain, quantityRuns, quiet, type Runs } from '../runs.ts';
import { GRADE_WORDS, SIDE_WORDS } from '../words.ts';
import type { Writing } from './writing.ts';

/** Every measure of the movement trials, phase by phase, with ± or the reason why it is not known. */
export function trialMeasures({ file, assessment }: Writing): Block[] {
  const blocks = file.movementTrials.flatMap((trial) => {
    const movement = movementOf(file, trial.movementId);
    const order = movement?.phases.map((phase) => phase.id) ?? [];
    const facts = assessment.facts
      .filter((fact) => fact.movement === trial.movementId && ofTrial(fact, trial.id, file))
      .toSorted((a, b) => order.indexOf(a.phase ?? '') - order.indexOf(b.phase ?? ''));
    if (facts.length === 0) return [];
    const rows = facts.map((fact) => [
      movement?.phases.find((phase) => phase.id === fact.phase)?.label ?? 'Whole',
      fact.label,
      SIDE_WORDS[fact.side],
      ...valueAndWhy(fact),
    ]);
    return [
      // The table first: it fills the page that a tall figure would leave empty.
      table(
        `${movement?.label ?? trial.movementId}, ${trial.label}`,
        ['Phase', 'Measure', 'Side', right('Value'), 'Remark'],
        rows,
      ),
      ...curvesOf(file, trial, movement),
      ...pathOf(facts, trial),
    ];
  });
  return blocks.length === 0 ? [paragraph('No measures of a filmed movement.')] : blocks;
}

/** A fact may come from the trial itself or from a record under it. */
function ofTrial(fact: Fact, trialId: string, file: Writing['file']): boolean {
  if (fact.from.id === trialId) return true;
  const under = [...file.landmarkTracks, ...file.trialEvents, ...file.enteredMeasures].find(
    (one) => one.id === fact.from.id,
  );
  return under?.trialId === trialId;
}

/** The ball's path to its target, where release and target are known. */
function pathOf(facts: readonly Fact[], { ballId, targetDistanceM, targetHeightM }: MovementTrial): Block[] {
  const of = (measure: string) => {
    const value = facts.find((fact) => fact.measure === measure)?.value;
    return value?.kind === 'number' && isKnown(value.reading) ? value.reading : null;
  };
  const [speed, angle, height] = [of('ball.releaseSpeed'), of('ball.releaseAngle'), of('ball.releaseHeight')];
  if (speed === null || angle === null || height === null || targetDistanceM === null || targetHeightM === null)
    return [];
  const ball = ballId === null ? null : ballById(ballId);
  const drawn = ballPath({
    speed: speed as Quantity<'m/s'>,
    angle: angle as Quantity<'rad'>,
    height: height as Quantity<'m'>,
    distanceM: targetDistanceM,
    targetHeightM,
    air: { drag: ball === null ? 0 : dragFactor(ball).value, lift: 0 },
  });
  return drawn === null ? [] : [drawn];
}

/** All curves that the landmarks of a trial give. */
function curvesOf(file: Writing['file'], trial: MovementTrial, movement: Movement | null): Block[] {
  const tracks = file.landmarkTracks.filter((track) => track.trialId === trial.id);
  const events = file.trialEvents.filter((event) => event.trialId === trial.id);
  if (movement === null || tracks.length === 0) return [];
  const { massKg, statureM, referenceSex } = file.athlete;
  const { series } = measureTrial({ trial, tracks, events, movement, massKg, statureM, referenceSex });
  const drawn = curves(series, events, movement);
  return drawn === null ? [] : [drawn];
}

/** The value, and beside it why there is none or why it has no uncertainty. */
function valueAndWhy({ value, displayUnit }: Fact): [Runs, Runs] {
  switch (value.kind) {
    case 'number': {
      const { reading } = value;
      if (!isKnown(reading)) return [quiet('not known'), plain(reading.unknown)];
      const why = reading.u === null ? `no uncertainty: ${reading.uReason ?? 'none was given'}` : '';
      return [quantityRuns(reading, displayUnit ?? reading.unit), plain(why)];
    }
    case 'flag':
      return [plain(value.flag ? 'yes' : 'no'), []];
    case 'grade':
      return [plain(GRADE_WORDS[value.grade as keyof typeof GRADE_WORDS] ?? value.grade), []];
    case 'unknown':
      return [quiet('not known'), plain(value.reason)];
  }
}
