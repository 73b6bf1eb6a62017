import fs from 'node:fs';
import path from 'node:path';

/**
 * Path of an installed browser of the Chromium family, or null. `CASEFRAME_BROWSER` names one and is then the only one
 * looked for. Places on Windows and macOS are the vendors' default ones.
 */
export function findBrowser(platform: NodeJS.Platform, env: NodeJS.ProcessEnv): string | null {
  return candidates(platform, env).find((file) => fs.existsSync(file)) ?? null;
}

function candidates(platform: NodeJS.Platform, env: NodeJS.ProcessEnv): string[] {
  const chosen = env['CASEFRAME_BROWSER'];
  if (chosen !== undefined) return [chosen];
  if (platform === 'win32') {
    return [env['ProgramFiles'], env['ProgramFiles(x86)'], env['LOCALAPPDATA']].flatMap((folder) =>
      folder === undefined
        ? []
        : [`${folder}\\Microsoft\\Edge\\Application\\msedge.exe`, `${folder}\\Google\\Chrome\\Application\\chrome.exe`],
    );
  }
  if (platform === 'darwin') {
    return ['Google Chrome', 'Microsoft Edge', 'Chromium'].map(
      (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
    );
  }
  const folders = (env['PATH'] ?? '').split(path.delimiter).filter((folder) => folder !== '');
  return ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'].flatMap((name) =>
    folders.map((folder) => path.join(folder, name)),
  );
}
