import type { EventPayload } from '../../../shared/contract/channels.ts';
import type { Service } from '../../../main/service.ts';

/** A service that remembers what was dispatched and answers with it: hosts are tested without a store. */
export function fakeService(mediaFiles: Readonly<Record<string, string>> = {}) {
  const dispatched: { channel: string; request: unknown }[] = [];
  const listeners = new Set<(payload: EventPayload<'case.changed'>) => void>();
  let closed = 0;
  const service: Service = {
    dispatch(channel, request) {
      dispatched.push({ channel, request });
      return Promise.resolve({ ok: true, value: { channel } });
    },
    on(_event, listener) {
      const heard = listener as (payload: EventPayload<'case.changed'>) => void; // the contract's only event
      listeners.add(heard);
      return () => listeners.delete(heard);
    },
    mediaFile: (sha256) => mediaFiles[sha256] ?? null,
    close() {
      closed += 1;
      return Promise.resolve();
    },
  };
  const emit = (payload: EventPayload<'case.changed'>) => {
    for (const listener of listeners) listener(payload);
  };
  return { service, dispatched, listeners, emit, timesClosed: () => closed };
}
