import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createCanvas } from '@napi-rs/canvas';
import type { Clip } from './clip.ts';
import { drawBackground, drawCode, drawFigure } from './drawFrame.ts';
import { sourceFor } from './sourceFor.ts';

/** Share of a frame's time that the shutter is open, and how many instants of it are drawn: mild blur. */
const SHUTTER = 0.2;
const INSTANTS = 2;
/** How strong the grain of the picture is, of 255. */
const GRAIN = 10;

/**
 * Draws a clip frame by frame and has the system's ffmpeg write it as H.264 in MP4. The same clip gives the same pictures
 * every time, and with the same ffmpeg the same bytes.
 * @throws Error where ffmpeg is missing or fails
 */
export async function writeClip(clip: Clip, file: string, onFrame: (done: number) => void = () => {}): Promise<void> {
  const { camera, options, motion, furniture, frames } = clip;
  const { widthPx, heightPx } = camera;
  const random = sourceFor(options.seed, 'picture');
  const ground = createCanvas(widthPx, heightPx);
  drawBackground(ground.getContext('2d'), camera, furniture, random);
  const grain = Int8Array.from({ length: 1 << 16 }, () => Math.round(random.normal(GRAIN / 3)));
  const sceneCanvas = createCanvas(widthPx, heightPx);
  const scene = sceneCanvas.getContext('2d');
  const canvas = createCanvas(widthPx, heightPx);
  const context = canvas.getContext('2d');
  const rate = String(options.captureRateHz / options.slowMotion);
  const ffmpeg = spawn('ffmpeg', [...RAW, '-s', `${widthPx}x${heightPx}`, '-r', rate, '-i', '-', ...H264, file], {
    stdio: ['pipe', 'ignore', 'pipe'],
  });
  let said = '';
  ffmpeg.stderr.setEncoding('utf8').on('data', (text: string) => (said += text));
  const failed = once(ffmpeg, 'error').then(([thrown]) => {
    throw new Error(`ffmpeg could not be started: ${(thrown as Error).message}. Install it, then try again.`);
  });
  const closed = once(ffmpeg, 'close');
  for (let frame = 0; frame < frames; frame += 1) {
    for (let i = 0; i < INSTANTS; i += 1) {
      const t = (frame + SHUTTER * ((i + 0.5) / INSTANTS - 0.5)) / options.captureRateHz;
      scene.drawImage(ground, 0, 0);
      drawFigure(scene, camera, motion, Math.max(0, t));
      // The mean of all instants so far.
      context.globalAlpha = 1 / (i + 1);
      context.drawImage(sceneCanvas, 0, 0);
    }
    context.globalAlpha = 1;
    drawCode(context, frame);
    const { data } = context.getImageData(0, 0, widthPx, heightPx);
    addGrain(data, grain, Math.floor(random.uniform() * grain.length));
    const bytes = Buffer.from(data.buffer, data.byteOffset, data.byteLength);
    if (!ffmpeg.stdin.write(bytes)) await Promise.race([once(ffmpeg.stdin, 'drain'), closed, failed]);
    onFrame(frame + 1);
  }
  ffmpeg.stdin.end();
  const [code] = (await Promise.race([closed, failed])) as [number | null];
  if (code !== 0) throw new Error(`ffmpeg ended with ${code}: ${said.trim()}`);
}

const RAW = ['-hide_banner', '-loglevel', 'error', '-y', '-f', 'rawvideo', '-pix_fmt', 'rgba'];
const H264 = [
  '-an',
  '-c:v',
  'libx264',
  '-preset',
  'veryfast',
  '-crf',
  '18',
  '-g',
  '24',
  '-bf',
  '2',
  '-pix_fmt',
  'yuv420p',
];

/** Grey noise, the same strip of it from another place in every frame. */
function addGrain(rgba: Uint8ClampedArray, grain: Int8Array, from: number): void {
  for (let i = 0, at = from; i < rgba.length; i += 4, at += 1) {
    const noise = grain[at % grain.length] ?? 0;
    rgba[i] = (rgba[i] ?? 0) + noise;
    rgba[i + 1] = (rgba[i + 1] ?? 0) + noise;
    rgba[i + 2] = (rgba[i + 2] ?? 0) + noise;
  }
}
