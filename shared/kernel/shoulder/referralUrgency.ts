import { SHOULDER_FLAGS, type ShoulderFlag } from '../../model/shoulder.ts';

export const URGENCY_TIERS = ['emergency', 'urgent', 'soon', 'routine'] as const;
export type UrgencyTier = (typeof URGENCY_TIERS)[number];

/** Tier of each red flag. */
export const FLAG_TIERS: Readonly<Record<ShoulderFlag, UrgencyTier>> = {
  outOfJoint: 'emergency',
  fractureSuspected: 'emergency',
  vesselSigns: 'emergency',
  nerveLoss: 'emergency',
  openWound: 'emergency',
  hotJointWithFever: 'emergency',
  lockedAfterSeizure: 'emergency',
  chestOrBellySigns: 'emergency',
  headOrNeckSigns: 'emergency',
  firstWithoutImaging: 'urgent',
  overFortyAndWeak: 'urgent',
  nerveLossPersists: 'urgent',
  tumourSigns: 'urgent',
  troubleAfterSurgery: 'urgent',
  locking: 'soon',
  apprehensionStopsSport: 'soon',
};

export interface UrgencyInputs {
  readonly flags: Readonly<Record<ShoulderFlag, boolean | null>>;
  readonly eventCount: number;
  /** A first dislocation by injury, under 25, in contact or overhead sport. Null: cannot tell. */
  readonly isYoungFirstTraumatic: boolean | null;
  /** Null: no numbers of imaging. */
  readonly isOffTrack: boolean | null;
}

export interface Urgency {
  /** At least so soon; unanswered flags may make it sooner. */
  readonly tier: UrgencyTier;
  readonly reasons: readonly (ShoulderFlag | 'youngFirstTraumatic' | 'recurrent' | 'offTrack')[];
  /** Flags of a sooner tier that nobody has answered: until then the tier is a lower bound. */
  readonly unanswered: readonly ShoulderFlag[];
}

/**
 * How soon someone must be seen: the soonest tier of whatever is answered yes. Nothing unanswered counts as no: it is
 * listed, and the tier is then only a lower bound. Times are defaults, and local pathways win.
 *
 * @source red flags of regional pathways and Mitchell 2005, BMJ 331:1124; Visser 1999 (nerves); Locher 2016 (off-track)
 */
export function referralUrgency({ flags, eventCount, isYoungFirstTraumatic, isOffTrack }: UrgencyInputs): Urgency {
  const found: (readonly [Urgency['reasons'][number], UrgencyTier])[] = [
    ...SHOULDER_FLAGS.filter((flag) => flags[flag] === true).map((flag) => [flag, FLAG_TIERS[flag]] as const),
    ...(isYoungFirstTraumatic === true ? [['youngFirstTraumatic', 'soon'] as const] : []),
    ...(eventCount >= 2 ? [['recurrent', 'soon'] as const] : []),
    ...(isOffTrack === true ? [['offTrack', 'soon'] as const] : []),
  ];
  const tier = URGENCY_TIERS.find((one) => found.some(([, of]) => of === one)) ?? 'routine';
  const sooner = URGENCY_TIERS.slice(0, URGENCY_TIERS.indexOf(tier));
  return {
    tier,
    reasons: found.filter(([, of]) => of === tier).map(([reason]) => reason),
    unanswered: SHOULDER_FLAGS.filter((flag) => flags[flag] === null && sooner.includes(FLAG_TIERS[flag])),
  };
}
