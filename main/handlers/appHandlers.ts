import { APP_VERSION, KERNEL_VERSION, RULES_VERSION } from '../../shared/versions.ts';
import type { Handlers } from './context.ts';

export const appHandlers: Handlers<'app.info' | 'store.verify'> = {
  'app.info': async ({ store, host, folder }) => ({
    appVersion: APP_VERSION,
    kernelVersion: KERNEL_VERSION,
    rulesVersion: RULES_VERSION,
    schemaVersion: store.schemaVersion,
    host,
    storeFolder: folder,
  }),
  'store.verify': async ({ store, media }) => ({
    problems: [...(await store.verify()), ...(await media.verify(await store.keptFiles()))],
  }),
};
