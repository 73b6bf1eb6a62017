import type { Assessment, CaseCheck, Fact, Finding, HistoryEffect } from '../../shared/assess/assessment.ts';
import type { Injury } from '../../shared/model/injury.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { Selection } from './selectionSlice.ts';

/** What stands behind one selected thing. */
export interface Behind {
  readonly facts: readonly Fact[];
  /** Findings that rest on it. */
  readonly findings: readonly Finding[];
  readonly injuries: readonly { readonly injury: Injury; readonly effects: readonly HistoryEffect[] }[];
  readonly checks: readonly CaseCheck[];
}

/** Facts, findings, injuries and checks that meet at the thing selected. Pure. */
export function behind(selection: Selection, file: CaseFile, assessment: Assessment): Behind {
  const facts = assessment.facts.filter((fact) => isOf(fact, selection, assessment));
  const keys = new Set(facts.map((fact) => fact.key));
  const findings = assessment.findings.filter((finding) =>
    selection.kind === 'finding'
      ? finding.key === selection.key
      : finding.tests.some(({ factKey }) => factKey !== null && keys.has(factKey)) || touches(finding, selection),
  );
  const effects = findings.flatMap((finding) => finding.effects);
  const injuries = file.injuries.flatMap((injury) => {
    const own = effects.filter(({ injuryId }) => injuryId === injury.id);
    return own.length === 0 ? [] : [{ injury, effects: unique(own) }];
  });
  const subjects = new Set<string>([...keys, selection.kind === 'record' ? selection.id : selection.key]);
  const records = recordsBehind(facts, selection, file);
  // A record is asked about many things: beside one number of it stands only what is in question.
  const checks = assessment.checks.filter(
    ({ about, verdict }) => about !== null && (subjects.has(about) || (verdict === 'questioned' && records.has(about))),
  );
  return { facts, findings, injuries, checks };
}

/** The records the facts of a selected fact or finding were read from: of a jump test, its jumps too. */
function recordsBehind(facts: readonly Fact[], selection: Selection, file: CaseFile): ReadonlySet<string> {
  if (selection.kind === 'record') return new Set();
  const ids = new Set(facts.map(({ from }) => from.id));
  const jumps = file.jumpTrials.filter(({ testId }) => ids.has(testId));
  return new Set([...ids, ...jumps.map(({ id }) => id)]);
}

function isOf(fact: Fact, selection: Selection, assessment: Assessment): boolean {
  switch (selection.kind) {
    case 'fact':
      return fact.key === selection.key;
    case 'finding':
      return assessment.findings.some(
        ({ key, tests }) => key === selection.key && tests.some(({ factKey }) => factKey === fact.key),
      );
    case 'record':
      return (
        fact.from.kind === selection.recordKind && fact.from.id === selection.id && concerns(fact, selection.field)
      );
  }
}

/** Records from which many things follow: what follows from which field. */
const FOLLOWS: Readonly<Record<string, readonly string[]>> = {
  massKg: ['body.mass', 'body.weight'],
  massUKg: ['body.mass', 'body.weight'],
  massOn: ['body.mass'],
  statureM: ['body.stature'],
  statureUM: ['body.stature'],
  statureOn: ['body.stature'],
  birthDate: ['body.age'],
  sport: ['athlete.throws'],
  hasRedFlags: ['flag.preparticipation'],
  redFlagsClearedBy: ['flag.preparticipation'],
};

/** From an athlete and from a filmed trial too much follows to show it all beside one field. */
function concerns(fact: Fact, field: string | null): boolean {
  const isWide = fact.from.kind === 'athlete' || fact.from.kind === 'movementTrial';
  return !isWide || field === null || (FOLLOWS[field]?.includes(fact.measure) ?? false);
}

/** A finding about a selected trial, or one that a selected injury changed. */
function touches(finding: Finding, selection: Selection): boolean {
  if (selection.kind !== 'record') return false;
  return finding.trialId === selection.id || finding.effects.some(({ injuryId }) => injuryId === selection.id);
}

/** One injury says the same of many findings; once is enough. */
function unique(effects: readonly HistoryEffect[]): readonly HistoryEffect[] {
  return [...new Map(effects.map((effect) => [`${effect.effect} ${effect.change}`, effect])).values()];
}
