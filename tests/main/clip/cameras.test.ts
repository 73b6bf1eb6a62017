import { describe, expect, test } from 'vitest';
import { type ClipOptions, planClip, truthOf } from '../../../main/clip/clip.ts';
import { sourceFor } from '../../../main/clip/sourceFor.ts';
import { checkCase } from '../../../shared/assess/checkCase.ts';
import { collectFacts } from '../../../shared/assess/collectFacts.ts';
import { type FlightSays, flightSays, proposedRate } from '../../../shared/assess/flightSays.ts';
import { planeAdvice } from '../../../shared/assess/planeAdvice.ts';
import { tiltOfFlight } from '../../../shared/assess/tiltOfFlight.ts';
import { measureTrial } from '../../../shared/kernel/trial/measureTrial.ts';
import type { TrialInput } from '../../../shared/kernel/trial/scene.ts';
import { emptyCaseFile } from '../../../shared/model/caseLists.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { EXAMPLES } from '../../conformance/examples.ts';
import { clickedPoints } from '../../support/digitiseClip.ts';
import { planeCalibration, stickCalibration, trialOfClip } from '../../support/trialOfClip.ts';

/** A clip of a jump throw, every point put down by a hand that scatters by half a pixel. Truth: the clip's own. */
function clicked(options: Partial<ClipOptions>) {
  const movementId = 'handball-jump-throw';
  const plan = { movementId, seed: 11, captureRateHz: 120, slowMotion: 1, tiltDeg: 0, turnDeg: 0, ...options };
  const truth = truthOf(planClip(plan));
  const random = sourceFor(plan.seed, 'hand');
  const points = clickedPoints(truth, random);
  return { truth, points, random };
}

function caseOf({ trial, tracks, events }: TrialInput): CaseFile {
  const file = emptyCaseFile(EXAMPLES.case, EXAMPLES.athlete);
  return { ...file, movementTrials: [trial], landmarkTracks: [...tracks], trialEvents: [...events] };
}

function saysOf(input: TrialInput): FlightSays {
  const says = flightSays(caseOf(input), input.trial);
  if ('unknown' in says) throw new Error(says.unknown);
  return says;
}

function reading(input: TrialInput, measure: string) {
  const found = measureTrial(input).measures.find((one) => one.measure === measure)?.reading;
  if (found === undefined || !isKnown(found) || found.u === null) throw new Error(`${measure} is not known`);
  return { value: found.value, u: found.u };
}

/** Whether a reading lies within two of its own standard uncertainties of what is so. */
function isRight(input: TrialInput, measure: string, is: number): boolean {
  const { value, u } = reading(input, measure);
  return Math.abs(value - is) <= 2 * u;
}

describe('a clip recorded at 240 frames a second that plays at 30', () => {
  const { truth, points, random } = clicked({ captureRateHz: 240, slowMotion: 8 });
  const calibration = stickCalibration(truth, random);
  const asPlayed = trialOfClip(truth, points, calibration, truth.playbackRateHz);
  const { release } = truth;

  test('taken at its playing rate it is questioned, with the factor of 8', () => {
    expect(truth.playbackRateHz).toBe(30);
    const file = caseOf(asPlayed);
    const checks = checkCase(file, collectFacts(file));
    expect(checks.find(({ id, verdict }) => id === 'slowed-seconds' && verdict === 'questioned')).toBeDefined();
    expect(proposedRate(asPlayed.trial, saysOf(asPlayed))).toMatchObject({ rateHz: 240, factor: 8 });
  });

  test('with the proposed rate accepted the numbers are right', () => {
    const accepted = trialOfClip(truth, points, calibration, 240);
    expect(isRight(accepted, 'ball.releaseSpeed', release?.speedMPerS ?? 0)).toBe(true);
    expect(isRight(accepted, 'ball.releaseAngle', release?.angleRad ?? 0)).toBe(true);
    expect(isRight(accepted, 'com.riseInSkill', truth.jumpHeightM ?? 0)).toBe(true);
    expect(proposedRate(accepted.trial, saysOf(accepted))).toBeNull();
  });
});

describe('a camera that leans by 6° and is turned away by 20°', () => {
  const { truth, points, random } = clicked({ tiltDeg: 6, turnDeg: 20 });
  const { release } = truth;

  test('the scale alone gives a wrong angle and is questioned', () => {
    const byStick = trialOfClip(truth, points, stickCalibration(truth, random), 120);
    expect(isRight(byStick, 'ball.releaseAngle', release?.angleRad ?? 0)).toBe(false);
    const { calibration } = byStick.trial;
    if (calibration === null) throw new Error('the stick is gone');
    expect(planeAdvice(calibration, null, null).advice.join(' ')).toContain('which way is down');
    // A throw this fast is slowed by air as much as it falls: it does not say how far the picture is turned.
    expect(tiltOfFlight(caseOf(byStick), byStick.trial)).toMatchObject({
      tilt: { unknown: expect.stringMatching(/air slows this ball by \d\.\d of gravity/) },
    });
  });

  test('the plane by its marks is right', () => {
    const byMarks = trialOfClip(truth, points, planeCalibration(truth, random), 120);
    expect(isRight(byMarks, 'ball.releaseSpeed', release?.speedMPerS ?? 0)).toBe(true);
    expect(isRight(byMarks, 'ball.releaseAngle', release?.angleRad ?? 0)).toBe(true);
    expect(isRight(byMarks, 'ball.releaseHeight', release?.heightM ?? 0)).toBe(true);
    expect(isRight(byMarks, 'com.riseInSkill', truth.jumpHeightM ?? 0)).toBe(true);
  });
});
