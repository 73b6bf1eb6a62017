import { execFileSync } from 'node:child_process';

export const CELLS = 16;
/** Size of a cell of the bar code, px. */
export const CELL = 16;

/**
 * A film whose every picture says its own number: 16 cells from the least significant bit on, with the complement below
 * (so that a damaged reading is noticed), in the top left corner. Across the test picture goes a round marker, from
 * (60, 100) by 4 px to the right and 2 px down a frame; after `turns` frames it goes the way back, and so on.
 */
export function aFilm(file: string, film: { frames: number; rateHz: number; gop: number; turns?: number }): void {
  const { frames, rateHz, gop, turns = frames } = film;
  const seconds = frames / rateHz;
  // The filter counts the first picture as 1.
  const gone = `(${turns}-abs(mod(n-1,2*${turns})-${turns}))`;
  const bit = 'mod(floor(N/pow(2,X)),2)';
  const graph = [
    `testsrc2=s=640x360:r=${rateHz}:d=${seconds},hue=s=0.2,boxblur=4[ground]`,
    `color=black:s=${CELLS}x2:r=${rateHz}:d=${seconds},format=gray,geq=lum='if(lt(Y,1),255*${bit},255-255*${bit})',scale=${CELLS * CELL}:${2 * CELL}:flags=neighbor,format=yuv420p[code]`,
    // A white disc with a black middle, on its own ground of grey, wide enough for the tracker's square.
    `color=gray:s=48x48:r=${rateHz}:d=${seconds},format=gray,geq=lum='if(lt(hypot(X-24,Y-24),4),16,if(lt(hypot(X-24,Y-24),11),235,128))',format=yuv420p[marker]`,
    `[ground][marker]overlay=x='60-24+4*${gone}':y='100-24+2*${gone}':eval=frame[moving]`,
    `[moving][code]overlay=0:0:shortest=1[out]`,
  ].join(';');
  execFileSync('ffmpeg', [
    '-hide_banner',
    '-loglevel',
    'error',
    '-y',
    '-filter_complex',
    graph,
    '-map',
    '[out]',
    '-frames:v',
    `${frames}`,
    '-c:v',
    'libx264',
    '-preset',
    'veryfast',
    '-crf',
    '20',
    '-g',
    `${gop}`,
    '-bf',
    '3',
    '-pix_fmt',
    'yuv420p',
    file,
  ]);
}
