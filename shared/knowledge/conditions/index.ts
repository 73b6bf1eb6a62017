import { DomainError } from '../../errors.ts';
import type { Condition } from '../../model/injury.ts';
import type { ConditionEntry } from '../condition.ts';
import { acromioclavicularJoint } from './acromioclavicular-joint.ts';
import { ankleSprain } from './ankle-sprain.ts';
import { anteriorCruciateLigament } from './anterior-cruciate-ligament.ts';
import { anteriorShoulderInstability } from './anterior-shoulder-instability.ts';
import { boneStress } from './bone-stress.ts';
import { cardiacRedFlag } from './cardiac-red-flag.ts';
import { concussion } from './concussion.ts';
import { elbowUlnarCollateralLigament } from './elbow-ulnar-collateral-ligament.ts';
import { groin } from './groin.ts';
import { hamstring } from './hamstring.ts';
import { lowBackPain } from './low-back-pain.ts';
import { multidirectionalShoulderInstability } from './multidirectional-shoulder-instability.ts';
import { other } from './other.ts';
import { patellarTendinopathy } from './patellar-tendinopathy.ts';
import { posteriorShoulderInstability } from './posterior-shoulder-instability.ts';
import { postpartum } from './postpartum.ts';
import { pregnancy } from './pregnancy.ts';
import { rotatorCuff } from './rotator-cuff.ts';
import { superiorLabrum } from './superior-labrum.ts';

/** Every condition, in the order of the model. */
export const CONDITION_ENTRIES: readonly ConditionEntry[] = [
  anteriorShoulderInstability,
  posteriorShoulderInstability,
  multidirectionalShoulderInstability,
  rotatorCuff,
  superiorLabrum,
  acromioclavicularJoint,
  elbowUlnarCollateralLigament,
  lowBackPain,
  anteriorCruciateLigament,
  patellarTendinopathy,
  ankleSprain,
  hamstring,
  groin,
  boneStress,
  concussion,
  pregnancy,
  postpartum,
  cardiacRedFlag,
  other,
];

const byId = new Map<Condition, ConditionEntry>(CONDITION_ENTRIES.map((entry) => [entry.id, entry]));

export function conditionEntry(id: Condition): ConditionEntry {
  const entry = byId.get(id);
  // A test holds the list complete over the model's own list of conditions.
  if (entry === undefined) throw new DomainError('internal', `There is no entry for the condition "${id}"`);
  return entry;
}
