import os from 'node:os';
import path from 'node:path';

/** The per-user folder this program keeps its data in, by the custom of each system. */
function dataHome(platform: NodeJS.Platform, env: NodeJS.ProcessEnv, home: string): string {
  if (platform === 'win32') return env['APPDATA'] ?? path.join(home, 'AppData', 'Roaming');
  if (platform === 'darwin') return path.join(home, 'Library', 'Application Support');
  return env['XDG_DATA_HOME'] || path.join(home, '.local', 'share');
}

export type StoreChoice = { readonly folder?: string | undefined; readonly demo?: boolean | undefined };

/** Which store to open: the one named, or this user's own, or this user's demo store. Both hosts and the CLI agree. */
export function storeFolder(
  choice: StoreChoice,
  platform: NodeJS.Platform = process.platform,
  env: NodeJS.ProcessEnv = process.env,
  home: string = os.homedir(),
): string {
  if (choice.folder !== undefined) return path.resolve(choice.folder);
  return path.join(dataHome(platform, env, home), 'caseframe', choice.demo === true ? 'demo' : 'store');
}
