import { keptMapping } from '../../shared/contract/channels.ts';
import type { Handlers } from './context.ts';

export const mappingHandlers: Handlers<'mapping.list' | 'mapping.forget' | 'mapping.putBack'> = {
  // What an older program kept and this one does not understand is not used, so it is not listed.
  'mapping.list': async ({ store }) => ({
    mappings: (await store.mappings()).flatMap(({ heads, mapping, ...row }) => {
      const parsed = keptMapping.safeParse({ ...row, heads: JSON.parse(heads), mapping: JSON.parse(mapping) });
      return parsed.success ? [parsed.data] : [];
    }),
  }),
  'mapping.forget': async ({ store }, { door, heads }) => {
    await store.forgetMapping(door, heads);
    return {};
  },
  'mapping.putBack': async ({ store }, { door, heads, mapping, usedAt }) => {
    await store.rememberMapping(door, heads, mapping, usedAt);
    return {};
  },
};
