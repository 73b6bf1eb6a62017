/**
 * Examinations and acts that belong to a clinician. Their results are recorded; no wording tells a coach or an athlete to
 * do them. Common practice, no source.
 */
export const CLINICIAN_ONLY: readonly RegExp[] = [
  /\bapprehension (?:test|sign)\b/i,
  /\brelocation test\b/i,
  /\bsulcus\b/i,
  /\bload and shift\b/i,
  /\bjerk test\b/i,
  /\bdrawer test\b/i,
  /\bvalgus stress\b/i,
  /\bpivot shift\b/i,
  /\bprovocat(?:ion|ive)\b/i,
  /\breduce the (?:shoulder|joint|dislocation)\b/i,
  /\bmanipulat(?:e|ion)\b/i,
  /\bpalpat(?:e|ion)\b/i,
  /\bnerve (?:test|check|examination)\b/i,
  /\breflex(?:es)?\b/i,
  /\bimaging\b/i,
];

/** What is left to others or refused is not coached: `never apprehension tests`, `refer for imaging`. */
const LEFT_TO_OTHERS = /\b(never|no|not|without|refer\w*|until)\b[^,.;:]*/gi;

/** Acts of a clinician that a text asks its reader to do. */
export function clinicianActsIn(text: string): string[] {
  const asked = text.replaceAll(LEFT_TO_OTHERS, '');
  return CLINICIAN_ONLY.flatMap((act) => act.exec(asked)?.[0] ?? []);
}
