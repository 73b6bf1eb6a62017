import type { Composition } from '../compose.ts';
import { closing, sourcesList } from '../parts/closing.ts';
import { profileFindings, trialFindings } from '../parts/findings.ts';
import { firstSteps } from '../parts/firstSteps.ts';
import { heldBack, notAssessed, openQuestions } from '../parts/limits.ts';
import { titleBlock, whoAndWhy } from '../parts/opening.ts';
import { jumps, screening } from '../parts/results.ts';
import { safetyFirst } from '../parts/safety.ts';
import { workingAppendix } from '../parts/working.ts';
import type { Writing } from '../parts/writing.ts';

/** For the athlete: what was found and what to do, then the numbers behind it. */
export function composeClient(writing: Writing): Composition {
  const title = `Movement assessment: ${writing.file.athlete.name}`;
  return {
    title,
    kindWords: 'client report',
    blocks: [
      ...titleBlock(writing, title),
      ...whoAndWhy(writing),
      ...safetyFirst(writing),
      ...firstSteps(writing),
      ...trialFindings(writing),
      ...profileFindings(writing),
      ...heldBack(writing),
      ...notAssessed(writing),
      ...openQuestions(writing),
      ...jumps(writing),
      ...screening(writing),
      ...workingAppendix(writing),
      ...sourcesList(writing),
      ...closing(writing),
    ],
  };
}
