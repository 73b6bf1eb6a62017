import { apprehensionRecorded as anyApprehensionRecorded } from './entries/any/apprehension-recorded.ts';
import { arcAdapted as anyArcAdapted } from './entries/any/arc-adapted.ts';
import { bonePainAtOneSpot as anyBonePainAtOneSpot } from './entries/any/bone-pain-at-one-spot.ts';
import { changeWithinNoise as anyChangeWithinNoise } from './entries/any/change-within-noise.ts';
import { clearingLowerLimbPositive as anyClearingLowerLimbPositive } from './entries/any/clearing-lower-limb-positive.ts';
import { clearingOwnPositive as anyClearingOwnPositive } from './entries/any/clearing-own-positive.ts';
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
import { painInJumpTest as anyPainInJumpTest } from './entries/any/pain-in-jump-test.ts';
import { painInLowerLimbTest as anyPainInLowerLimbTest } from './entries/any/pain-in-lower-limb-test.ts';
import { painInTrunkTest as anyPainInTrunkTest } from './entries/any/pain-in-trunk-test.ts';
import { painInUpperLimbTest as anyPainInUpperLimbTest } from './entries/any/pain-in-upper-limb-test.ts';
import { painInHeadOrNeckTest as anyPainInHeadOrNeckTest } from './entries/any/pain-in-head-or-neck-test.ts';
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
import { throwingLoadJumped as anyThrowingLoadJumped } from './entries/any/throwing-load-jumped.ts';
import { throwingLoadRisingAndWeak as anyThrowingLoadRisingAndWeak } from './entries/any/throwing-load-rising-and-weak.ts';
import { throwingLoadSteady as anyThrowingLoadSteady } from './entries/any/throwing-load-steady.ts';
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
import { armsFall as overheadSquatArmsFall } from './entries/overhead-squat/arms-fall.ts';
import { armsInLine as overheadSquatArmsInLine } from './entries/overhead-squat/arms-in-line.ts';
import { heelsDown as overheadSquatHeelsDown } from './entries/overhead-squat/heels-down.ts';
import { heelsRise as overheadSquatHeelsRise } from './entries/overhead-squat/heels-rise.ts';
import { kneeInward as overheadSquatKneeInward } from './entries/overhead-squat/knee-inward.ts';
import { kneeOverFoot as overheadSquatKneeOverFoot } from './entries/overhead-squat/knee-over-foot.ts';
import { standardMet as overheadSquatStandardMet } from './entries/overhead-squat/standard-met.ts';
import { trunkDrops as overheadSquatTrunkDrops } from './entries/overhead-squat/trunk-drops.ts';
import { trunkFollowsShin as overheadSquatTrunkFollowsShin } from './entries/overhead-squat/trunk-follows-shin.ts';
import { armAtShoulderHeight as overheadThrowArmAtShoulderHeight } from './entries/overhead-throw/arm-at-shoulder-height.ts';
import { armOffShoulderHeight as overheadThrowArmOffShoulderHeight } from './entries/overhead-throw/arm-off-shoulder-height.ts';
import { elbowOpened as overheadThrowElbowOpened } from './entries/overhead-throw/elbow-opened.ts';
import { elbowStillBent as overheadThrowElbowStillBent } from './entries/overhead-throw/elbow-still-bent.ts';
import { finishCutShort as overheadThrowFinishCutShort } from './entries/overhead-throw/finish-cut-short.ts';
import { finishRunsOut as overheadThrowFinishRunsOut } from './entries/overhead-throw/finish-runs-out.ts';
import { leansAwayAtRelease as overheadThrowLeansAwayAtRelease } from './entries/overhead-throw/leans-away-at-release.ts';
import { leansLittleAtRelease as overheadThrowLeansLittleAtRelease } from './entries/overhead-throw/leans-little-at-release.ts';
import { scaleOrTimeWrong as overheadThrowScaleOrTimeWrong } from './entries/overhead-throw/scale-or-time-wrong.ts';
import { trunkAheadOfStride as overheadThrowTrunkAheadOfStride } from './entries/overhead-throw/trunk-ahead-of-stride.ts';
import { trunkWaitsInStride as overheadThrowTrunkWaitsInStride } from './entries/overhead-throw/trunk-waits-in-stride.ts';
import { windUpBalanced as overheadThrowWindUpBalanced } from './entries/overhead-throw/wind-up-balanced.ts';
import { windUpOffBalance as overheadThrowWindUpOffBalance } from './entries/overhead-throw/wind-up-off-balance.ts';
import { brakingStep as sprintCutBrakingStep } from './entries/sprint-cut/braking-step.ts';
import { fewFaults as sprintCutFewFaults } from './entries/sprint-cut/few-faults.ts';
import { firstStrideLeans as sprintCutFirstStrideLeans } from './entries/sprint-cut/first-stride-leans.ts';
import { longPlant as sprintCutLongPlant } from './entries/sprint-cut/long-plant.ts';
import { manyFaults as sprintCutManyFaults } from './entries/sprint-cut/many-faults.ts';
import { noBrakingStep as sprintCutNoBrakingStep } from './entries/sprint-cut/no-braking-step.ts';
import { quickPlant as sprintCutQuickPlant } from './entries/sprint-cut/quick-plant.ts';
import { trunkOffInApproach as sprintCutTrunkOffInApproach } from './entries/sprint-cut/trunk-off-in-approach.ts';
import { trunkOverHipsInApproach as sprintCutTrunkOverHipsInApproach } from './entries/sprint-cut/trunk-over-hips-in-approach.ts';
import { trunkOverPlantLeg as sprintCutTrunkOverPlantLeg } from './entries/sprint-cut/trunk-over-plant-leg.ts';
import { trunkTowardsNewDirection as sprintCutTrunkTowardsNewDirection } from './entries/sprint-cut/trunk-towards-new-direction.ts';
import { uprightFirstStride as sprintCutUprightFirstStride } from './entries/sprint-cut/upright-first-stride.ts';
import { armAtShoulderHeight as tennisServeArmAtShoulderHeight } from './entries/tennis-serve/arm-at-shoulder-height.ts';
import { armOffShoulderHeight as tennisServeArmOffShoulderHeight } from './entries/tennis-serve/arm-off-shoulder-height.ts';
import { contactHeightUsual as tennisServeContactHeightUsual } from './entries/tennis-serve/contact-height-usual.ts';
import { contactTooHigh as tennisServeContactTooHigh } from './entries/tennis-serve/contact-too-high.ts';
import { finishCutShort as tennisServeFinishCutShort } from './entries/tennis-serve/finish-cut-short.ts';
import { finishLoadsBackOfShoulder as tennisServeFinishLoadsBackOfShoulder } from './entries/tennis-serve/finish-loads-back-of-shoulder.ts';
import { finishRunsOut as tennisServeFinishRunsOut } from './entries/tennis-serve/finish-runs-out.ts';
import { leansFarSideways as tennisServeLeansFarSideways } from './entries/tennis-serve/leans-far-sideways.ts';
import { leansWithinReason as tennisServeLeansWithinReason } from './entries/tennis-serve/leans-within-reason.ts';
import { legDrive as tennisServeLegDrive } from './entries/tennis-serve/leg-drive.ts';
import { noLegDrive as tennisServeNoLegDrive } from './entries/tennis-serve/no-leg-drive.ts';
import { softLanding as tennisServeSoftLanding } from './entries/tennis-serve/soft-landing.ts';
import { startBalanced as tennisServeStartBalanced } from './entries/tennis-serve/start-balanced.ts';
import { startOffBalance as tennisServeStartOffBalance } from './entries/tennis-serve/start-off-balance.ts';
import { stiffLanding as tennisServeStiffLanding } from './entries/tennis-serve/stiff-landing.ts';
import { tossLeans as tennisServeTossLeans } from './entries/tennis-serve/toss-leans.ts';
import { tossUpright as tennisServeTossUpright } from './entries/tennis-serve/toss-upright.ts';
import { armFarBehind as volleyballSpikeArmFarBehind } from './entries/volleyball-spike/arm-far-behind.ts';
import { contactOffUsual as volleyballSpikeContactOffUsual } from './entries/volleyball-spike/contact-off-usual.ts';
import { contactUsual as volleyballSpikeContactUsual } from './entries/volleyball-spike/contact-usual.ts';
import { elbowHigh as volleyballSpikeElbowHigh } from './entries/volleyball-spike/elbow-high.ts';
import { heightCarried as volleyballSpikeHeightCarried } from './entries/volleyball-spike/height-carried.ts';
import { landsOnOneLeg as volleyballSpikeLandsOnOneLeg } from './entries/volleyball-spike/lands-on-one-leg.ts';
import { landsOnTwoLegs as volleyballSpikeLandsOnTwoLegs } from './entries/volleyball-spike/lands-on-two-legs.ts';
import { littleHeight as volleyballSpikeLittleHeight } from './entries/volleyball-spike/little-height.ts';
import { littleRunSpeed as volleyballSpikeLittleRunSpeed } from './entries/volleyball-spike/little-run-speed.ts';
import { lowElbow as volleyballSpikeLowElbow } from './entries/volleyball-spike/low-elbow.ts';
import { runSpeedCarried as volleyballSpikeRunSpeedCarried } from './entries/volleyball-spike/run-speed-carried.ts';
import { softLanding as volleyballSpikeSoftLanding } from './entries/volleyball-spike/soft-landing.ts';
import { soreOnHardSwings as volleyballSpikeSoreOnHardSwings } from './entries/volleyball-spike/sore-on-hard-swings.ts';
import { stiffLanding as volleyballSpikeStiffLanding } from './entries/volleyball-spike/stiff-landing.ts';
import { trunkComesForward as volleyballSpikeTrunkComesForward } from './entries/volleyball-spike/trunk-comes-forward.ts';
import { trunkStaysBehind as volleyballSpikeTrunkStaysBehind } from './entries/volleyball-spike/trunk-stays-behind.ts';
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
  anyPainInJumpTest,
  anyPainInLowerLimbTest,
  anyPainInHeadOrNeckTest,
  anyPainInWholeBodyTest,
  anyClearingUpperLimbPositive,
  anyClearingOwnPositive,
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
  anyChangeWithinNoise,
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
  overheadThrowWindUpOffBalance,
  overheadThrowWindUpBalanced,
  overheadThrowTrunkAheadOfStride,
  overheadThrowTrunkWaitsInStride,
  overheadThrowArmOffShoulderHeight,
  overheadThrowArmAtShoulderHeight,
  overheadThrowElbowStillBent,
  overheadThrowElbowOpened,
  overheadThrowLeansAwayAtRelease,
  overheadThrowLeansLittleAtRelease,
  overheadThrowFinishCutShort,
  overheadThrowFinishRunsOut,
  overheadThrowScaleOrTimeWrong,
  anyThrowingLoadJumped,
  anyThrowingLoadRisingAndWeak,
  anyThrowingLoadSteady,
  volleyballSpikeLittleRunSpeed,
  volleyballSpikeRunSpeedCarried,
  volleyballSpikeLittleHeight,
  volleyballSpikeHeightCarried,
  volleyballSpikeLowElbow,
  volleyballSpikeElbowHigh,
  volleyballSpikeArmFarBehind,
  volleyballSpikeContactOffUsual,
  volleyballSpikeContactUsual,
  volleyballSpikeSoreOnHardSwings,
  volleyballSpikeTrunkStaysBehind,
  volleyballSpikeTrunkComesForward,
  volleyballSpikeLandsOnOneLeg,
  volleyballSpikeLandsOnTwoLegs,
  volleyballSpikeStiffLanding,
  volleyballSpikeSoftLanding,
  tennisServeStartOffBalance,
  tennisServeStartBalanced,
  tennisServeTossLeans,
  tennisServeTossUpright,
  tennisServeNoLegDrive,
  tennisServeLegDrive,
  tennisServeArmOffShoulderHeight,
  tennisServeArmAtShoulderHeight,
  tennisServeLeansFarSideways,
  tennisServeLeansWithinReason,
  tennisServeContactTooHigh,
  tennisServeContactHeightUsual,
  tennisServeFinishLoadsBackOfShoulder,
  tennisServeFinishCutShort,
  tennisServeFinishRunsOut,
  tennisServeStiffLanding,
  tennisServeSoftLanding,
  overheadSquatTrunkDrops,
  overheadSquatTrunkFollowsShin,
  overheadSquatHeelsRise,
  overheadSquatHeelsDown,
  overheadSquatArmsFall,
  overheadSquatArmsInLine,
  overheadSquatKneeInward,
  overheadSquatKneeOverFoot,
  overheadSquatStandardMet,
  sprintCutTrunkOffInApproach,
  sprintCutTrunkOverHipsInApproach,
  sprintCutNoBrakingStep,
  sprintCutBrakingStep,
  sprintCutTrunkOverPlantLeg,
  sprintCutTrunkTowardsNewDirection,
  sprintCutLongPlant,
  sprintCutQuickPlant,
  sprintCutUprightFirstStride,
  sprintCutFirstStrideLeans,
  sprintCutManyFaults,
  sprintCutFewFaults,
];

/** Every rule that comes with the program, sources and effects written out. */
export const SHIPPED_RULES: readonly Rule[] = entries.map(toRule);
