import type { BatteryBody } from '../../model/battery.ts';
import type { JumpTrial } from '../../model/jump.ts';
import type { OwnMovement } from '../../model/ownMovement.ts';
import type { OwnRule, RuleBody } from '../../model/ownRule.ts';
import type { Kind } from '../../model/records.ts';
import type { Redaction } from './redact.ts';

type Json = RuleBody[string];

/**
 * The fields of a record with words of a person's deeper down, each with those words redacted: a battery, a movement or a
 * rule of one's own, the heads of a force file.
 */
export function redactWithin(
  kind: Kind,
  record: Readonly<Record<string, unknown>>,
  redact: Redaction,
): Record<string, unknown> {
  if (kind === 'ownMovement') {
    const { events, phases } = record as unknown as OwnMovement;
    return {
      events: events.map((event) => redactMeaning(event, redact)),
      phases: phases.map((phase) => redactMeaning(phase, redact)),
    };
  }
  if (kind === 'ownRule') return { rule: redactRule((record as unknown as OwnRule).rule, redact) };
  if (kind === 'jumpTrial') {
    const { force } = record as unknown as JumpTrial;
    return force === null ? {} : { force: { ...force, columns: force.columns.map(redact) } };
  }
  const battery = (record['battery'] ?? null) as BatteryBody | null;
  return battery === null ? {} : { battery: redactBattery(battery, redact) };
}

function redactMeaning<T extends { label: string; means: string }>(named: T, redact: Redaction): T {
  return { ...named, label: redact(named.label), means: redact(named.means) };
}

function redactBattery(battery: BatteryBody, redact: Redaction): BatteryBody {
  const cited = <S extends { cite: string }>(source: S): S => ({ ...source, cite: redact(source.cite) });
  return {
    ...battery,
    label: redact(battery.label),
    description: redact(battery.description),
    items: battery.items.map((item) => ({
      ...item,
      label: redact(item.label),
      instructions: item.instructions.map(redact),
      standard:
        item.standard === null
          ? null
          : {
              met: redact(item.standard.met),
              metWithCompensation: redact(item.standard.metWithCompensation),
              notMet: redact(item.standard.notMet),
            },
      caution: redact(item.caution),
      error: item.error === null ? null : { ...item.error, source: cited(item.error.source) },
      reference:
        item.reference === null
          ? null
          : { ...item.reference, group: redact(item.reference.group), source: cited(item.reference.source) },
      source: cited(item.source),
    })),
  };
}

/** Of a rule, which may be unfinished or of another version: all but what names something of the program. */
const OF_THE_PROGRAM = new Set(
  'id kind movement phase region measure comparator unit threshold condition effect unsafeFor eases status evidence basis since replaces supersededBy'.split(
    ' ',
  ),
);

function redactRule(rule: RuleBody, redact: Redaction): RuleBody {
  const within = (value: Json): Json => {
    if (typeof value === 'string') return redact(value);
    if (Array.isArray(value)) return value.map(within);
    return value === null || typeof value !== 'object' ? value : redactRule(value, redact);
  };
  return Object.fromEntries(
    Object.entries(rule).map(([key, value]) => [key, OF_THE_PROGRAM.has(key) ? value : within(value)]),
  );
}
