import type { Result } from '../errors.ts';
import type { Answer, Channel, EventName, EventPayload, Request } from './channels.ts';

/** The door between renderer and main, whichever host runs. Never rejects for a refused request: refusals are data. */
export interface Bridge {
  readonly host: 'electron' | 'loopback';
  invoke<C extends Channel>(channel: C, request: Request<C>): Promise<Result<Answer<C>>>;
  /** Returns the function that stops listening. */
  on<E extends EventName>(event: E, listener: (payload: EventPayload<E>) => void): () => void;
}
