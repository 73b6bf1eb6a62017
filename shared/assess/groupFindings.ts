import type { Movement } from '../knowledge/movement.ts';
import type { CaseFile } from '../model/records.ts';
import type { MovementTrial } from '../model/trial.ts';
import type { Finding } from './assessment.ts';
import { movementOf } from './movementOf.ts';

/** Findings of one filmed trial: a block for each phase in the movement's order (empty ones too), then the rest. */
export interface TrialFindings {
  readonly trial: MovementTrial;
  readonly movement: Movement | null;
  readonly phases: readonly { readonly phase: Movement['phases'][number]; readonly findings: readonly Finding[] }[];
  readonly whole: readonly Finding[];
}

export interface GroupedFindings {
  /** In the order of filming. */
  readonly trials: readonly TrialFindings[];
  /** Of no filmed movement: screening, jumps, the plan. */
  readonly profile: readonly Finding[];
}

/** Findings as screens and pages show them. Each stands in exactly one place. */
export function groupFindings(file: CaseFile, findings: readonly Finding[]): GroupedFindings {
  const trials = file.movementTrials.toSorted((a, b) =>
    a.filmedOn < b.filmedOn ? -1 : a.filmedOn > b.filmedOn ? 1 : 0,
  );
  const placeOf = (finding: Finding) => trials.find((trial) => belongsTo(finding, trial, trials)) ?? null;
  const places = new Map(findings.map((finding) => [finding, placeOf(finding)]));
  return {
    trials: trials.map((trial) => {
      const movement = movementOf(file, trial.movementId);
      const own = findings.filter((finding) => places.get(finding) === trial);
      const phases = (movement?.phases ?? []).map((phase) => ({
        phase,
        findings: own.filter((finding) => finding.phase === phase.id),
      }));
      return {
        trial,
        movement,
        phases,
        whole: own.filter((one) => phases.every(({ phase }) => phase.id !== one.phase)),
      };
    }),
    profile: findings.filter((finding) => places.get(finding) === null),
  };
}

/** What could not be judged has no trial; it stands with the first trial of its movement. */
function belongsTo(finding: Finding, trial: MovementTrial, trials: readonly MovementTrial[]): boolean {
  if (finding.trialId !== null) return finding.trialId === trial.id;
  return trials.find((one) => one.movementId === finding.movement) === trial;
}
