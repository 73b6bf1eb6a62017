import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

const require = createRequire(import.meta.url);

/** Folder of an installed package, or null. */
function packageFolder(name) {
  try {
    return path.dirname(require.resolve(`${name}/package.json`));
  } catch {
    return null;
  }
}

/** Path of the Electron binary, or null. Never require('electron') to find out: that starts a download and throws. */
export function electronBinary() {
  const folder = packageFolder('electron');
  const dist = process.env.ELECTRON_OVERRIDE_DIST_PATH ?? (folder && path.join(folder, 'dist'));
  if (!dist) return null;
  const names = { darwin: 'Electron.app/Contents/MacOS/Electron', win32: 'electron.exe' };
  const file = path.join(dist, names[process.platform] ?? 'electron');
  return fs.existsSync(file) ? file : null;
}

/** Electron's own installer, which downloads the binary; null where the package is absent. */
export function electronInstaller() {
  const folder = packageFolder('electron');
  return folder && path.join(folder, 'install.js');
}
