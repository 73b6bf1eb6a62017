import { contextBridge, ipcRenderer } from 'electron';
import type { Bridge } from '../../shared/contract/bridge.ts';
import { CHANNELS, EVENTS } from '../../shared/contract/channels.ts';
import { DomainError, toFailure } from '../../shared/errors.ts';

/** All the page gets of Electron: the contract's channels and events by name, nothing else. */
const bridge: Bridge = {
  host: 'electron',
  async invoke(channel, request) {
    try {
      if (!Object.hasOwn(CHANNELS, channel)) throw new DomainError('not-found', `There is no channel ${channel}.`);
      return await ipcRenderer.invoke(channel, request);
    } catch (thrown) {
      return { ok: false, error: toFailure(thrown) };
    }
  },
  on(event, listener) {
    if (!Object.hasOwn(EVENTS, event)) throw new DomainError('not-found', `There is no event ${event}.`);
    // Electron's own event object would hand the page a way to send on any channel.
    const heard = (_event: unknown, payload: Parameters<typeof listener>[0]): void => listener(payload);
    ipcRenderer.on(event, heard);
    return () => {
      ipcRenderer.off(event, heard);
    };
  },
};

contextBridge.exposeInMainWorld('caseframe', bridge);
