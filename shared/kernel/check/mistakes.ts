import type { CaseCheck } from '../../assess/assessment.ts';
import { angleFromForearm } from './angleFromForearm.ts';
import { asymmetryUnnamed } from './asymmetryUnnamed.ts';
import { asymmetryWithinVariation } from './asymmetryWithinVariation.ts';
import { bentLanding } from './bentLanding.ts';
import { bodyWeightAsForceNeeded } from './bodyWeightAsForceNeeded.ts';
import { bodyWeightNotSubtracted } from './bodyWeightNotSubtracted.ts';
import { degreesAsRadians } from './degreesAsRadians.ts';
import { dragIgnored } from './dragIgnored.ts';
import { dualPassUncorrected } from './dualPassUncorrected.ts';
import { entryTakenAsRelease } from './entryTakenAsRelease.ts';
import { estimatedPercentile } from './estimatedPercentile.ts';
import { eventsWithoutUncertainty } from './eventsWithoutUncertainty.ts';
import { feetWithDecimals } from './feetWithDecimals.ts';
import { fortyFiveIsBest } from './fortyFiveIsBest.ts';
import { heightWithoutTheEighth } from './heightWithoutTheEighth.ts';
import { hipAsCentreOfMass } from './hipAsCentreOfMass.ts';
import { imageYDown } from './imageYDown.ts';
import { impossibleRelease } from './impossibleRelease.ts';
import { insideAngleAsFlexion } from './insideAngleAsFlexion.ts';
import { metresInCentimetreEquation } from './metresInCentimetreEquation.ts';
import { normFromElsewhere } from './normFromElsewhere.ts';
import { peakVelocityAsTakeoff } from './peakVelocityAsTakeoff.ts';
import { powerBeyondBand } from './powerBeyondBand.ts';
import { powerExplainsHeight } from './powerExplainsHeight.ts';
import { ratesSwapped } from './ratesSwapped.ts';
import { rawPointsDifferentiated } from './rawPointsDifferentiated.ts';
import { reachInOtherShoes } from './reachInOtherShoes.ts';
import { releaseAngleWithoutTarget } from './releaseAngleWithoutTarget.ts';
import { sagittalRadiusInSideView } from './sagittalRadiusInSideView.ts';
import { scaleInAnotherPlane } from './scaleInAnotherPlane.ts';
import { segmentSharesDoNotSum } from './segmentSharesDoNotSum.ts';
import { segmentTurned } from './segmentTurned.ts';
import { slowedSeconds } from './slowedSeconds.ts';
import { speedFromDistanceOverTime } from './speedFromDistanceOverTime.ts';
import { strengthIndicesMixed } from './strengthIndicesMixed.ts';
import { thresholdInNoise } from './thresholdInNoise.ts';
import { unlikeHeightsCompared } from './unlikeHeightsCompared.ts';
import { weightAsMassTimesTen } from './weightAsMassTimesTen.ts';

/** A mistake that students make, and the check that shows it. */
export interface Mistake {
  /** 1 to 36, as in the list that the checks were written from. */
  readonly number: number;
  readonly mistake: string;
  readonly check: (seen: never) => CaseCheck;
  /** `case`: asked of every case that holds the numbers. `elsewhere`: a case cannot hold them; the check says who asks. */
  readonly askedOf: 'case' | 'elsewhere';
}

/** All of them by number; some have two checks. */
export const MISTAKES: readonly Mistake[] = [
  { number: 1, mistake: 'Weight as mass times ten, or mass as a force', check: weightAsMassTimesTen, askedOf: 'case' },
  { number: 2, mistake: 'Times in slowed seconds', check: slowedSeconds, askedOf: 'case' },
  { number: 2, mistake: 'Capture and playback rate swapped', check: ratesSwapped, askedOf: 'case' },
  { number: 3, mistake: 'Unlike heights compared', check: unlikeHeightsCompared, askedOf: 'case' },
  {
    number: 4,
    mistake: 'Body weight as the force needed to leave the ground',
    check: bodyWeightAsForceNeeded,
    askedOf: 'case',
  },
  { number: 5, mistake: 'A segment turned out of the picture', check: segmentTurned, askedOf: 'case' },
  { number: 6, mistake: 'Body weight left in the integral', check: bodyWeightNotSubtracted, askedOf: 'case' },
  { number: 7, mistake: 'Highest velocity as take-off velocity', check: peakVelocityAsTakeoff, askedOf: 'case' },
  { number: 8, mistake: 'Height as g t²/2 of the whole flight', check: heightWithoutTheEighth, askedOf: 'case' },
  { number: 9, mistake: 'Flight time with a bent landing', check: bentLanding, askedOf: 'case' },
  { number: 10, mistake: 'Release speed as distance over time', check: speedFromDistanceOverTime, askedOf: 'case' },
  { number: 11, mistake: 'Entry angle taken as the release angle', check: entryTakenAsRelease, askedOf: 'case' },
  { number: 12, mistake: '45° as best whatever the target', check: fortyFiveIsBest, askedOf: 'case' },
  { number: 12, mistake: 'Release angle judged without a target', check: releaseAngleWithoutTarget, askedOf: 'case' },
  { number: 13, mistake: 'Release angle read off the forearm', check: angleFromForearm, askedOf: 'case' },
  { number: 14, mistake: 'Impossible release', check: impossibleRelease, askedOf: 'case' },
  { number: 15, mistake: 'Scale taken in another plane', check: scaleInAnotherPlane, askedOf: 'elsewhere' },
  { number: 16, mistake: 'Image y pointing down', check: imageYDown, askedOf: 'case' },
  { number: 17, mistake: 'Raw points differentiated', check: rawPointsDifferentiated, askedOf: 'elsewhere' },
  { number: 18, mistake: 'Dual pass without its correction', check: dualPassUncorrected, askedOf: 'elsewhere' },
  { number: 19, mistake: 'Degrees as radians', check: degreesAsRadians, askedOf: 'case' },
  { number: 20, mistake: 'Inside angle as flexion', check: insideAngleAsFlexion, askedOf: 'case' },
  {
    number: 21,
    mistake: 'Metres in an equation for centimetres',
    check: metresInCentimetreEquation,
    askedOf: 'case',
  },
  { number: 22, mistake: 'A power nobody shows', check: powerBeyondBand, askedOf: 'case' },
  { number: 23, mistake: 'Reactive strength indices mixed', check: strengthIndicesMixed, askedOf: 'case' },
  { number: 24, mistake: 'Asymmetry without formula or side', check: asymmetryUnnamed, askedOf: 'case' },
  {
    number: 25,
    mistake: 'Asymmetry smaller than the variation of trials',
    check: asymmetryWithinVariation,
    askedOf: 'case',
  },
  { number: 26, mistake: 'Sagittal radius in a side view', check: sagittalRadiusInSideView, askedOf: 'elsewhere' },
  { number: 27, mistake: 'Segment shares that do not sum', check: segmentSharesDoNotSum, askedOf: 'elsewhere' },
  { number: 28, mistake: 'Hip as centre of mass', check: hipAsCentreOfMass, askedOf: 'case' },
  { number: 29, mistake: 'A norm from elsewhere', check: normFromElsewhere, askedOf: 'elsewhere' },
  { number: 30, mistake: 'An estimated percentile as a counted one', check: estimatedPercentile, askedOf: 'elsewhere' },
  { number: 31, mistake: 'Inches typed as decimal feet', check: feetWithDecimals, askedOf: 'elsewhere' },
  { number: 32, mistake: 'Take-off threshold in the noise', check: thresholdInNoise, askedOf: 'elsewhere' },
  { number: 33, mistake: 'Events without uncertainty', check: eventsWithoutUncertainty, askedOf: 'case' },
  { number: 34, mistake: 'Standing reach in other shoes', check: reachInOtherShoes, askedOf: 'case' },
  { number: 35, mistake: 'Power said to explain height', check: powerExplainsHeight, askedOf: 'elsewhere' },
  { number: 36, mistake: 'Drag ignored', check: dragIgnored, askedOf: 'case' },
];
