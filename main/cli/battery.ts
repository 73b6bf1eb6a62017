import fs from 'node:fs';
import { BATTERY_SCHEMA } from '../../shared/exchange/batteryFile.ts';
import { counted } from '../../shared/format/number.ts';
import type { Battery } from '../../shared/knowledge/screening/battery.ts';
import { readBattery, resultWords } from '../../shared/knowledge/screening/readBattery.ts';
import { BATTERIES } from '../../shared/knowledge/screening/shipped.ts';
import type { BatteryBody } from '../../shared/model/battery.ts';
import { UNITS } from '../../shared/units.ts';
import { ask } from './ask.ts';
import { type Command, readText, UsageError, writing } from './command.ts';

export const batteryList: Command = {
  name: 'battery list',
  usage: '[--folder DIR]',
  does: 'the batteries of the program and those of one’s own, with their versions',
  words: 0,
  options: {},
  async run({ openStore }) {
    const { batteries } = await ask(await openStore(), 'battery.list', {});
    const own = batteries.flatMap(({ id, versions, draft, isRetired, uses }) =>
      versions.map(({ version, label, items }) => ({
        id,
        version,
        label,
        items: items.length,
        isOwn: true,
        isRetired,
        hasDraft: draft !== null,
        sessions: uses.find((use) => use.version === version)?.sessions ?? 0,
      })),
    );
    const shipped = BATTERIES.map(({ id, version, label, items }) => ({
      id,
      version,
      label,
      items: items.length,
      isOwn: false,
    }));
    return {
      json: { batteries: [...shipped, ...own] },
      lines: [...shipped, ...own].map(
        (one) => `${one.id}  version ${one.version}  ${one.label}, ${counted(one.items, 'item')}${words(one)}`,
      ),
    };
  },
};

function words(one: { isOwn: boolean; isRetired?: boolean; sessions?: number }): string {
  if (!one.isOwn) return ', of the program';
  return `, ${counted(one.sessions ?? 0, 'session')}${one.isRetired === true ? ', retired' : ''}`;
}

export const batteryShow: Command = {
  name: 'battery show',
  usage: 'ID|--schema [--version N] [--folder DIR]',
  does: 'one battery, its newest version unless told; --schema: JSON Schema of it',
  words: 0,
  mayFollow: 1,
  options: { schema: { type: 'boolean' }, version: { type: 'string' } },
  async run({ words: [id], options, openStore }) {
    if (options['schema'] === true) return { json: BATTERY_SCHEMA, lines: [JSON.stringify(BATTERY_SCHEMA, null, 2)] };
    if (id === undefined) throw new UsageError('battery show needs ID, or --schema.');
    const { text } = await ask(await openStore(), 'battery.export', { id, version: versionFrom(options) });
    const { format, formatVersion, ...body } = JSON.parse(text) as BatteryBody & { format: string; formatVersion: 1 };
    return { json: { format, formatVersion, ...body }, lines: linesOf(readBattery(body)) };
  },
};

export const batteryExport: Command = {
  name: 'battery export',
  usage: 'ID --out FILE.json [--version N] [--folder DIR]',
  does: 'one battery as a file, its newest version unless told',
  words: 1,
  options: { out: { type: 'string' }, version: { type: 'string' } },
  async run({ words: [id = ''], options, openStore }) {
    const { out } = options;
    if (typeof out !== 'string' || out === '') throw new UsageError('--out needs the file to write.');
    const { text } = await ask(await openStore(), 'battery.export', { id, version: versionFrom(options) });
    writing(out, () => fs.writeFileSync(out, text));
    return { json: { file: out, id }, lines: [`Written to ${out}`] };
  },
};

export const batteryImport: Command = {
  name: 'battery import',
  usage: 'FILE.json [--folder DIR]',
  does: 'a battery from a file; one that is at fault is refused with the place, nothing of it is stored',
  words: 1,
  options: {},
  async run({ words: [fileName = ''], openStore }) {
    const taken = await ask(await openStore(), 'battery.import', { fileName, text: readText(fileName) });
    const said = taken.isNew ? 'taken in' : 'is here already, unchanged';
    return { json: taken, lines: [`${taken.label}, version ${taken.version}, ${said}. Id ${taken.id}`] };
  },
};

function versionFrom(options: Readonly<Record<string, unknown>>): string | null {
  return typeof options['version'] === 'string' ? options['version'] : null;
}

function linesOf({ label, version, items }: Battery): string[] {
  return [
    `${label}, version ${version}, ${counted(items.length, 'item')}`,
    ...items.map(({ id, label: name, kind, hasSides, displayUnit, trials, own }) => {
      const parts = [
        kind,
        hasSides ? 'left and right' : 'no sides',
        displayUnit === null ? '' : UNITS[displayUnit].label,
        trials === undefined ? '' : resultWords(trials),
        own?.link === null && own.cut.length > 0 ? `no longer the item it comes from: ${own.cut.join('; ')}` : '',
        own?.link === null && own.cut.length === 0 ? 'of one’s own' : '',
      ].filter((part) => part !== '');
      return `  ${id}  ${name}: ${parts.join(', ')}`;
    }),
  ];
}
