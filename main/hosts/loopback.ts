import { spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { toFailure } from '../../shared/errors.ts';
import { openDemoStore } from '../demo/demoStore.ts';
import { openService, type Service } from '../service.ts';
import { findBrowser } from './findBrowser.ts';
import { movePage, startLoopback, type Ticket } from './loopbackServer.ts';
import { storeFolder } from './storeFolder.ts';
import { createWeb } from './web.ts';

/**
 * The workbench without Electron: the same service and page on 127.0.0.1, shown by an installed browser as a window of
 * its own. `--json` is for programs: prints one line with the address and ends when standard input closes.
 */
const { values: options } = parseArgs({
  options: {
    folder: { type: 'string' },
    demo: { type: 'boolean' },
    'no-open': { type: 'boolean' },
    json: { type: 'boolean' },
  },
});

const folder = storeFolder(options);
const { service, landing } = await open();
const web = createWeb({
  rendererFolder: path.resolve(import.meta.dirname, '../../out/renderer'),
  mediaFile: (sha256) => service.mediaFile(sha256),
});
const loopback = await startLoopback(service, web);
/** Launch page and browser profile, while there is a window. */
let privateFolder: string | null = null;
let isStopping = false;

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void stop());

const ticket = loopback.issueTicket(landing);
if (options.json === true) {
  console.log(JSON.stringify({ ready: true, url: ticket.url, origin: loopback.origin }));
  process.stdin.resume().on('close', () => void stop());
}
if (options['no-open'] !== true) openWindow(ticket);
else if (options.json !== true) sayAddress(ticket);

async function open(): Promise<{ service: Service; landing: string }> {
  try {
    if (options.demo === true) return await openDemoStore(folder, 'loopback');
    return { service: await openService({ folder, host: 'loopback' }), landing: '/' };
  } catch (thrown) {
    console.error(toFailure(thrown).message);
    return process.exit(4);
  }
}

function openWindow(ticket: Ticket): void {
  const browser = findBrowser(process.platform, process.env);
  if (browser === null) {
    console.log('No Chromium, Chrome or Edge was found on this computer. Install one of them for a window of its own.');
    sayAddress(ticket);
    return;
  }
  // Any user of this computer can read a command line, so the address stands in a file that only we can read.
  const own = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-'));
  privateFolder = own;
  const launch = path.join(own, 'launch.html');
  fs.writeFileSync(launch, movePage(ticket.url), { mode: 0o600 });
  let isSpent = false;
  void ticket.spent.then(() => {
    isSpent = true;
    fs.rmSync(launch, { force: true });
    console.log(`Caseframe is open in a window of its own. Store folder: ${folder}`);
  });
  // A profile of its own: other local servers visited in it could be handed our cookie, and with it the browser's
  // process lives exactly as long as the window.
  const window = spawn(
    browser,
    [
      `--app=${pathToFileURL(launch).href}`,
      `--user-data-dir=${path.join(own, 'profile')}`,
      '--no-first-run',
      '--no-default-browser-check',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--disable-extensions',
      '--window-size=1360,900',
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    ],
    { stdio: 'ignore' },
  );
  const onEnd = (how: string): void => {
    if (isSpent) return void stop();
    fs.rmSync(launch, { force: true });
    const { DISPLAY, WAYLAND_DISPLAY } = process.env;
    const hasNoDisplay = process.platform === 'linux' && !DISPLAY && !WAYLAND_DISPLAY;
    console.log(`The browser window could not be opened (${hasNoDisplay ? 'there is no display here' : how}).`);
    sayAddress(loopback.issueTicket(landing));
  };
  window.on('error', (error) => onEnd(error.message));
  window.on('exit', (code) => {
    if (!isStopping) onEnd(`${path.basename(browser)} ended with code ${code}`);
  });
}

function sayAddress(ticket: Ticket): void {
  console.log(`Caseframe is ready. Open this address once, within five minutes, on this computer:\n  ${ticket.url}`);
  console.log(`Store folder: ${folder}\nPress Ctrl+C here to end.`);
}

async function stop(): Promise<void> {
  if (isStopping) return;
  isStopping = true;
  await loopback.close();
  await service.close();
  // The browser may still be writing its profile.
  if (privateFolder !== null) {
    fs.rmSync(privateFolder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
  process.exit(0);
}
