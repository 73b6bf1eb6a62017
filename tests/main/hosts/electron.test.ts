import { EventEmitter } from 'node:events';
import { beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Bridge } from '../../../shared/contract/bridge.ts';
import { CHANNEL_NAMES } from '../../../shared/contract/channels.ts';
import { fakeService } from './fakeService.ts';

/**
 * The Electron host against a stand-in for the `electron` module: which settings it asks for, which ways out it shuts,
 * and that every channel reaches the service. What Electron itself does with that is left to tests/e2e/electron.spec.ts.
 */

type Handler = (event: unknown, request: unknown) => unknown;
type Allow = (answer: unknown) => void;

const electron = vi.hoisted(() => ({
  app: {} as EventEmitter,
  handlers: new Map<string, Handler>(),
  protocolHandlers: new Map<string, (request: Request) => Response | Promise<Response>>(),
  windows: [] as { options: Record<string, unknown>; webContents: unknown; loaded: string[] }[],
  session: {} as EventEmitter & {
    request?: (contents: unknown, permission: string, decide: Allow) => void;
    check?: () => boolean;
    device?: () => boolean;
    beforeRequest?: (details: { url: string }, decide: Allow) => void;
  },
  schemes: [] as unknown[],
  errorBoxes: [] as string[],
  exits: [] as number[],
  order: [] as string[],
  exposed: {} as Record<string, unknown>,
  invoked: [] as unknown[][],
  sent: [] as unknown[][],
}));
const fake = fakeService();

/** Whether a handler prevents the default of an event that carries this. */
function isStopped(emitter: EventEmitter, event: string, given: object, ...rest: unknown[]): boolean {
  let stopped = false;
  emitter.emit(event, { ...given, preventDefault: () => (stopped = true) }, ...rest);
  return stopped;
}

const opened = vi.hoisted(() => ({ options: [] as unknown[], refusal: null as Error | null }));

const isDownloadStopped = (url: string) => isStopped(electron.session, 'will-download', {}, { getURL: () => url });

vi.mock('../../../main/service.ts', () => ({
  openService: (options: unknown) => {
    opened.options.push(options);
    return opened.refusal === null ? Promise.resolve(fake.service) : Promise.reject(opened.refusal);
  },
}));
vi.mock('../../../main/demo/demoStore.ts', () => ({ openDemoStore: () => Promise.reject(new Error('not asked for')) }));

vi.mock('electron', async () => {
  const { EventEmitter } = await import('node:events');
  electron.app = Object.assign(new EventEmitter(), {
    isPackaged: true,
    enableSandbox: () => electron.order.push('sandbox'),
    requestSingleInstanceLock: () => true,
    whenReady: () => {
      electron.order.push('ready');
      return Promise.resolve();
    },
    quit: () => {},
    exit: (code: number) => electron.exits.push(code),
  });
  electron.session = Object.assign(new EventEmitter(), {
    setPermissionRequestHandler: (handler: (contents: unknown, permission: string, decide: Allow) => void) => {
      electron.session.request = handler;
    },
    setPermissionCheckHandler: (handler: () => boolean) => {
      electron.session.check = handler;
    },
    setDevicePermissionHandler: (handler: () => boolean) => {
      electron.session.device = handler;
    },
    webRequest: {
      onBeforeRequest: (handler: (details: { url: string }, decide: Allow) => void) => {
        electron.session.beforeRequest = handler;
      },
    },
  });
  class BrowserWindow extends EventEmitter {
    readonly loaded: string[] = [];
    readonly options: Record<string, unknown>;
    readonly webContents = { send: (...args: unknown[]) => electron.sent.push(args) };
    constructor(options: Record<string, unknown>) {
      super();
      this.options = options;
      electron.windows.push(this);
    }
    loadURL(url: string) {
      this.loaded.push(url);
      return Promise.resolve();
    }
  }
  return {
    app: electron.app,
    BrowserWindow,
    dialog: { showErrorBox: (title: string, text: string) => electron.errorBoxes.push(`${title}: ${text}`) },
    ipcMain: { handle: (channel: string, handler: Handler) => electron.handlers.set(channel, handler) },
    Menu: { setApplicationMenu: () => {} },
    protocol: {
      registerSchemesAsPrivileged: (schemes: unknown[]) => {
        electron.order.push('schemes');
        electron.schemes.push(...schemes);
      },
      handle: (scheme: string, handler: (request: Request) => Response) =>
        electron.protocolHandlers.set(scheme, handler),
    },
    session: { defaultSession: electron.session },
    contextBridge: {
      exposeInMainWorld: (name: string, value: unknown) => {
        electron.exposed[name] = value;
      },
    },
    ipcRenderer: Object.assign(new EventEmitter(), {
      invoke: (...args: unknown[]) => {
        electron.invoked.push(args);
        return args[0] === 'store.verify'
          ? Promise.reject(new Error('refused'))
          : Promise.resolve({ ok: true, value: null });
      },
    }),
  };
});

beforeAll(async () => {
  await import('../../../main/hosts/electron.ts');
  await vi.waitFor(() => expect(electron.windows).toHaveLength(1));
});

const page = { url: 'app://caseframe/' };
const fromPage = { senderFrame: page, sender: { mainFrame: page } };

describe('the window', () => {
  test('is sandboxed, isolated and has no Node, and no developer tools when packaged', () => {
    expect(electron.windows[0]?.options['webPreferences']).toMatchObject({
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
      devTools: false,
      preload: expect.stringMatching(/preload\.cjs$/) as string,
    });
    expect(electron.windows[0]?.loaded).toEqual(['app://caseframe/']);
  });

  test('sandbox and scheme are set before the program is ready, as Electron requires', () => {
    expect(electron.order).toEqual(['sandbox', 'schemes', 'ready']);
    expect(electron.schemes).toMatchObject([{ scheme: 'app', privileges: { standard: true, secure: true } }]);
  });

  test('the page comes from our own protocol, with the policy, and other hosts of it are refused', async () => {
    const serve = electron.protocolHandlers.get('app');
    expect((await serve?.(new Request('app://elsewhere/')))?.status).toBe(404);
    const response = await serve?.(new Request('app://caseframe/no-such-file'));
    expect(response?.headers.get('content-security-policy')).toContain("default-src 'none'");
  });
});

describe('ways out of the page', () => {
  test.each(['media', 'geolocation', 'notifications', 'clipboard-read', 'openExternal'])(
    'permission %s is denied',
    (permission) => {
      const answers: unknown[] = [];
      electron.session.request?.(null, permission, (answer) => answers.push(answer));
      expect(answers).toEqual([false]);
      expect(electron.session.check?.()).toBe(false);
      expect(electron.session.device?.()).toBe(false);
    },
  );

  test.each([
    ['https://example.org/', true],
    ['http://127.0.0.1:8080/', true],
    ['file:///etc/passwd', true],
    ['app://elsewhere/', true],
    ['app://caseframe.evil/', true],
    ['app://caseframe/assets/a.js', false],
    ['data:,', false],
    ['blob:app://caseframe/1', false],
  ])('a request to %s: cancelled %s', (url, cancel) => {
    const answers: unknown[] = [];
    electron.session.beforeRequest?.({ url }, (answer) => answers.push(answer));
    expect(answers).toEqual([{ cancel }]);
  });

  test('only our own files may be downloaded', () => {
    expect(isDownloadStopped(`app://caseframe/files/${'a'.repeat(64)}/report.pdf`)).toBe(false);
    expect(isDownloadStopped('app://caseframe/index.html')).toBe(true);
    expect(isDownloadStopped('https://example.org/x.exe')).toBe(true);
  });

  test('no navigation away, no webview, no new window', () => {
    const contents = Object.assign(new EventEmitter(), {
      open: undefined as (() => unknown) | undefined,
      setWindowOpenHandler(handler: () => unknown) {
        this.open = handler;
      },
    });
    electron.app.emit('web-contents-created', {}, contents);
    expect(isStopped(contents, 'will-navigate', { url: 'https://example.org/' })).toBe(true);
    expect(isStopped(contents, 'will-navigate', { url: 'file:///etc/passwd' })).toBe(true);
    expect(isStopped(contents, 'will-navigate', { url: 'app://caseframe/#case' })).toBe(false);
    expect(isStopped(contents, 'will-attach-webview', {})).toBe(true);
    expect(contents.open?.()).toEqual({ action: 'deny' });
  });
});

describe('the contract', () => {
  beforeEach(() => {
    fake.dispatched.length = 0;
  });

  test.each(CHANNEL_NAMES)('%s reaches the service with its request', async (channel) => {
    const answer = await electron.handlers.get(channel)?.(fromPage, { some: 'request' });
    expect(answer).toEqual({ ok: true, value: { channel } });
    expect(fake.dispatched).toEqual([{ channel, request: { some: 'request' } }]);
  });

  test('nothing but the contract is handled', () => {
    expect([...electron.handlers.keys()].toSorted()).toEqual([...CHANNEL_NAMES].toSorted());
  });

  test.each([
    ['a frame inside our page', { senderFrame: { url: 'app://caseframe/' }, sender: { mainFrame: page } }],
    ['another page', { senderFrame: { url: 'https://example.org/' }, sender: { mainFrame: null } }],
    [
      'a look-alike origin',
      (() => {
        const frame = { url: 'app://caseframe.evil/' };
        return { senderFrame: frame, sender: { mainFrame: frame } };
      })(),
    ],
    ['a frame that is gone', { senderFrame: null, sender: { mainFrame: page } }],
  ])('%s is refused', (_name, event) => {
    expect(() => electron.handlers.get('app.info')?.(event, {})).toThrow('refused');
    expect(fake.dispatched).toEqual([]);
  });

  test('events of the service reach the window', () => {
    fake.emit({ caseId: 'a', revision: 2 });
    expect(electron.sent).toContainEqual(['case.changed', { caseId: 'a', revision: 2 }]);
  });

  test('the store is closed before the program ends', async () => {
    expect(isStopped(electron.app, 'will-quit', {})).toBe(true);
    await vi.waitFor(() => expect(electron.exits).toEqual([0]));
    expect(fake.timesClosed()).toBe(1);
  });
});

test('a store that cannot be opened stops the program with its sentence', async () => {
  const { DomainError } = await import('../../../shared/errors.ts');
  opened.refusal = new DomainError('store-locked', 'The store is open in another window.');
  electron.exits.length = 0;
  vi.resetModules();
  await import('../../../main/hosts/electron.ts');
  await vi.waitFor(() => expect(electron.exits).toEqual([4]));
  expect(electron.errorBoxes).toEqual(['Caseframe cannot open: The store is open in another window.']);
});

describe('the preload', () => {
  let bridge: Bridge;
  beforeAll(async () => {
    await import('../../../main/hosts/preload.ts');
    bridge = electron.exposed['caseframe'] as Bridge;
  });

  test('gives the page the bridge and nothing else', () => {
    expect(Object.keys(electron.exposed)).toEqual(['caseframe']);
    expect(Object.keys(bridge).toSorted()).toEqual(['host', 'invoke', 'on']);
  });

  test('passes on channels of the contract; others are refused here, as data', async () => {
    expect(await bridge.invoke('app.info', {})).toEqual({ ok: true, value: null });
    expect(await bridge.invoke('shell.run' as 'app.info', {})).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
    expect(electron.invoked).toEqual([['app.info', {}]]);
  });

  test('a refusal of the main process comes back as data', async () => {
    expect(await bridge.invoke('store.verify', {})).toMatchObject({ ok: false, error: { message: 'refused' } });
  });

  test('hands over the payload of an event, never Electron’s own event, and stops when told', async () => {
    const { ipcRenderer } = (await import('electron')) as unknown as { ipcRenderer: EventEmitter };
    const heard: unknown[] = [];
    const stop = bridge.on('case.changed', (...args) => heard.push(args));
    ipcRenderer.emit('case.changed', { sender: 'ipc' }, { caseId: 'a', revision: 1 });
    stop();
    ipcRenderer.emit('case.changed', { sender: 'ipc' }, { caseId: 'a', revision: 2 });
    expect(heard).toEqual([[{ caseId: 'a', revision: 1 }]]);
    expect(() => bridge.on('other' as 'case.changed', () => {})).toThrow('no event');
  });
});
