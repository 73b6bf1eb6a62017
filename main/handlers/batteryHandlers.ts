import { canonicalJson } from '../../shared/canonicalJson.ts';
import type { Answer } from '../../shared/contract/channels.ts';
import { DomainError } from '../../shared/errors.ts';
import { readBatteryFile, writeBattery } from '../../shared/exchange/batteryFile.ts';
import { copyBattery } from '../../shared/knowledge/screening/copyBattery.ts';
import { BATTERIES } from '../../shared/knowledge/screening/shipped.ts';
import type { BatteryBody, OwnBattery } from '../../shared/model/battery.ts';
import { parseInput } from '../../shared/model/parseInput.ts';
import { soundBattery } from '../../shared/model/screening.ts';
import { parseJson } from '../exchange/parseJson.ts';
import type { Context, Handlers } from './context.ts';

type BatteryChannel =
  | 'battery.list'
  | 'battery.edit'
  | 'battery.save'
  | 'battery.remove'
  | 'battery.undo'
  | 'battery.redo'
  | 'battery.import'
  | 'battery.export';

export const batteryHandlers: Handlers<BatteryChannel> = {
  'battery.list': listed,
  'battery.edit': async (context, { id, draft, isRetired }) => {
    const held = await find(context, id);
    const battery = { ...(held ?? { id, versions: [] }), draft, isRetired };
    if (draft !== null && draft.id !== id) {
      throw new DomainError('input-malformed', 'battery.edit needs a draft of the battery it names.', 'draft.id');
    }
    return put(context, battery);
  },
  'battery.save': async (context, { id }) => {
    const held = await find(context, id);
    if (held?.draft === undefined || held.draft === null) {
      throw new DomainError('not-found', 'Nothing was changed in this battery since its last version.', 'id');
    }
    const version = String((await context.store.batteries.lastVersion(id)) + 1);
    const saved = parseInput(soundBattery, { ...held.draft, version }, 'the battery');
    return put(context, { ...held, draft: null, versions: [...held.versions, saved] });
  },
  'battery.remove': async (context, { id, version }) => {
    const held = await find(context, id);
    const going = held?.versions.filter((one) => version === null || one.version === version) ?? [];
    if (held === null || (version !== null && going.length === 0)) throw notThere(id, version);
    const used = (await context.store.batteries.uses()).find(
      (use) => use.id === id && going.some((one) => one.version === use.version),
    );
    if (used !== undefined) {
      throw new DomainError(
        'conflict',
        `Version ${used.version} was used in ${used.sessions} session${used.sessions === 1 ? '' : 's'} and stays. Retire the battery instead: it is then offered no more.`,
        'version',
      );
    }
    const versions = held.versions.filter((one) => !going.includes(one));
    const isGone = version === null || (versions.length === 0 && held.draft === null);
    await context.store.batteries.edit([{ id, battery: isGone ? null : { ...held, versions } }], context.now());
    return listed(context);
  },
  'battery.undo': async (context) => {
    await context.store.batteries.undo();
    return listed(context);
  },
  'battery.redo': async (context) => {
    await context.store.batteries.redo();
    return listed(context);
  },
  'battery.import': async (context, { fileName, text }) => {
    const battery = readBatteryFile(parseJson(text, fileName), fileName);
    const { id, version } = battery;
    const held = await find(context, id);
    const same = held?.versions.find((one) => one.version === version);
    if (same !== undefined && canonicalJson(same) !== canonicalJson(battery)) {
      throw new DomainError(
        'conflict',
        `Version ${version} of this battery is here already and says something else. A saved version is never changed: give the file another version or another id. Nothing was stored.`,
        'version',
      );
    }
    if (same === undefined) {
      const versions = [...(held?.versions ?? []), battery].toSorted((a, b) => Number(a.version) - Number(b.version));
      await put(context, { id, draft: held?.draft ?? null, isRetired: false, versions });
    }
    return { id, version, label: battery.label, isNew: same === undefined };
  },
  'battery.export': async (context, { id, version }) => {
    const battery = await versionOf(context, id, version);
    return {
      fileName: `${battery.label.replaceAll(/[^\p{L}\p{N}]+/gu, '-').toLowerCase()}-${battery.version}.battery.json`,
      text: `${JSON.stringify(writeBattery(battery), null, 2)}\n`,
    };
  },
};

async function listed({ store }: Context): Promise<Answer<'battery.list'>> {
  const { batteries, canUndo, canRedo } = await store.batteries.all();
  const uses = await store.batteries.uses();
  return {
    batteries: batteries.map(({ draft, versions, ...battery }) => ({
      ...battery,
      draft,
      versions: [...versions],
      uses: uses.flatMap(({ id, version, sessions }) => (id === battery.id ? [{ version, sessions }] : [])),
    })),
    canUndo,
    canRedo,
  };
}

async function put(context: Context, battery: OwnBattery): Promise<Answer<'battery.list'>> {
  await context.store.batteries.edit([{ id: battery.id, battery }], context.now());
  return listed(context);
}

async function find({ store }: Context, id: string): Promise<OwnBattery | null> {
  return (await store.batteries.all()).batteries.find((one) => one.id === id) ?? null;
}

/** A saved version of one's own, null for the newest; or one of the program, as a copy of it begins. */
async function versionOf(context: Context, id: string, version: string | null): Promise<BatteryBody> {
  const shipped = BATTERIES.find((one) => one.id === id && (version === null || one.version === version));
  if (shipped !== undefined) return copyBattery(shipped, context.newId(), shipped.label);
  const held = await find(context, id);
  const found = held?.versions.findLast((one) => version === null || one.version === version);
  if (found === undefined) throw notThere(id, version);
  return found;
}

function notThere(id: string, version: string | null): DomainError {
  const which = version === null ? '' : `, version ${version}`;
  return new DomainError(
    'not-found',
    `There is no battery ${id}${which} here; battery list shows those there are.`,
    'id',
  );
}
