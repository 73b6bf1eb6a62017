import { spawn, spawnSync } from 'node:child_process';
import { DomainError } from '../../shared/errors.ts';

/** A run without a sign of life for so long counts as hung: a convention. */
const MOST_SILENCE_MS = 8000;
const MOST_WORDS = 4000;

/** The ffmpeg named by CASEFRAME_FFMPEG, else the one on the search path; null where there is none that runs. */
export function findFfmpeg(): string | null {
  const named = process.env['CASEFRAME_FFMPEG'] ?? 'ffmpeg';
  return spawnSync(named, ['-version'], { timeout: MOST_SILENCE_MS }).status === 0 ? named : null;
}

/** @throws DomainError 'input-missing' asking for it in words */
export function requireFfmpeg(fileName: string): string {
  const found = findFfmpeg();
  if (found !== null) return found;
  throw new DomainError(
    'input-missing',
    `${fileName} can only be shown by way of a copy, which the program ffmpeg makes, and ffmpeg was not found on this computer. Install it (on Debian and Ubuntu: apt install ffmpeg; elsewhere from ffmpeg.org), or name it in CASEFRAME_FFMPEG, and bring the film in again. Or save the film as MP4 with H.264.`,
  );
}

/**
 * Runs ffmpeg to its end.
 * @param onLine each line it writes to its standard output
 * @throws DomainError 'cancelled'; 'input-malformed' with its last words when it fails or hangs
 */
export async function runFfmpeg(
  ffmpeg: string,
  args: readonly string[],
  onLine: (line: string) => void,
  signal: AbortSignal,
): Promise<void> {
  const refuseIfStopped = () => {
    if (signal.aborted) throw new DomainError('cancelled', 'Stopped as asked.');
  };
  refuseIfStopped();
  const child = spawn(ffmpeg, ['-hide_banner', '-nostdin', '-loglevel', 'error', ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let [words, rest, isHung] = ['', '', false];
  const end = () => child.kill('SIGKILL');
  const hang = () => {
    isHung = true;
    end();
  };
  let watch = setTimeout(hang, MOST_SILENCE_MS);
  signal.addEventListener('abort', end);
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    clearTimeout(watch);
    watch = setTimeout(hang, MOST_SILENCE_MS);
    const lines = (rest + text).split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) onLine(line);
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    words = (words + text).slice(-MOST_WORDS);
  });
  try {
    const code = await new Promise<number | null>((resolve, reject) => {
      child.on('error', reject);
      child.on('close', resolve);
    });
    refuseIfStopped();
    if (code === 0) return;
    const said = words.trim().split('\n').at(-1) ?? '';
    throw new DomainError(
      'input-malformed',
      isHung ? 'ffmpeg stood still on this film and was stopped.' : `ffmpeg cannot read this film (${said}).`,
    );
  } finally {
    clearTimeout(watch);
    signal.removeEventListener('abort', end);
  }
}
