import { createHash } from 'node:crypto';
import { canonicalJson } from '../../shared/canonicalJson.ts';
import { DomainError } from '../../shared/errors.ts';
import type { KeptRules } from '../../shared/ports/ruleStore.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';
import { RULES_VERSION } from '../../shared/versions.ts';

/** The rules of this program, as a store keeps them. */
export function shippedPack(): KeptRules {
  return { digest: contentSha256(SHIPPED_RULES), version: RULES_VERSION, rules: SHIPPED_RULES };
}

const FORMAT = 'caseframe-rules';

/**
 * Own rules as a file. Its SHA-256, of the canonical JSON of all the rest, shows that the content is unchanged since; it
 * does not show who wrote it.
 */
export function writePackFile(name: string, rules: readonly object[]): { text: string; sha256: string } {
  const content = { format: FORMAT, version: 1, name, rules };
  const sha256 = contentSha256(content);
  return { text: `${JSON.stringify({ ...content, sha256 }, null, 2)}\n`, sha256 };
}

/**
 * The signature of a pack, after holding it against the content; null: it carries none.
 * @throws DomainError 'refused-for-safety' if the content was changed after it was signed
 */
export function checkSignature(pack: unknown, what: string): string | null {
  if (typeof pack !== 'object' || pack === null || !('sha256' in pack)) return null;
  const { sha256, ...content } = pack;
  if (sha256 === contentSha256(content)) return sha256;
  throw new DomainError(
    'refused-for-safety',
    `${what} was changed after it was written: its content does not agree with its SHA-256. Nothing was changed. Ask for the file again, or take the line "sha256" out if the change is yours.`,
  );
}

function contentSha256(content: object): string {
  return createHash('sha256').update(canonicalJson(content)).digest('hex');
}
