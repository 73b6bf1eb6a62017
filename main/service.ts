import { randomUUID } from 'node:crypto';
import { type Channel, CHANNELS, EVENTS, type EventName, type EventPayload } from '../shared/contract/channels.ts';
import { DomainError, type Result, toFailure } from '../shared/errors.ts';
import { parseInput } from '../shared/model/parseInput.ts';
import { appHandlers } from './handlers/appHandlers.ts';
import { batteryHandlers } from './handlers/batteryHandlers.ts';
import { caseHandlers } from './handlers/caseHandlers.ts';
import type { Context, Handlers } from './handlers/context.ts';
import type { KeptRules } from '../shared/ports/ruleStore.ts';
import { judgeOutdated } from './handlers/judged.ts';
import { jumpHandlers } from './handlers/jumpHandlers.ts';
import { leaveFilms, mediaHandlers } from './handlers/mediaHandlers.ts';
import { reportHandlers } from './handlers/reportHandlers.ts';
import { mergeHandlers } from './handlers/mergeHandlers.ts';
import { ruleHandlers } from './handlers/ruleHandlers.ts';
import { sharedRuleHandlers } from './handlers/sharedRuleHandlers.ts';
import { runHandlers } from './handlers/runHandlers.ts';
import { stillHandlers } from './handlers/stillHandlers.ts';
import { mappingHandlers } from './handlers/mappingHandlers.ts';
import { trialHandlers } from './handlers/trialHandlers.ts';
import { shippedPack } from './exchange/packFile.ts';
import { openMediaStore } from './media/mediaStore.ts';
import { openSqliteCaseStore } from './store/sqliteCaseStore.ts';

const HANDLERS: Handlers<Channel> = {
  ...appHandlers,
  ...caseHandlers,
  ...jumpHandlers,
  ...mappingHandlers,
  ...trialHandlers,
  ...stillHandlers,
  ...mediaHandlers,
  ...reportHandlers,
  ...runHandlers,
  ...mergeHandlers,
  ...batteryHandlers,
  ...ruleHandlers,
  ...sharedRuleHandlers,
};

/** Channels that only look, and two that keep what they made in its turn. All others change something and run one after the other, in the order they came. */
const LOOKS: ReadonlySet<Channel> = new Set([
  'app.info',
  'shelf.list',
  'case.open',
  'case.history',
  'jump.previewForce',
  'jump.trace',
  'report.preview',
  'rules.preview',
  'rules.export',
  'rules.shared',
  'rules.update',
  'report.text',
  'report.make',
  'report.cancel',
  'roster.preview',
  'roster.list',
  'battery.list',
  'battery.export',
  'run.list',
  'run.export',
  'run.compare',
  'media.proxyState',
] satisfies Channel[]);

export interface ServiceOptions {
  readonly folder: string;
  readonly host: Context['host'];
  readonly now?: () => Date;
  readonly newId?: () => string;
  /** Also holds every answer against the contract. For tests: the answers are our own. */
  readonly checkAnswers?: boolean;
  /** What the store keeps as the rules of this program. For tests: as an earlier program would have done. */
  readonly rules?: KeptRules;
}

/** The program without a face: what both hosts and the command line call. */
export interface Service {
  /** Validates, runs, answers. Never rejects: what went wrong is in the answer. */
  dispatch(channel: string, request: unknown): Promise<Result<unknown>>;
  on<E extends EventName>(event: E, listener: (payload: EventPayload<E>) => void): () => void;
  /** Where a stored file lies; null if this is no SHA-256. */
  mediaFile(sha256: string): string | null;
  /** Refuses new calls, waits for those under way, gives the folder back. */
  close(): Promise<void>;
}

/** @throws DomainError 'store-locked', 'store-unwritable', 'store-newer', 'store-corrupt' */
export async function openService(options: ServiceOptions): Promise<Service> {
  const {
    folder,
    host,
    now = () => new Date(),
    newId = randomUUID,
    checkAnswers = false,
    rules = shippedPack(),
  } = options;
  const store = openSqliteCaseStore(folder, { host, pid: process.pid, since: now().toISOString() });
  const orGiveBack = async (thrown: unknown) => {
    await store.close();
    throw thrown;
  };
  const media = await openMediaStore(folder).catch(orGiveBack);
  const settleMedia = () => media.settle((sha256) => store.isFileKept(sha256));
  await settleMedia().catch(orGiveBack);
  const listeners = new Map<EventName, Set<(payload: never) => void>>();
  const running = new Set<Promise<unknown>>();
  let lastChange: Promise<unknown> = Promise.resolve();
  let isClosing = false;

  const context: Context = {
    store,
    media,
    host,
    folder,
    now: () => now().toISOString(),
    newId,
    inTurn(change) {
      // What a refused change left in the media store goes at once; if that fails, at the next opening.
      const done = lastChange.then(change).finally(() => settleMedia().catch(() => undefined));
      lastChange = done.catch(() => undefined);
      return done;
    },
    emit(event, payload) {
      for (const listener of listeners.get(event) ?? []) listener(payload as never);
    },
  };

  await store.rules.use(rules).catch(orGiveBack);
  // A program that was ended between an edit and its judging left the old cautions on the shelf.
  await judgeOutdated(context).catch(orGiveBack);

  async function answer(channel: unknown, request: unknown): Promise<unknown> {
    if (isClosing) throw new DomainError('cancelled', 'The program is closing; nothing was changed.');
    if (!isChannel(channel))
      throw new DomainError('not-found', `There is no channel called ${String(channel).slice(0, 100)}.`);
    const parsed = parseInput<unknown>(CHANNELS[channel].request, request, 'the request');
    const run = async () => {
      const answered = await handle(context, channel, parsed);
      if (checkAnswers) parseInput<unknown>(CHANNELS[channel].answer, answered, 'the answer');
      return answered;
    };
    return LOOKS.has(channel) ? run() : context.inTurn(run);
  }

  return {
    async dispatch(channel, request) {
      const call = answer(channel, request);
      running.add(call);
      try {
        return { ok: true, value: await call };
      } catch (thrown) {
        return { ok: false, error: toFailure(thrown) };
      } finally {
        running.delete(call);
      }
    },
    on(event, listener) {
      if (!Object.hasOwn(EVENTS, event)) throw new DomainError('not-found', `There is no event called ${event}.`);
      const heard = listeners.get(event) ?? new Set();
      listeners.set(event, heard.add(listener));
      return () => heard.delete(listener);
    },
    mediaFile: (sha256) => media.path(sha256),
    async close() {
      isClosing = true;
      await Promise.allSettled([...running, lastChange]);
      await leaveFilms(context);
      await store.close();
    },
  };
}

/** Hosts pass on what they were sent, which need not be text. */
function isChannel(channel: unknown): channel is Channel {
  return typeof channel === 'string' && Object.hasOwn(CHANNELS, channel);
}

/** The request was parsed by the channel's own schema, which is what makes this one cast true. */
function handle(context: Context, channel: Channel, request: unknown): Promise<unknown> {
  const handler = HANDLERS[channel] as (context: Context, request: unknown) => Promise<unknown>;
  return handler(context, request);
}
