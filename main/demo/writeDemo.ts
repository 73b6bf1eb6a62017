import { assessCase } from '../../shared/assess/assessCase.ts';
import type { Finding } from '../../shared/assess/assessment.ts';
import { readsAs, standingOf } from '../../shared/assess/standing.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { ask } from '../cli/ask.ts';
import type { Service } from '../service.ts';
import { climber } from './climber.ts';
import { handballPlayer } from './handballPlayer.ts';
import { enterCase } from './inventedCase.ts';
import { judoka } from './judoka.ts';
import { type RandomSource, randomSource } from './randomSource.ts';
import { squad } from './squad.ts';

export interface DemoCases {
  readonly handball: string;
  readonly squad: readonly string[];
  readonly climber: string;
  readonly judoka: string;
}

/** Enters all invented cases into an empty store. Each has a numbered random source of its own. */
export async function writeDemo(service: Service): Promise<DemoCases> {
  const squadIds: string[] = [];
  for (const [i, player] of squad.entries()) squadIds.push(await enterCase(service, player, randomSource(100 + i)));
  const climberId = await enterCase(service, climber, randomSource(200));
  const judokaId = await enterCase(service, judoka, randomSource(400));
  // Last, so that it lies on top of the shelf.
  const random = randomSource(300);
  const handball = await enterCase(service, handballPlayer, random);
  await decide(service, handball, random);
  return { handball, squad: squadIds, climber: climberId, judoka: judokaId };
}

/** What a practitioner might do with the findings: accept the first, put the second in other words, set the third aside. */
async function decide(service: Service, caseId: string, random: RandomSource): Promise<void> {
  const { file } = await ask(service, 'case.open', { caseId });
  const open = assessCase(file).findings.filter(
    (finding) => finding.intervention !== null && standingOf(finding, file.findingDecisions).state === 'to decide',
  );
  const [first, second, third] = open;
  const edits = [
    ...(first === undefined ? [] : [decision(caseId, first, random, { decision: 'accepted' })]),
    ...(second === undefined
      ? []
      : [
          decision(caseId, second, random, {
            decision: 'reworded',
            wording: `${second.intervention} Begin after the team physician has seen the shoulder.`,
            reason: 'The appointment is next week.',
          }),
        ]),
    ...(third === undefined
      ? []
      : [decision(caseId, third, random, { decision: 'set-aside', reason: 'Not in the weeks of the cup matches.' })]),
  ];
  if (edits.length > 0) await ask(service, 'case.edit', { caseId, edits });
}

function decision(
  caseId: string,
  finding: Finding,
  random: RandomSource,
  made: { decision: 'accepted' | 'reworded' | 'set-aside'; wording?: string; reason?: string },
): Edit {
  return {
    op: 'create',
    kind: 'findingDecision',
    record: {
      id: random.id(),
      caseId,
      findingKey: finding.key,
      wording: '',
      reason: '',
      decidedOutcome: finding.outcome,
      decidedText: readsAs(finding),
      ...made,
    },
  };
}
