import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { createCanvas } from '@napi-rs/canvas';

type Place = readonly [x: number, y: number];

/** Joints of an invented person who stands with one arm raised, seen from the front, px in a picture of 640 by 480. */
export const JOINTS: Readonly<Record<string, Place>> = {
  'shoulder-left': [352, 152],
  'shoulder-right': [288, 152],
  'elbow-left': [384, 200],
  'elbow-right': [252, 116],
  'wrist-left': [394, 248],
  'wrist-right': [240, 68],
  'hip-left': [340, 260],
  'hip-right': [300, 260],
  'knee-left': [350, 340],
  'knee-right': [292, 340],
  'ankle-left': [354, 416],
  'ankle-right': [286, 416],
};

/** A film of that person, who does not move. */
export function aFigure(film: string, frames: number): void {
  const canvas = createCanvas(640, 480);
  const to = canvas.getContext('2d');
  const limb = (colour: string, width: number, ...places: (Place | string)[]) => {
    to.strokeStyle = colour;
    to.lineWidth = width;
    to.lineCap = 'round';
    to.lineJoin = 'round';
    to.beginPath();
    for (const [i, place] of places.entries()) {
      const [x, y] = typeof place === 'string' ? (JOINTS[place] ?? [0, 0]) : place;
      if (i === 0) to.moveTo(x, y);
      else to.lineTo(x, y);
    }
    to.stroke();
  };
  to.fillStyle = '#aab4ba';
  to.fillRect(0, 0, 640, 400);
  to.fillStyle = '#8a6a45';
  to.fillRect(0, 400, 640, 80);
  for (const [side, out] of [
    ['left', 1],
    ['right', -1],
  ] as const) {
    limb('#22252c', 34, `hip-${side}`, `knee-${side}`);
    limb('#c89f7c', 24, `knee-${side}`, `ankle-${side}`);
    const [x, y] = JOINTS[`ankle-${side}`] ?? [0, 0];
    limb('#eeeeee', 16, [x, y + 10], [x + 16 * out, y + 16]);
  }
  limb('#1d4f8f', 44, [308, 172], [312, 250], [328, 250], [332, 172], [308, 172]);
  for (const side of ['left', 'right']) {
    limb('#1d4f8f', 24, `shoulder-${side}`, `elbow-${side}`);
    limb('#c89f7c', 17, `elbow-${side}`, `wrist-${side}`);
  }
  limb('#c89f7c', 20, [320, 140], [320, 120]);
  to.fillStyle = '#c89f7c';
  to.beginPath();
  to.ellipse(320, 96, 24, 31, 0, 0, 2 * Math.PI);
  to.fill();
  to.fillStyle = '#3b2a1c';
  to.beginPath();
  to.ellipse(320, 84, 25, 24, 0, Math.PI, 2 * Math.PI);
  to.fill();
  for (const [x, y] of [
    [311, 94],
    [329, 94],
  ] as const) {
    to.beginPath();
    to.arc(x, y, 3, 0, 2 * Math.PI);
    to.fill();
  }
  limb('#7a3b2c', 3, [312, 112], [328, 112]);
  const picture = `${film}.png`;
  fs.writeFileSync(picture, canvas.toBuffer('image/png'));
  ofPicture(picture, film, frames);
}

/** A film that shows one picture for some frames, 30 a second. */
export function ofPicture(picture: string, film: string, frames: number): void {
  const input = ['-loop', '1', '-framerate', '30', '-i', picture, '-frames:v', String(frames)];
  const output = ['-vf', 'pad=ceil(iw/2)*2:ceil(ih/2)*2', '-c:v', 'libx264', '-crf', '10', '-pix_fmt', 'yuv420p', film];
  execFileSync('ffmpeg', ['-hide_banner', '-loglevel', 'error', '-y', ...input, ...output]);
}
