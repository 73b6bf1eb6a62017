import { isDeepStrictEqual } from 'node:util';
import type { z } from 'zod';
import type { Door } from '../../shared/contract/channels.ts';
import type { Context } from './context.ts';

/** How files with these heads were read last; null if that is not kept, or no longer understood. */
export async function remembered<T>(
  { store }: Context,
  door: Door,
  heads: readonly string[],
  schema: z.ZodType<T>,
): Promise<T | null> {
  const kept = await store.mapping(door, heads);
  return kept === null ? null : (schema.safeParse(JSON.parse(kept)).data ?? null);
}

/** Keeps how a file was read; what a person decided nothing about is recognised again next time. */
export async function remember(
  { store, now }: Context,
  door: Door,
  heads: readonly string[],
  reading: object,
  isDecided: boolean,
): Promise<void> {
  const kept = await store.mapping(door, heads);
  if (isDecided && !(kept !== null && isDeepStrictEqual(JSON.parse(kept), reading))) {
    await store.rememberMapping(door, heads, reading, now());
  }
}
