import type { BatteryBody, OwnItem } from '../../model/battery.ts';
import type { Source } from '../../quantity.ts';
import { siUnitOf } from '../../units.ts';
import type { MeasurementError } from '../measure.ts';
import type { Battery, BatteryItem, Trials } from './battery.ts';
import { shippedItem } from './shipped.ts';

/** A clearing test of one's own. Its rule says to stop and be seen, whatever it is called. */
export const OWN_CLEARING = 'clearing.own';

const SET_HERE: Source = { cite: 'Set by whoever made this battery', status: 'convention' };

/** A battery of one's own in the form that the program reads every battery in. */
export function readBattery(body: BatteryBody): Battery {
  const known = alreadyRead.get(body);
  if (known !== undefined) return known;
  const { id, version, label, description, items } = body;
  const battery = { id, version, label, description, items: items.map((item) => readItem(item, id)) };
  alreadyRead.set(body, battery);
  return battery;
}

/** Every result of a run asks for its item at every keystroke. */
const alreadyRead = new WeakMap<BatteryBody, Battery>();

/**
 * What of the item it was copied from is no longer so, in words: its meaning is another then, and rules and reference
 * bands of the program hold no more. Name, order, instructions, cautions and the plausible range are free.
 */
export function whatCutsTheLink(item: OwnItem): readonly string[] {
  const shipped = item.from === null ? null : shippedItem(item.from);
  if (shipped === null) return item.from === null ? [] : ['this version of the program does not have that item'];
  const { kind, region, hasSides, unit, standard } = item;
  const was = [
    [kind === shipped.kind, `it was ${shipped.kind}`],
    [unit === shipped.displayUnit, `its unit was ${shipped.displayUnit ?? 'none'}`],
    [hasSides === shipped.hasSides, shipped.hasSides ? 'it was taken on each side' : 'it had no sides'],
    [item.trials?.combine === shipped.trials?.combine, `its result was ${resultWords(shipped.trials ?? null)}`],
    [region === shipped.region, `its region was ${shipped.region.replaceAll('-', ' ')}`],
    [
      JSON.stringify(ordered(standard)) === JSON.stringify(ordered(shipped.standard)),
      'its written standard was another',
    ],
  ] as const;
  return was.flatMap(([isSame, words]) => (isSame ? [] : [words]));
}

/** How trials become a result, in words. */
export function resultWords(trials: Trials | null): string {
  if (trials === null) return 'one value';
  return `the ${trials.combine} of up to ${trials.most} trials`;
}

function ordered(standard: BatteryItem['standard']) {
  return standard === null ? null : [standard.met, standard.metWithCompensation, standard.notMet];
}

function readItem(item: OwnItem, batteryId: string): BatteryItem {
  const shipped = item.from === null ? null : shippedItem(item.from);
  const cut = whatCutsTheLink(item);
  const link = shipped !== null && cut.length === 0 ? shipped : null;
  const plausible = ends(item.plausible);
  const isChanged = link === null || JSON.stringify(plausible) !== JSON.stringify(link.plausible);
  return {
    id: item.id,
    label: item.label,
    kind: item.kind,
    measure: link?.measure ?? (item.kind === 'clearing' ? OWN_CLEARING : `own/${batteryId}/${item.id}`),
    region: item.region,
    hasSides: item.hasSides,
    unit: item.unit === null ? null : siUnitOf(item.unit),
    displayUnit: item.unit,
    ...(item.trials === null ? {} : { trials: item.trials }),
    ...(item.dividedBy === null ? {} : { dividedBy: item.dividedBy }),
    instructions: item.instructions,
    standard: item.standard,
    // Only ever added to: what the program says of the item stands first, link or none.
    caution: [shipped?.caution ?? '', item.caution].filter((words) => words !== '').join(' '),
    skipFor: [...new Set([...(shipped?.skipFor ?? []), ...item.skipFor])],
    possible: link === null ? ends(item.possible) : link.possible,
    plausible,
    reference: link === null ? referenceOf(item) : link.reference,
    source: link === null ? item.source : link.source,
    own: {
      link: link?.id ?? null,
      cut,
      error: link === null ? errorOf(item) : null,
      plausibleSource: isChanged ? SET_HERE : link.source,
    },
  };
}

function ends(range: OwnItem['possible']): readonly [number, number] | null {
  const [low, high] = range ?? [null, null];
  return low === null || high === null ? null : [low, high];
}

function referenceOf({ reference }: OwnItem): BatteryItem['reference'] {
  if (reference === null || reference.low === null || reference.high === null) return null;
  return { ...reference, low: reference.low, high: reference.high };
}

function errorOf({ error }: OwnItem): MeasurementError | null {
  return error === null || (error.mdc === null && error.border === null) ? null : error;
}
