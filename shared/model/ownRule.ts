import { z } from 'zod';
import { id } from './parts.ts';

/** Any JSON object that is not absurdly long. */
export const ruleBody = z
  .object({})
  .catchall(z.json())
  .refine((rule) => JSON.stringify(rule).length <= 40_000, 'a rule of at most 40 000 characters');

/**
 * A rule of the user's own, in the form of a rule of a pack. Stored at every step of writing it, so it may be unfinished:
 * it judges only once it is turned on and passes the checks that the program's own rules pass.
 */
export const ownRule = z.strictObject({ id, caseId: id, isOn: z.boolean(), rule: ruleBody });
export type OwnRule = z.infer<typeof ownRule>;
export type RuleBody = z.infer<typeof ruleBody>;
