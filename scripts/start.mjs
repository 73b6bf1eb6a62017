// npm start: builds what is missing and opens the workbench, in Electron where its binary is there or can be had, else in
// an installed browser. Opens the demo store; `npm start -- --folder DIR` opens your own. Plain ES2022 for Node 20.
import { spawn, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { electronBinary, electronInstaller } from './electronBinary.mjs';
import { buildMain, buildRenderer, ensurePrograms, modernNode, root } from './setup.mjs';

const words = process.argv.slice(2);
const args = words.some((word) => word === '--demo' || word.startsWith('--folder')) ? words : ['--demo', ...words];
const wanted = process.env.CASEFRAME_HOST; // 'electron', 'loopback' or unset: whichever is there

const node = modernNode();
buildRenderer();
const binary = wanted === 'loopback' ? null : (electronBinary() ?? fetchElectron());
if (binary !== null) {
  buildMain();
  run(binary, [root, ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), ...args]);
} else if (wanted === 'electron') {
  console.error(
    'Electron’s binary is not installed and could not be fetched. Without CASEFRAME_HOST, npm start opens a browser window instead.',
  );
  process.exit(1);
} else {
  console.log('Electron’s binary is not here, so Caseframe opens in a browser window, served from this computer only.');
  if (process.platform === 'linux' && !hasBrowser()) ensurePrograms({ chromium: 'chromium' });
  run(node, [path.join(root, 'main/hosts/loopback.ts'), ...args]);
}

/** Tries the download once. A note in the package’s folder keeps later starts from waiting for it again. */
function fetchElectron() {
  const installer = electronInstaller();
  if (installer === null) return null;
  const note = path.join(path.dirname(installer), 'binary-not-fetched');
  if (fs.existsSync(note) && wanted !== 'electron') return null;
  console.log('Fetching Electron’s binary …');
  spawnSync(node, [installer], {
    stdio: ['ignore', 'ignore', wanted === 'electron' ? 'inherit' : 'ignore'],
    timeout: 120_000,
  });
  const binary = electronBinary();
  if (binary === null) fs.writeFileSync(note, 'Delete this file to let npm start try again.\n');
  return binary;
}

function hasBrowser() {
  const script =
    "import { findBrowser } from './main/hosts/findBrowser.ts'; process.exit(findBrowser(process.platform, process.env) === null ? 1 : 0)";
  return spawnSync(node, ['--input-type=module', '-e', script], { cwd: root, stdio: 'ignore' }).status === 0;
}

function run(program, programArgs) {
  const child = spawn(program, programArgs, { stdio: 'inherit', cwd: root });
  // Ctrl+C reaches the child by itself; we only wait for it to end in good order.
  process.on('SIGINT', () => {});
  process.on('SIGTERM', () => child.kill('SIGTERM'));
  child.on('exit', (code) => process.exit(code ?? 1));
}
