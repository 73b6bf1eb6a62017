import { z } from 'zod';
import { DRILLS, type DrillId } from '../knowledge/drills/index.ts';
import { MOVEMENTS } from '../knowledge/movements/index.ts';
import { CONDITIONS, REGIONS } from '../model/injury.ts';
import { type RuleBody, ruleBody } from '../model/ownRule.ts';
import { parseInput } from '../model/parseInput.ts';
import { UNITS, type Unit } from '../units.ts';
import { checkRules, type RuleProblem } from './checkRules.ts';
import { LOADS, type LoadId } from './loads/index.ts';
import { EFFECTS, EVIDENCE, type Rule, RULE_KINDS } from './rule.ts';
import { effectsOf } from './ruleEntry.ts';
import { SHIPPED_RULES } from './shippedRules.ts';

const words = z.string().max(2000);
const unit = z.enum(Object.keys(UNITS) as [Unit, ...Unit[]]);
const load = z.enum(Object.keys(LOADS) as [LoadId, ...LoadId[]]);

const test = z.strictObject({
  measure: z.string(),
  comparator: z.enum(['<', '<=', '>', '>=', 'between', 'outside', 'is']),
  threshold: z.union([
    z.number(),
    z.tuple([z.number(), z.number()]),
    z.strictObject({ female: z.number(), male: z.number() }),
    z.boolean(),
    z.string(),
  ]),
  unit: unit.nullable(),
});

const wording = z.strictObject({ finding: words, intervention: words });

const source = z.strictObject({
  cite: z.string().min(1),
  status: z.enum(['published', 'derived', 'convention', 'from memory']),
});

const ownDrill = z.strictObject({ label: words.min(1), dose: words, progression: words, source });

const effect = z.strictObject({
  condition: z.enum(CONDITIONS),
  effect: z.enum(EFFECTS),
  change: words,
  plain: words.optional(),
  unsafeFor: z.array(z.enum(CONDITIONS)).default([]),
});

/** A rule as people outside this program write it: sources in full, loads by name, an id that says it is their own. */
const packRule = z.strictObject({
  id: z.string().regex(/^own\/[a-z0-9-]+$/, 'must start with own/ and go on in small letters, digits and hyphens'),
  kind: z.enum(RULE_KINDS),
  movement: z.string(),
  phase: z.string(),
  region: z.enum(REGIONS),
  all: z.array(test),
  wording: z.strictObject({ athlete: wording, practitioner: wording, clinician: wording }),
  drill: z.union([z.enum(Object.keys(DRILLS) as [DrillId, ...DrillId[]]), ownDrill]).nullable(),
  retest: z.strictObject({ measure: z.string(), afterDays: z.number() }).nullable(),
  loads: z.array(load).default([]),
  effects: z.array(effect).default([]),
  sources: z.array(source),
  evidence: z.enum(EVIDENCE),
  basis: z.enum(['published', 'derived', 'convention']),
  defersTo: z.array(z.string().min(1)),
  since: z.string().min(1),
  supersededBy: z.string().nullable().default(null),
  eases: z.array(z.enum(['throwing', 'support', 'impact'])).default([]),
  replaces: z.string().nullable().default(null),
});

/** A rule of the program as a store keeps it: written out, under an id of any form. */
const keptRule = packRule.omit({ loads: true }).extend({ id: z.string().min(1), drill: ownDrill.nullable() });

/** Rules that the program came with once, as they were kept; null: their form is not one that this version reads. */
export function keptRules(kept: readonly unknown[]): readonly Rule[] | null {
  const read = z.array(keptRule).safeParse(kept);
  return read.success ? read.data.map((rule) => fromPack({ ...rule, loads: [] })) : null;
}

/** A file of rules of one's own. */
const rulePack = z.strictObject({
  format: z.literal('caseframe-rules'),
  version: z.literal(1),
  name: z.string().min(1),
  rules: z.array(packRule).min(1).max(1000),
  /** SHA-256 of the canonical JSON of the rest: that it is unchanged, not who wrote it. */
  sha256: z.string().optional(),
});

export interface RulePack {
  readonly name: string;
  readonly rules: readonly Rule[];
}

/**
 * Unknown data as a pack of rules, the effects of their loads written out.
 * @throws DomainError 'input-malformed' with the path of what is not of the form; that they may be used is checkPack's word
 */
export function parsePack(input: unknown, what: string): RulePack {
  const { name, rules } = parseInput(rulePack, input, what);
  return { name, rules: rules.map(fromPack) };
}

/** The rules of a pack as they stand in it, for keeping. @throws DomainError 'input-malformed' */
export function packBodies(input: unknown, what: string): RuleBody[] {
  return parseInput(z.object({ rules: z.array(ruleBody) }), input, what).rules;
}

/**
 * Unknown data as one rule of a pack.
 * @throws DomainError 'input-malformed' with the path of what is not of the form
 */
export function parsePackRule(input: unknown, what: string): Rule {
  return fromPack(parseInput(packRule, input, what));
}

function fromPack({ loads, drill, effects, ...rule }: z.infer<typeof packRule>): Rule {
  const own = effects.map(({ plain, ...stated }) => ({ ...stated, ...(plain === undefined ? {} : { plain }) }));
  return { ...rule, drill: typeof drill === 'string' ? DRILLS[drill] : drill, effects: effectsOf(loads, own) };
}

/** What keeps a pack from being used beside the rules that come with the program. */
export function checkPack(pack: RulePack): RuleProblem[] {
  return checkRules([...SHIPPED_RULES, ...pack.rules], MOVEMENTS);
}
