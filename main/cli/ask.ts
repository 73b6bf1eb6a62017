import type { Answer, Channel, Request } from '../../shared/contract/channels.ts';
import { DomainError } from '../../shared/errors.ts';
import type { Service } from '../service.ts';

/** Calls a channel and returns its answer. @throws DomainError as the service refuses */
export async function ask<C extends Channel>(service: Service, channel: C, request: Request<C>): Promise<Answer<C>> {
  const result = await service.dispatch(channel, request);
  if (!result.ok) throw new DomainError(result.error.code, result.error.message, result.error.path);
  return result.value as Answer<C>;
}
