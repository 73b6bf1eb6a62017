import type { ForceSummary, JumpTest } from '../../../shared/model/jump.ts';
import type { RibbonPhase } from '../../plots/PhaseRibbon.tsx';

/** What the athlete does on the plate, in words, between the instants the analysis found. */
const PUSH_WORDS: Record<JumpTest['kind'], string> = {
  countermovement: 'dip and push',
  squat: 'push',
  drop: 'contact',
};

export function forcePhases(
  kind: JumpTest['kind'],
  { onsetS, takeoffS, landingS }: ForceSummary,
  firstS: number,
  lastS: number,
): readonly RibbonPhase[] {
  return [
    { id: 'before', label: kind === 'drop' ? 'before contact' : 'quiet stance', fromS: firstS, toS: onsetS.value },
    { id: 'push', label: PUSH_WORDS[kind], fromS: onsetS.value, toS: takeoffS.value },
    { id: 'flight', label: 'flight', fromS: takeoffS.value, toS: landingS.value },
    { id: 'landing', label: 'landing', fromS: landingS.value, toS: lastS },
  ].filter((phase) => phase.toS > phase.fromS);
}

export function forceInstants({ onsetS, takeoffS, landingS }: ForceSummary) {
  return [
    { label: 'onset', timeS: onsetS.value },
    { label: 'take-off', timeS: takeoffS.value },
    { label: 'landing', timeS: landingS.value },
  ];
}
