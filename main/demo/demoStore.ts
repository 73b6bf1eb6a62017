import { openService, type Service } from '../service.ts';

/** Opens this user's demo store. */
export async function openDemoStore(folder: string, host: 'electron' | 'loopback'): Promise<Service> {
  return openService({ folder, host });
}
