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

/** The same for every case of the store. */
export const sharedRule = ownRule.omit({ caseId: true });
export type SharedRule = z.infer<typeof sharedRule>;

/** What a case is judged by beside the rules of the program and its own. Not part of the case: the store says it. */
export const judgedBy = z.strictObject({
  /** Own rules for every case, as far as they are on. */
  shared: z.array(sharedRule),
  /** Rules of the program from before an update that nobody has accepted yet; null: there is none. */
  held: z.strictObject({ version: z.string(), rules: z.array(ruleBody) }).nullable(),
});
export type JudgedBy = z.infer<typeof judgedBy>;

export const BY_NOTHING_ELSE: JudgedBy = { shared: [], held: null };
