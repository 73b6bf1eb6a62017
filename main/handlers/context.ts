import type { Answer, Channel, EventName, EventPayload, Request } from '../../shared/contract/channels.ts';
import type { MediaStore } from '../media/mediaStore.ts';
import type { SqliteCaseStore } from '../store/sqliteCaseStore.ts';

/** What handlers work with. Clock and ids come from outside, so that a demo or a test can set them. */
export interface Context {
  readonly store: SqliteCaseStore;
  readonly media: MediaStore;
  readonly host: 'electron' | 'loopback' | 'command line';
  readonly folder: string;
  readonly now: () => string;
  readonly newId: () => string;
  /** Waits until changes asked for before are done, and holds up those after: for what has worked outside the line. */
  readonly inTurn: <T>(change: () => Promise<T>) => Promise<T>;
  readonly emit: <E extends EventName>(event: E, payload: EventPayload<E>) => void;
}

/** One short function per channel: no SQL, no maths. */
export type Handlers<C extends Channel> = {
  readonly [K in C]: (context: Context, request: Request<K>) => Promise<Answer<K>>;
};
