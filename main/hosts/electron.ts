import path from 'node:path';
import { parseArgs } from 'node:util';
import { app, BrowserWindow, dialog, ipcMain, type IpcMainInvokeEvent, Menu, protocol, session } from 'electron';
import { CHANNEL_NAMES, EVENTS, type EventName } from '../../shared/contract/channels.ts';
import { toFailure } from '../../shared/errors.ts';
import { openDemoStore } from '../demo/demoStore.ts';
import { openService, type Service } from '../service.ts';
import { storeFolder } from './storeFolder.ts';
import { createWeb } from './web.ts';

const ORIGIN = 'app://caseframe';
const isOurs = (url: string): boolean => url.startsWith(`${ORIGIN}/`);

app.enableSandbox();
protocol.registerSchemesAsPrivileged([
  { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } },
]);

if (app.requestSingleInstanceLock()) void app.whenReady().then(start).catch(fail);
else app.quit();

async function start(): Promise<void> {
  lockContents();
  // Electron and its tools add switches of their own.
  const { values: options } = parseArgs({
    args: process.argv.slice(app.isPackaged ? 1 : 2),
    options: { folder: { type: 'string' }, demo: { type: 'boolean' } },
    strict: false,
  });
  const isDemo = options['demo'] === true;
  const named = typeof options['folder'] === 'string' ? options['folder'] : undefined;
  const folder = storeFolder({ folder: named, demo: isDemo });
  const { service, landing } = isDemo
    ? await openDemoStore(folder, 'electron')
    : { service: await openService({ folder, host: 'electron' }), landing: '/' };
  const web = createWeb({
    rendererFolder: path.join(import.meta.dirname, '../renderer'),
    mediaFile: (sha256) => service.mediaFile(sha256),
  });
  protocol.handle('app', (request) => (isOurs(request.url) ? web(request) : new Response('No.', { status: 404 })));
  serveContract(service);
  if (app.isPackaged) Menu.setApplicationMenu(null);
  openWindow(service, landing);

  app.on('window-all-closed', () => app.quit());
  app.once('will-quit', (event) => {
    // Electron does not wait for promises; the store wants to be closed properly.
    event.preventDefault();
    void service.close().finally(() => app.exit(0));
  });
}

function fail(thrown: unknown): void {
  dialog.showErrorBox('Caseframe cannot open', toFailure(thrown).message);
  app.exit(4);
}

/** Shuts every way out of the page: navigation, windows, permissions, devices, the network, foreign downloads. */
function lockContents(): void {
  const { defaultSession } = session;
  defaultSession.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  defaultSession.setPermissionCheckHandler(() => false);
  defaultSession.setDevicePermissionHandler(() => false);
  defaultSession.webRequest.onBeforeRequest((details, decide) => {
    decide({ cancel: !isOurs(details.url) && !/^(blob|data|devtools):/.test(details.url) });
  });
  defaultSession.on('will-download', (event, item) => {
    const url = item.getURL();
    if (!url.startsWith(`${ORIGIN}/files/`) && !url.startsWith(`blob:${ORIGIN}/`)) event.preventDefault();
  });
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', (event) => {
      if (!isOurs(event.url)) event.preventDefault();
    });
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  });
}

function isOurPage({ senderFrame, sender }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame === sender.mainFrame && isOurs(senderFrame.url);
}

function serveContract(service: Service): void {
  for (const channel of CHANNEL_NAMES) {
    ipcMain.handle(channel, (event, request: unknown) => {
      if (!isOurPage(event)) throw new Error('refused: not a page of this program');
      return service.dispatch(channel, request);
    });
  }
}

function openWindow(service: Service, landing: string): void {
  const window = new BrowserWindow({
    width: 1360,
    height: 900,
    minWidth: 720,
    minHeight: 480,
    show: false,
    title: 'Caseframe',
    webPreferences: {
      preload: path.join(import.meta.dirname, 'preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
      spellcheck: false,
      devTools: !app.isPackaged,
    },
  });
  const stops = (Object.keys(EVENTS) as EventName[]).map((event) =>
    service.on(event, (payload) => window.webContents.send(event, payload)),
  );
  window.once('ready-to-show', () => window.show());
  window.once('closed', () => {
    for (const stop of stops) stop();
  });
  app.on('second-instance', () => {
    if (window.isMinimized()) window.restore();
    window.focus();
  });
  void window.loadURL(`${ORIGIN}${landing}`);
}
