import type { Writing } from './writing.ts';
import { counted, formatQuantity, withUnit } from '../../format/number.ts';
import { pointUncertainty } from '../../kernel/trial/pointUncertainty.ts';
import type { MovementTrial } from '../../model/trial.ts';
import { isKnown } from '../../quantity.ts';

/** What was weak in this very case, each as a sentence. Made from the records, so that none can be forgotten. */
export function limitations({ file, assessment }: Writing): string[] {
  const said: (string | null)[] = [
    ...file.movementTrials.flatMap((trial) => [
      trial.captureRateHz === null
        ? `${named(trial.label)}: the true capture rate is not recorded, so no time and no speed can be trusted.`
        : trial.frameTimesS !== null
          ? `${named(trial.label)}: its frames are unevenly spaced; each frame’s own time is used, and an instant is known to half of the frame it falls in.`
          : `${named(trial.label)}: at ${withUnit(String(trial.captureRateHz), 'Hz')} an instant is known to half a frame, ${half(trial.captureRateHz)}.`,
      trial.calibration === null
        ? `${named(trial.label)}: no scale, so no length, speed or height from the clip.`
        : null,
      trial.calibration?.kind === 'length'
        ? `${named(trial.label)}: one length sets the scale; whatever moved out of its plane is measured too long or too short.`
        : null,
      ...pointsOf(file, trial).map((sentence) => `${named(trial.label)}: ${sentence}`),
    ]),
    file.movementTrials.length === 1
      ? 'One trial was filmed: how much the athlete varies from trial to trial is not known.'
      : null,
    file.screeningSessions.length === 1
      ? 'One screening session: how well the rater repeats the results is not known.'
      : null,
    file.screeningSessions.length === 0 ? 'No screening was done.' : null,
    file.jumpTests.length === 0 ? 'No standing jump was tested.' : null,
    ...file.jumpTests.map((test) => {
      const count = file.jumpTrials.filter((trial) => trial.testId === test.id && !trial.isSetAside).length;
      return count < 2 ? `${counted(count, 'jump')} counted in one test: the spread between jumps is not known.` : null;
    }),
    without(
      assessment.facts.filter(
        (fact) => fact.value.kind === 'number' && isKnown(fact.value.reading) && fact.value.reading.u === null,
      ).length,
    ),
    unknowns(assessment.facts.filter((fact) => fact.value.kind === 'unknown').length),
    conventions(
      assessment.findings.filter((finding) => finding.basis === 'convention' && finding.outcome !== 'not-assessed')
        .length,
    ),
    'One athlete: nothing here can be carried over to others.',
  ];
  return said.filter((sentence) => sentence !== null);
}

/** How the points of a trial were obtained, and how exact they are. */
function pointsOf(file: Writing['file'], trial: MovementTrial): readonly string[] {
  const of = ({ trialId }: { readonly trialId: string }) => trialId === trial.id;
  return pointUncertainty(trial, file.landmarkTracks.filter(of), file.pointRepeats.filter(of)).said;
}

function named(label: string): string {
  return label === '' ? 'Trial' : label;
}

function half(rateHz: number): string {
  const frame = formatQuantity({ value: 0.5 / rateHz, unit: 's', u: 0.5 / rateHz }, 'ms');
  return withUnit(frame.value, frame.unit);
}

function without(count: number): string | null {
  return count === 0
    ? null
    : `${counted(count, 'number')} without an uncertainty; the reason stands beside each in the working.`;
}

function unknowns(count: number): string | null {
  return count === 0 ? null : `${counted(count, 'measure')} could not be computed; the working says why.`;
}

function conventions(count: number): string | null {
  return count === 0
    ? null
    : `${counted(count, 'finding')} against a threshold that is a convention without a published source.`;
}
