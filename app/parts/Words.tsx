import type { ReactNode } from 'react';
import type { Outcome } from '../../shared/assess/assessment.ts';
import { OUTCOME_WORDS } from '../../shared/assess/words.ts';

/**
 * How heavily a state speaks. `stop` is ink turned over, `heavy` a bold word behind a thick rule, `marked` a bold
 * underlined word, `open` a word on hatched ground, `plain` a word, `quiet` a word in grey. Never a colour alone.
 */
export type Weight = 'stop' | 'heavy' | 'marked' | 'open' | 'plain' | 'quiet';

/** A state, said in words. */
export function Words({ weight, children }: { weight: Weight; children: ReactNode }) {
  return <span className={`words words-${weight}`}>{children}</span>;
}

const OUTCOME_WEIGHT: Readonly<Record<Outcome, Weight>> = {
  referral: 'stop',
  caution: 'heavy',
  intervention: 'marked',
  modified: 'marked',
  replaced: 'heavy',
  stopped: 'stop',
  monitor: 'plain',
  borderline: 'open',
  confirmed: 'plain',
  'not-assessed': 'open',
};

/** What became of a finding. */
export function OutcomeWords({ outcome }: { outcome: Outcome }) {
  return <Words weight={OUTCOME_WEIGHT[outcome]}>{OUTCOME_WORDS[outcome]}</Words>;
}
