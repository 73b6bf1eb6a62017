// What every script needs before it can start: a Node that is new enough, a built program, system packages.
// Plain ES2022, because it must run on the Node 20 that a machine may have.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

const require = createRequire(import.meta.url);
export const root = path.resolve(import.meta.dirname ?? path.dirname(new URL(import.meta.url).pathname), '..');

/**
 * Path of a Node that runs TypeScript and the SQLite package (22.18 on): this one, or the one npm put beside us.
 * The check comes first because the SQLite package ends older ones with a crash and no message.
 */
export function modernNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > 22 || (major === 22 && minor >= 18)) return process.execPath;
  const isWindows = process.platform === 'win32';
  try {
    const manifest = require.resolve(`node-${isWindows ? 'win' : process.platform}-${process.arch}/package.json`);
    return path.join(path.dirname(manifest), 'bin', isWindows ? 'node.exe' : 'node');
  } catch {
    console.error(`Caseframe needs Node.js 22.18 or newer; this is ${process.versions.node}. Run: npm ci`);
    console.error('If that does not help, install a newer Node.js from your system or from nodejs.org.');
    return process.exit(1);
  }
}

/** Runs a JavaScript tool of a package under the modern Node; true if it succeeded. */
export function runTool(script, args, options = {}) {
  return (
    spawnSync(modernNode(), [path.join(root, script), ...args], { cwd: root, stdio: 'inherit', ...options }).status ===
    0
  );
}

const newest = (entry) => {
  const stat = fs.statSync(entry, { throwIfNoEntry: false });
  if (!stat) return 0;
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(0, ...fs.readdirSync(entry).map((name) => newest(path.join(entry, name))));
};

/** Builds a part whose output is missing or older than its sources. */
function buildIfStale(what, output, sources, script, args) {
  const made = fs.statSync(path.join(root, output), { throwIfNoEntry: false })?.mtimeMs ?? 0;
  if (made > Math.max(...sources.map((source) => newest(path.join(root, source))))) return;
  console.log(`Building the ${what} …`);
  if (!runTool(script, args)) {
    console.error(`The ${what} could not be built; the lines above say why.`);
    process.exit(1);
  }
}

export function buildRenderer() {
  const sources = ['app', 'shared', 'assets', 'vite.config.ts', 'package.json'];
  buildIfStale('renderer', 'out/renderer/index.html', sources, 'node_modules/vite/bin/vite.js', [
    'build',
    '--logLevel',
    'warn',
  ]);
}

export function buildMain() {
  const sources = ['main', 'shared', 'rolldown.config.ts', 'package.json'];
  buildIfStale('main process', 'out/main/electron.js', sources, 'node_modules/rolldown/bin/cli.mjs', ['-c']);
}

const isOnPath = (name) =>
  (process.env.PATH ?? '')
    .split(path.delimiter)
    .some((folder) => folder !== '' && fs.existsSync(path.join(folder, name)));

/**
 * Makes sure that programs are there. On Debian as root it installs the missing packages and says so; elsewhere it only
 * returns what is missing.
 * @param programs program name to Debian package, `{ pdftotext: 'poppler-utils' }`
 * @returns names of the programs still missing
 */
export function ensurePrograms(programs) {
  const missing = () => Object.keys(programs).filter((name) => !isOnPath(name));
  const canInstall = process.getuid?.() === 0 && isOnPath('apt-get') && fs.existsSync('/etc/debian_version');
  if (missing().length > 0 && canInstall) {
    const packages = [...new Set(missing().map((name) => programs[name]))];
    console.log(`Installing system packages with apt-get, as this is Debian and you are root: ${packages.join(', ')}`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const apt = (...args) => spawnSync('apt-get', args, { stdio: ['ignore', 'ignore', 'inherit'], env });
    apt('update', '-q');
    apt('install', '-y', '-q', '--no-install-recommends', ...packages);
  }
  return missing();
}
