import type { Bridge } from '../shared/contract/bridge.ts';
import type { EventPayload } from '../shared/contract/channels.ts';
import type { Failure, Result } from '../shared/errors.ts';

declare global {
  interface Window {
    /** Put there by the desktop host before the page starts. */
    readonly caseframe?: Bridge;
  }
}

/** The door of the loopback host: the page's own origin. Rejects only if nobody answers. */
function httpBridge(): Bridge {
  let events: EventSource | undefined;
  return {
    host: 'loopback',
    async invoke(channel, request) {
      const response = await fetch(`/api/${channel}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(request),
      });
      if (response.headers.get('content-type')?.includes('json') === true)
        return (await response.json()) as Result<never>;
      return { ok: false, error: refusal(response.status, await response.text()) };
    },
    on(event, listener) {
      events ??= new EventSource('/api/events');
      const onMessage = (message: MessageEvent<string>) =>
        listener(JSON.parse(message.data) as EventPayload<typeof event>);
      events.addEventListener(event, onMessage);
      return () => events?.removeEventListener(event, onMessage);
    },
  };
}

function refusal(status: number, words: string): Failure {
  if (status === 401 || status === 403) {
    return {
      code: 'internal',
      message: 'This window is no longer signed in to the workbench. Close it and start Caseframe again.',
      path: null,
    };
  }
  if (status === 413)
    return { code: 'input-out-of-range', message: 'This file is too large to be taken in.', path: null };
  return { code: 'internal', message: `The workbench answered with ${status}: ${words}`, path: null };
}

export const bridge: Bridge = window.caseframe ?? httpBridge();
