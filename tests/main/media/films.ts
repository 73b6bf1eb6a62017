import { execFileSync, spawn } from 'node:child_process';
import type { Luma } from '../../../shared/kernel/track/image.ts';

/** Runs ffmpeg as a person would to make a film for a test. */
export function ffmpeg(...args: string[]): void {
  execFileSync('ffmpeg', ['-hide_banner', '-loglevel', 'error', '-y', ...args], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

/** Moving bars of ffmpeg's own with the number of each picture in it: frames, size and rate as said. */
export function aScene(frames: number, rate = 30, size = '160x90'): string[] {
  const [bit, w] = ['mod(floor(N/pow(2,X)),2)', Number(size.split('x')[0])];
  const graph = `testsrc2=s=${size}:r=${rate}[a];color=black:s=8x1:r=${rate},format=gray,geq=lum='255*${bit}',scale=${w}:16:flags=neighbor,format=yuv420p[b];[a][b]overlay=0:0:shortest=1[out]`;
  return ['-filter_complex', graph, '-map', '[out]', '-frames:v', `${frames}`, '-pix_fmt', 'yuv420p'];
}

/** A WebM whose index says a size that is no number: a reader that looks for the next sound element finds the same again. */
export function sentInCircles(webm: Buffer): Buffer {
  const copy = Buffer.from(webm);
  // Cues, 1C 53 BB 6B, then its size; no size begins with 0 (RFC 8794, section 4).
  copy[copy.lastIndexOf(Buffer.from([0x1c, 0x53, 0xbb, 0x6b])) + 4] = 0;
  return copy;
}

/** The number in each picture of a film, by ffmpeg's own decoding. */
export function numbersIn(film: string): number[] {
  const out = execFileSync(
    'ffmpeg',
    [
      '-hide_banner',
      '-loglevel',
      'error',
      '-i',
      film,
      '-fps_mode',
      'passthrough',
      '-vf',
      'crop=iw:16:0:0,scale=8:1:flags=area,format=gray',
      '-f',
      'rawvideo',
      'pipe:1',
    ],
    { maxBuffer: 1 << 26 },
  );
  return Array.from({ length: out.length / 8 }, (_, k) =>
    [...out.subarray(8 * k, 8 * k + 8)].reduce((sum, value, bit) => sum + (value > 128 ? 2 ** bit : 0), 0),
  );
}

/** Times of the pictures a player shows, s, rising, by ffprobe's own reading. */
export function timesIn(film: string): number[] {
  const args = ['-v', 'error', '-select_streams', 'v:0', '-show_entries', 'frame=pts_time', '-of', 'csv=p=0', film];
  return execFileSync('ffprobe', args, { encoding: 'utf8' })
    .split('\n')
    .map((line) => Number.parseFloat(line))
    .filter(Number.isFinite);
}

/** Every picture of a film in turn, its brightness as ffmpeg decodes it. */
export async function* picturesOf(film: string, width: number, height: number): AsyncGenerator<Luma> {
  const args = ['-v', 'error', '-i', film, '-fps_mode', 'passthrough', '-pix_fmt', 'gray', '-f', 'rawvideo', 'pipe:1'];
  const { stdout } = spawn('ffmpeg', args, { stdio: ['ignore', 'pipe', 'inherit'] });
  let [data, filled] = [new Uint8Array(width * height), 0];
  for await (const piece of stdout as AsyncIterable<Buffer>) {
    for (let from = 0; from < piece.length; ) {
      const part = piece.subarray(from, from + data.length - filled);
      data.set(part, filled);
      filled += part.length;
      from += part.length;
      if (filled < data.length) continue;
      yield { width, height, stride: width, data };
      [data, filled] = [new Uint8Array(width * height), 0];
    }
  }
}
