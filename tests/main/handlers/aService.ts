import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { openService, type Service } from '../../../main/service.ts';
import type { Answer, Channel, Request } from '../../../shared/contract/channels.ts';
import type { KeptRules } from '../../../shared/ports/ruleStore.ts';
import type { Failure } from '../../../shared/errors.ts';
import { AT, after, id } from '../../conformance/examples.ts';

export interface Asked {
  readonly service: Service;
  readonly folder: string;
  readonly ask: <C extends Channel>(channel: C, request: Request<C>) => Promise<Answer<C>>;
  /** The refusal of a request that must not be met. */
  readonly refusal: (channel: string, request: unknown) => Promise<Failure>;
  /** Lets time go by. */
  readonly wait: (ms: number) => void;
  dispose(): Promise<void>;
}

/**
 * A service on a folder of its own, with a clock that gains five seconds at each look and numbered ids; answers checked.
 * @param firstId another one for a folder in which a service was at work before
 * @param rules as if the program had come with these; left out: it comes with its own
 */
export async function aService(
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-service-')),
  firstId = 5000,
  rules?: KeptRules,
): Promise<Asked> {
  let [looks, waitedMs, ids] = [0, 0, firstId];
  const now = () => new Date(after(5000 * looks++ + waitedMs));
  const service = await openService({
    folder,
    host: 'command line',
    now,
    newId: () => id(ids++),
    checkAnswers: true,
    ...(rules === undefined ? {} : { rules }),
  });
  return {
    service,
    folder,
    ask: async <C extends Channel>(channel: C, request: Request<C>) => {
      const result = await service.dispatch(channel, request);
      if (!result.ok) throw new Error(`${channel}: ${result.error.message}`);
      return result.value as Answer<C>;
    },
    refusal: async (channel, request) => {
      const result = await service.dispatch(channel, request);
      if (result.ok) throw new Error(`${channel} was not refused`);
      return result.error;
    },
    wait: (ms) => {
      waitedMs += ms;
    },
    dispose: async () => {
      await service.close();
      fs.rmSync(folder, { recursive: true, force: true });
    },
  };
}

export const TODAY = AT.slice(0, 10);
