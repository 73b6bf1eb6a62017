import { DomainError } from '../../shared/errors.ts';
import type { RunEntry, RunFile } from '../../shared/exchange/runFile.ts';
import type { Battery, BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import { combineTrials } from '../../shared/knowledge/screening/combineTrials.ts';
import { isPossible } from '../../shared/knowledge/screening/isPossible.ts';
import { peopleOf } from './samePerson.ts';

/**
 * Refuses a run that no laptop can have taken: a result that its test cannot give, or one that stands in it twice.
 * @throws DomainError 'not-comparable' for a test the battery does not have, 'conflict' for what stands twice,
 *   'input-malformed' or 'input-out-of-range' for a result, each with its place in the file
 */
export function checkRun({ athletes }: RunFile, battery: Battery, fileName: string): void {
  const people = peopleOf<RunFile['athletes'][number]>([], (athlete) => athlete);
  for (const [i, athlete] of athletes.entries()) {
    if (people.same(athlete).length > 0) {
      throw new DomainError(
        'conflict',
        `${fileName} holds ${athlete.name} twice. Nothing was stored.`,
        `athletes.${i}.name`,
      );
    }
    people.add(athlete);
    const seen = new Set<string>();
    for (const [j, entry] of athlete.results.entries()) {
      const place = `athletes.${i}.results.${j}`;
      const item = battery.items.find(({ id }) => id === entry.itemId);
      if (item === undefined) {
        throw new DomainError(
          'not-comparable',
          `${fileName} was taken with a test called ${entry.itemId}, which is not known here. Nothing was stored.`,
          `${place}.itemId`,
        );
      }
      const refuse = (code: 'conflict' | 'input-malformed' | 'input-out-of-range', field: string, words: string) => {
        throw new DomainError(
          code,
          `${fileName}, ${athlete.name}, ${item.label}: ${words} Nothing was stored.`,
          `${place}.${field}`,
        );
      };
      if (seen.has(`${entry.itemId} ${entry.side}`)) refuse('conflict', 'itemId', 'the result stands there twice.');
      seen.add(`${entry.itemId} ${entry.side}`);
      if (item.hasSides === (entry.side === 'none')) {
        refuse('input-malformed', 'side', item.hasSides ? 'needs left or right.' : 'has no sides.');
      }
      const foreign = foreignField(item, entry);
      if (foreign !== undefined) refuse('input-malformed', foreign, 'is not recorded like that.');
      if (!isPossibleResult(item, entry)) refuse('input-out-of-range', 'valueSi', 'no such value is possible.');
    }
  }
}

/** A mean of counts need not be whole; what was counted is. The result is what the item makes of its trials. */
function isPossibleResult(item: BatteryItem, { valueSi, trialsSi }: RunEntry): boolean {
  if (trialsSi !== null) {
    if (item.trials === undefined || trialsSi.length > item.trials.most || valueSi === null) return false;
    const combined = combineTrials(item.trials.combine, trialsSi);
    if (Math.abs(combined - valueSi) > 1e-9 * Math.max(1, Math.abs(combined))) return false;
  }
  const values = trialsSi ?? (valueSi === null ? [] : [valueSi]);
  return values.every((value) => isPossible(item, value) && (item.kind !== 'counted' || Number.isInteger(value)));
}

const FIELD_OF = { graded: 'grade', clearing: 'isPositive', measured: 'valueSi', counted: 'valueSi' } as const;

/** A field with something in it that the kind of item does not ask for. */
function foreignField({ kind }: BatteryItem, entry: RunEntry): string | undefined {
  return (['valueSi', 'grade', 'isPositive'] as const).find(
    (field) => field !== FIELD_OF[kind] && entry[field] !== null,
  );
}
