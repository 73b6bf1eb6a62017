import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { findBrowser } from '../../main/hosts/findBrowser.ts';
import { seededRandom } from '../../shared/kernel/uncertainty/seededRandom.ts';
import { startHost, temporaryFolder } from '../e2e/fixtures.ts';
import { chooseFilm, stage } from '../e2e/theBench.ts';

export interface Stepped {
  readonly medianMs: number;
  readonly p95Ms: number;
}

export interface FilmFigures {
  /** From the click that opens the bench to the first frame on the stage, ms. */
  readonly firstFrameMs: number;
  /** From a key press to the frame on the stage: frames held already, frames not decoded yet, random jumps. */
  readonly cached: Stepped;
  readonly forward: Stepped;
  readonly jumps: Stepped;
  /** A frame of the same film decoded by ffmpeg alone, on one thread and on as many as it likes, ms. */
  readonly bareMs: number;
  readonly bareThreadsMs: number;
  /** Of the page's process and its scripts, after 10 000 frames were opened and many shown, MB. */
  readonly residentMb: number;
  readonly residentBeforeMb: number;
  readonly scriptsMb: number;
}

const [FRAMES, MANY] = [240, 10_000];

/** The bench in a real browser, on films of 1920 × 1080. Needs the built renderer (`npm run build`). */
export async function filmFigures(now: () => number): Promise<FilmFigures> {
  const folder = temporaryFolder();
  const film = path.join(folder, 'film.mp4');
  const many = path.join(folder, 'many.mp4');
  make('testsrc2=s=1920x1080:r=60', FRAMES, film);
  make('color=gray:s=1920x1080:r=60', MANY, many);
  const host = await startHost(path.join(folder, 'store'));
  const executablePath = findBrowser(process.platform, process.env);
  const browser = await chromium.launch({
    ...(executablePath === null ? {} : { executablePath }),
    chromiumSandbox: process.getuid?.() !== 0,
    args: ['--disable-background-networking', '--disable-gpu', '--no-first-run'],
  });
  try {
    const context = await browser.newContext({ viewport: { width: 1280, height: 860 } });
    const page = await context.newPage();
    await page.goto(host.url);
    await page.waitForURL(`${host.origin}/**`);
    const firstFrameMs = await openedAfter(page, film, now);
    const forward = await stepped(
      page,
      Array.from({ length: 40 }, (_, i) => 100 + i),
    );
    // Held by now: those just passed, newest first, and the way back again.
    const held = Array.from({ length: 35 }, (_, i) => 138 - i);
    await stepped(page, held);
    const cached = await stepped(page, [...held.toReversed(), ...held, ...held.toReversed()]);
    const random = seededRandom(8);
    const jumps = await stepped(
      page,
      Array.from({ length: 40 }, () => Math.floor(FRAMES * random())),
    );

    const long = await context.newPage();
    await page.close();
    await long.goto(`${host.origin}/`);
    await openedAfter(long, many, now);
    const session = await browser.newBrowserCDPSession();
    const { processInfo } = await session.send('SystemInfo.getProcessInfo');
    const resident = () =>
      Math.max(...processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => residentMb(id)));
    const residentBeforeMb = resident();
    await stepped(
      long,
      Array.from({ length: 200 }, () => Math.floor(MANY * random())),
    );
    await stepped(
      long,
      Array.from({ length: 200 }, (_, i) => MANY - 1 - i),
    );
    const pageSession = await long.context().newCDPSession(long);
    await pageSession.send('Performance.enable');
    const { metrics } = await pageSession.send('Performance.getMetrics');
    const scriptsMb = (metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? Number.NaN) / 2 ** 20;
    const residentMbAfter = resident();
    const bare = (threads: string) => {
      const start = now();
      execFileSync('ffmpeg', [
        '-v',
        'error',
        ...(threads === '' ? [] : ['-threads', threads]),
        '-i',
        film,
        '-f',
        'null',
        '-',
      ]);
      return (now() - start) / FRAMES;
    };
    return {
      firstFrameMs,
      cached,
      forward,
      jumps,
      bareMs: bare('1'),
      bareThreadsMs: bare(''),
      residentMb: residentMbAfter,
      residentBeforeMb,
      scriptsMb,
    };
  } finally {
    await browser.close();
    await host.close();
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

function make(source: string, frames: number, film: string): void {
  const coded = ['-c:v', 'libx264', '-preset', 'ultrafast', '-g', '30', '-pix_fmt', 'yuv420p', film];
  execFileSync('ffmpeg', ['-v', 'error', '-y', '-f', 'lavfi', '-i', source, '-frames:v', `${frames}`, ...coded]);
}

async function openedAfter(page: Page, film: string, now: () => number): Promise<number> {
  await chooseFilm(page, film);
  const door = page.getByRole('link', { name: 'Open the trial bench' });
  await door.waitFor({ timeout: 120_000 });
  const start = now();
  await door.click();
  await page.locator('.bench-stage > canvas[data-frame="0"]').waitFor({ timeout: 60_000 });
  return now() - start;
}

/** Goes to frames one by one as the slider does, and measures in the page until each is on the stage. */
async function stepped(page: Page, frames: readonly number[]): Promise<Stepped> {
  await stage(page).waitFor();
  const times = await page.evaluate(async (wanted) => {
    const canvas = document.querySelector('.bench-stage > canvas');
    const slider = document.querySelector<HTMLInputElement>('.bench-slide input[type=range]');
    const value = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
    if (canvas === null || slider === null || value === undefined) throw new Error('the bench is not open');
    const taken: number[] = [];
    for (const frame of wanted) {
      if (canvas.getAttribute('data-frame') === String(frame)) continue;
      const start = performance.now();
      await new Promise<void>((resolve) => {
        const watch = new MutationObserver(() => {
          if (canvas.getAttribute('data-frame') !== String(frame)) return;
          watch.disconnect();
          resolve();
        });
        watch.observe(canvas, { attributeFilter: ['data-frame'] });
        // Past React's own setter, which would take the change for its own.
        value.set?.call(slider, String(frame));
        slider.dispatchEvent(new Event('input', { bubbles: true }));
      });
      taken.push(performance.now() - start);
    }
    return taken;
  }, frames);
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { medianMs: at(0.5), p95Ms: at(0.95) };
}

/** Memory of a process that is in use and in no swap, where the system tells (Linux). */
function residentMb(pid: number): number {
  const status = fs.readFileSync(`/proc/${pid}/status`, 'utf8');
  return Number(/VmRSS:\s+(\d+) kB/.exec(status)?.[1]) / 1024;
}
