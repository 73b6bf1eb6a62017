import { apprehensionRecorded as anyApprehensionRecorded } from './entries/any/apprehension-recorded.ts';
import { arcAdapted as anyArcAdapted } from './entries/any/arc-adapted.ts';
import { bonePainAtOneSpot as anyBonePainAtOneSpot } from './entries/any/bone-pain-at-one-spot.ts';
import { clearingLowerLimbPositive as anyClearingLowerLimbPositive } from './entries/any/clearing-lower-limb-positive.ts';
import { clearingTrunkPositive as anyClearingTrunkPositive } from './entries/any/clearing-trunk-positive.ts';
import { clearingUpperLimbPositive as anyClearingUpperLimbPositive } from './entries/any/clearing-upper-limb-positive.ts';
import { drillDragsOnLooseShoulder as anyDrillDragsOnLooseShoulder } from './entries/any/drill-drags-on-loose-shoulder.ts';
import { drillImpactSoonAfterBirth as anyDrillImpactSoonAfterBirth } from './entries/any/drill-impact-soon-after-birth.ts';
import { drillLoadsArmOutAndBack as anyDrillLoadsArmOutAndBack } from './entries/any/drill-loads-arm-out-and-back.ts';
import { drillPivotsBeforeClearance as anyDrillPivotsBeforeClearance } from './entries/any/drill-pivots-before-clearance.ts';
import { drillPushesShoulderBack as anyDrillPushesShoulderBack } from './entries/any/drill-pushes-shoulder-back.ts';
import { drillThrowsBeforeElbowCleared as anyDrillThrowsBeforeElbowCleared } from './entries/any/drill-throws-before-elbow-cleared.ts';
import { emergencySign as anyEmergencySign } from './entries/any/emergency-sign.ts';
import { externalRotationNotGained as anyExternalRotationNotGained } from './entries/any/external-rotation-not-gained.ts';
import { externalRotatorsWeak as anyExternalRotatorsWeak } from './entries/any/external-rotators-weak.ts';
import { frontReachDiffers as anyFrontReachDiffers } from './entries/any/front-reach-differs.ts';
import { heartQuestionPositive as anyHeartQuestionPositive } from './entries/any/heart-question-positive.ts';
import { hopEven as anyHopEven } from './entries/any/hop-even.ts';
import { hopUneven as anyHopUneven } from './entries/any/hop-uneven.ts';
import { jointLaxity as anyJointLaxity } from './entries/any/joint-laxity.ts';
import { lungeEven as anyLungeEven } from './entries/any/lunge-even.ts';
import { lungeShortOnOneSide as anyLungeShortOnOneSide } from './entries/any/lunge-short-on-one-side.ts';
import { newInstabilityEvent as anyNewInstabilityEvent } from './entries/any/new-instability-event.ts';
import { overheadSquatCompensated as anyOverheadSquatCompensated } from './entries/any/overhead-squat-compensated.ts';
import { overheadSquatNotMet as anyOverheadSquatNotMet } from './entries/any/overhead-squat-not-met.ts';
import { painInLowerLimbTest as anyPainInLowerLimbTest } from './entries/any/pain-in-lower-limb-test.ts';
import { painInTrunkTest as anyPainInTrunkTest } from './entries/any/pain-in-trunk-test.ts';
import { painInUpperLimbTest as anyPainInUpperLimbTest } from './entries/any/pain-in-upper-limb-test.ts';
import { painInWholeBodyTest as anyPainInWholeBodyTest } from './entries/any/pain-in-whole-body-test.ts';
import { painOverFiveInMovement as anyPainOverFiveInMovement } from './entries/any/pain-over-five-in-movement.ts';
import { painUpToFiveInMovement as anyPainUpToFiveInMovement } from './entries/any/pain-up-to-five-in-movement.ts';
import { patternsMet as anyPatternsMet } from './entries/any/patterns-met.ts';
import { putShort as anyPutShort } from './entries/any/put-short.ts';
import { redFlagBeforeTakingPart as anyRedFlagBeforeTakingPart } from './entries/any/red-flag-before-taking-part.ts';
import { rotationAndArcLost as anyRotationAndArcLost } from './entries/any/rotation-and-arc-lost.ts';
import { rotationLostArcKept as anyRotationLostArcKept } from './entries/any/rotation-lost-arc-kept.ts';
import { rotatorBalanceUsual as anyRotatorBalanceUsual } from './entries/any/rotator-balance-usual.ts';
import { sidesGradedDifferently as anySidesGradedDifferently } from './entries/any/sides-graded-differently.ts';
import { singleLegSquatCompensated as anySingleLegSquatCompensated } from './entries/any/single-leg-squat-compensated.ts';
import { singleLegSquatNotMet as anySingleLegSquatNotMet } from './entries/any/single-leg-squat-not-met.ts';
import { squeezeModerate as anySqueezeModerate } from './entries/any/squeeze-moderate.ts';
import { squeezeQuiet as anySqueezeQuiet } from './entries/any/squeeze-quiet.ts';
import { squeezeSevere as anySqueezeSevere } from './entries/any/squeeze-severe.ts';
import { suspectedConcussion as anySuspectedConcussion } from './entries/any/suspected-concussion.ts';
import { touchesFew as anyTouchesFew } from './entries/any/touches-few.ts';
import { touchesUsual as anyTouchesUsual } from './entries/any/touches-usual.ts';
import { dipDeepEnough as basketballJumpShotDipDeepEnough } from './entries/basketball-jump-shot/dip-deep-enough.ts';
import { elbowInPlane as basketballJumpShotElbowInPlane } from './entries/basketball-jump-shot/elbow-in-plane.ts';
import { elbowOut as basketballJumpShotElbowOut } from './entries/basketball-jump-shot/elbow-out.ts';
import { entryTooFlat as basketballJumpShotEntryTooFlat } from './entries/basketball-jump-shot/entry-too-flat.ts';
import { flatRelease as basketballJumpShotFlatRelease } from './entries/basketball-jump-shot/flat-release.ts';
import { kneeInwardOnDip as basketballJumpShotKneeInwardOnDip } from './entries/basketball-jump-shot/knee-inward-on-dip.ts';
import { kneeOverFootOnDip as basketballJumpShotKneeOverFootOnDip } from './entries/basketball-jump-shot/knee-over-foot-on-dip.ts';
import { landsAway as basketballJumpShotLandsAway } from './entries/basketball-jump-shot/lands-away.ts';
import { landsOnTheSpot as basketballJumpShotLandsOnTheSpot } from './entries/basketball-jump-shot/lands-on-the-spot.ts';
import { lowArmAtRelease as basketballJumpShotLowArmAtRelease } from './entries/basketball-jump-shot/low-arm-at-release.ts';
import { lowSetPoint as basketballJumpShotLowSetPoint } from './entries/basketball-jump-shot/low-set-point.ts';
import { releaseAngleUsual as basketballJumpShotReleaseAngleUsual } from './entries/basketball-jump-shot/release-angle-usual.ts';
import { releaseJustOverLeastSpeed as basketballJumpShotReleaseJustOverLeastSpeed } from './entries/basketball-jump-shot/release-just-over-least-speed.ts';
import { releaseNearTop as basketballJumpShotReleaseNearTop } from './entries/basketball-jump-shot/release-near-top.ts';
import { releaseOffTop as basketballJumpShotReleaseOffTop } from './entries/basketball-jump-shot/release-off-top.ts';
import { scaleOrTimeWrong as basketballJumpShotScaleOrTimeWrong } from './entries/basketball-jump-shot/scale-or-time-wrong.ts';
import { setPointHigh as basketballJumpShotSetPointHigh } from './entries/basketball-jump-shot/set-point-high.ts';
import { shallowDip as basketballJumpShotShallowDip } from './entries/basketball-jump-shot/shallow-dip.ts';
import { trunkLeans as basketballJumpShotTrunkLeans } from './entries/basketball-jump-shot/trunk-leans.ts';
import { trunkUpright as basketballJumpShotTrunkUpright } from './entries/basketball-jump-shot/trunk-upright.ts';
import { dipDeepEnough as countermovementJumpDipDeepEnough } from './entries/countermovement-jump/dip-deep-enough.ts';
import { dipDeepEnoughOnPlate as countermovementJumpDipDeepEnoughOnPlate } from './entries/countermovement-jump/dip-deep-enough-on-plate.ts';
import { heightDropped as countermovementJumpHeightDropped } from './entries/countermovement-jump/height-dropped.ts';
import { heightSteady as countermovementJumpHeightSteady } from './entries/countermovement-jump/height-steady.ts';
import { legsNotStraightAtTakeoff as countermovementJumpLegsNotStraightAtTakeoff } from './entries/countermovement-jump/legs-not-straight-at-takeoff.ts';
import { legsStraightAtTakeoff as countermovementJumpLegsStraightAtTakeoff } from './entries/countermovement-jump/legs-straight-at-takeoff.ts';
import { lowInSquad as countermovementJumpLowInSquad } from './entries/countermovement-jump/low-in-squad.ts';
import { pushGoesSideways as countermovementJumpPushGoesSideways } from './entries/countermovement-jump/push-goes-sideways.ts';
import { pushGoesUp as countermovementJumpPushGoesUp } from './entries/countermovement-jump/push-goes-up.ts';
import { shallowDip as countermovementJumpShallowDip } from './entries/countermovement-jump/shallow-dip.ts';
import { shallowDipOnPlate as countermovementJumpShallowDipOnPlate } from './entries/countermovement-jump/shallow-dip-on-plate.ts';
import { sideDifference as countermovementJumpSideDifference } from './entries/countermovement-jump/side-difference.ts';
import { softLanding as countermovementJumpSoftLanding } from './entries/countermovement-jump/soft-landing.ts';
import { stiffLanding as countermovementJumpStiffLanding } from './entries/countermovement-jump/stiff-landing.ts';
import { straightKneeAtContact as countermovementJumpStraightKneeAtContact } from './entries/countermovement-jump/straight-knee-at-contact.ts';
import { trialsScatter as countermovementJumpTrialsScatter } from './entries/countermovement-jump/trials-scatter.ts';
import { bendEnough as dropLandingBendEnough } from './entries/drop-landing/bend-enough.ts';
import { bentKneeAtContact as dropLandingBentKneeAtContact } from './entries/drop-landing/bent-knee-at-contact.ts';
import { fewerThanFiveErrors as dropLandingFewerThanFiveErrors } from './entries/drop-landing/fewer-than-five-errors.ts';
import { fiveErrorsOrMore as dropLandingFiveErrorsOrMore } from './entries/drop-landing/five-errors-or-more.ts';
import { kneeInward as dropLandingKneeInward } from './entries/drop-landing/knee-inward.ts';
import { kneeOverFoot as dropLandingKneeOverFoot } from './entries/drop-landing/knee-over-foot.ts';
import { littleBend as dropLandingLittleBend } from './entries/drop-landing/little-bend.ts';
import { straightKneeAtContact as dropLandingStraightKneeAtContact } from './entries/drop-landing/straight-knee-at-contact.ts';
import { trunkNotOverFeet as dropLandingTrunkNotOverFeet } from './entries/drop-landing/trunk-not-over-feet.ts';
import { trunkOverFeet as dropLandingTrunkOverFeet } from './entries/drop-landing/trunk-over-feet.ts';
import { armAtShoulderHeight as handballJumpThrowArmAtShoulderHeight } from './entries/handball-jump-throw/arm-at-shoulder-height.ts';
import { armOffShoulderHeight as handballJumpThrowArmOffShoulderHeight } from './entries/handball-jump-throw/arm-off-shoulder-height.ts';
import { contactQuick as handballJumpThrowContactQuick } from './entries/handball-jump-throw/contact-quick.ts';
import { elbowOpened as handballJumpThrowElbowOpened } from './entries/handball-jump-throw/elbow-opened.ts';
import { elbowStillBent as handballJumpThrowElbowStillBent } from './entries/handball-jump-throw/elbow-still-bent.ts';
import { finishCutShort as handballJumpThrowFinishCutShort } from './entries/handball-jump-throw/finish-cut-short.ts';
import { finishRunsOut as handballJumpThrowFinishRunsOut } from './entries/handball-jump-throw/finish-runs-out.ts';
import { heightCarried as handballJumpThrowHeightCarried } from './entries/handball-jump-throw/height-carried.ts';
import { littleHeight as handballJumpThrowLittleHeight } from './entries/handball-jump-throw/little-height.ts';
import { littleRunSpeed as handballJumpThrowLittleRunSpeed } from './entries/handball-jump-throw/little-run-speed.ts';
import { longContact as handballJumpThrowLongContact } from './entries/handball-jump-throw/long-contact.ts';
import { releaseNearTop as handballJumpThrowReleaseNearTop } from './entries/handball-jump-throw/release-near-top.ts';
import { releaseOffTop as handballJumpThrowReleaseOffTop } from './entries/handball-jump-throw/release-off-top.ts';
import { runSpeedCarried as handballJumpThrowRunSpeedCarried } from './entries/handball-jump-throw/run-speed-carried.ts';
import { scaleOrTimeWrong as handballJumpThrowScaleOrTimeWrong } from './entries/handball-jump-throw/scale-or-time-wrong.ts';
import { softLanding as handballJumpThrowSoftLanding } from './entries/handball-jump-throw/soft-landing.ts';
import { speedIsAUnitError as handballJumpThrowSpeedIsAUnitError } from './entries/handball-jump-throw/speed-is-a-unit-error.ts';
import { stiffLanding as handballJumpThrowStiffLanding } from './entries/handball-jump-throw/stiff-landing.ts';
import { trunkBehindRelease as handballJumpThrowTrunkBehindRelease } from './entries/handball-jump-throw/trunk-behind-release.ts';
import { trunkForwardRelease as handballJumpThrowTrunkForwardRelease } from './entries/handball-jump-throw/trunk-forward-release.ts';
import type { Rule } from './rule.ts';
import { type RuleEntry, toRule } from './ruleEntry.ts';

const entries: readonly RuleEntry[] = [
  handballJumpThrowLittleRunSpeed,
  handballJumpThrowRunSpeedCarried,
  handballJumpThrowLongContact,
  handballJumpThrowContactQuick,
  handballJumpThrowLittleHeight,
  handballJumpThrowHeightCarried,
  handballJumpThrowArmOffShoulderHeight,
  handballJumpThrowArmAtShoulderHeight,
  handballJumpThrowElbowStillBent,
  handballJumpThrowElbowOpened,
  handballJumpThrowReleaseOffTop,
  handballJumpThrowReleaseNearTop,
  handballJumpThrowTrunkBehindRelease,
  handballJumpThrowTrunkForwardRelease,
  handballJumpThrowFinishCutShort,
  handballJumpThrowFinishRunsOut,
  handballJumpThrowStiffLanding,
  handballJumpThrowSoftLanding,
  handballJumpThrowScaleOrTimeWrong,
  handballJumpThrowSpeedIsAUnitError,
  basketballJumpShotShallowDip,
  basketballJumpShotDipDeepEnough,
  basketballJumpShotKneeInwardOnDip,
  basketballJumpShotKneeOverFootOnDip,
  basketballJumpShotElbowOut,
  basketballJumpShotElbowInPlane,
  basketballJumpShotLowSetPoint,
  basketballJumpShotSetPointHigh,
  basketballJumpShotTrunkLeans,
  basketballJumpShotTrunkUpright,
  basketballJumpShotFlatRelease,
  basketballJumpShotReleaseJustOverLeastSpeed,
  basketballJumpShotReleaseAngleUsual,
  basketballJumpShotEntryTooFlat,
  basketballJumpShotReleaseOffTop,
  basketballJumpShotReleaseNearTop,
  basketballJumpShotLowArmAtRelease,
  basketballJumpShotLandsAway,
  basketballJumpShotLandsOnTheSpot,
  basketballJumpShotScaleOrTimeWrong,
  countermovementJumpShallowDip,
  countermovementJumpDipDeepEnough,
  countermovementJumpShallowDipOnPlate,
  countermovementJumpDipDeepEnoughOnPlate,
  countermovementJumpPushGoesSideways,
  countermovementJumpPushGoesUp,
  countermovementJumpLegsNotStraightAtTakeoff,
  countermovementJumpLegsStraightAtTakeoff,
  countermovementJumpHeightDropped,
  countermovementJumpHeightSteady,
  countermovementJumpLowInSquad,
  countermovementJumpTrialsScatter,
  countermovementJumpStiffLanding,
  countermovementJumpSoftLanding,
  countermovementJumpStraightKneeAtContact,
  countermovementJumpSideDifference,
  anyPainInUpperLimbTest,
  anyPainInTrunkTest,
  anyPainInLowerLimbTest,
  anyPainInWholeBodyTest,
  anyClearingUpperLimbPositive,
  anyClearingTrunkPositive,
  anyClearingLowerLimbPositive,
  anyPainOverFiveInMovement,
  anyPainUpToFiveInMovement,
  anyEmergencySign,
  anyRedFlagBeforeTakingPart,
  anyHeartQuestionPositive,
  anySuspectedConcussion,
  anyNewInstabilityEvent,
  anyApprehensionRecorded,
  anyBonePainAtOneSpot,
  anySidesGradedDifferently,
  anySingleLegSquatNotMet,
  anySingleLegSquatCompensated,
  anyOverheadSquatNotMet,
  anyOverheadSquatCompensated,
  anyPatternsMet,
  anyRotationAndArcLost,
  anyRotationLostArcKept,
  anyArcAdapted,
  anyExternalRotationNotGained,
  anyExternalRotatorsWeak,
  anyRotatorBalanceUsual,
  anyTouchesFew,
  anyTouchesUsual,
  anyPutShort,
  anyJointLaxity,
  anyLungeShortOnOneSide,
  anyLungeEven,
  anyHopUneven,
  anyHopEven,
  anyFrontReachDiffers,
  anySqueezeModerate,
  anySqueezeSevere,
  anySqueezeQuiet,
  anyDrillLoadsArmOutAndBack,
  anyDrillPushesShoulderBack,
  anyDrillDragsOnLooseShoulder,
  anyDrillPivotsBeforeClearance,
  anyDrillThrowsBeforeElbowCleared,
  anyDrillImpactSoonAfterBirth,
  dropLandingStraightKneeAtContact,
  dropLandingBentKneeAtContact,
  dropLandingKneeInward,
  dropLandingKneeOverFoot,
  dropLandingLittleBend,
  dropLandingBendEnough,
  dropLandingTrunkNotOverFeet,
  dropLandingTrunkOverFeet,
  dropLandingFiveErrorsOrMore,
  dropLandingFewerThanFiveErrors,
];

/** Every rule that comes with the program, sources and effects written out. */
export const SHIPPED_RULES: readonly Rule[] = entries.map(toRule);
