import { DomainError } from '../../shared/errors.ts';
import type { FilmType } from '../../shared/film/filmType.ts';
import { runFfmpeg } from './ffmpeg.ts';
import { filmFacts } from './filmFacts.ts';

/** Pictures from one that stands alone to the next; short, so that every step is quick. */
const GROUP = 12;
/** Pictures without times of their own play at this rate, which says nothing about how fast they were taken. */
const SEQUENCE_RATE_HZ = 30;
/** The copy counts time in these steps, s. */
const TICK_S = 1 / 90_000;

/** Named, so that ffmpeg does not guess: some formats it knows open other files, or addresses, named inside. */
const DEMUXERS: Readonly<Record<FilmType, readonly string[]>> = {
  'video/mp4': ['-f', 'mov'],
  'video/quicktime': ['-f', 'mov'],
  'video/matroska': ['-f', 'matroska'],
  'video/webm': ['-f', 'matroska'],
  'video/x-msvideo': ['-f', 'avi'],
  'video/mp2t': ['-f', 'mpegts'],
  'image/png': ['-f', 'image2pipe', '-c:v', 'png', '-framerate', `${SEQUENCE_RATE_HZ}`],
  'image/jpeg': ['-f', 'image2pipe', '-c:v', 'mjpeg', '-framerate', `${SEQUENCE_RATE_HZ}`],
};

export interface ProxyMade {
  /** Pictures in the copy: the first so many of the film. */
  readonly pictures: number;
  /** Pictures the film promises; null where its container does not say. */
  readonly promised: number | null;
}

/**
 * Makes a copy of a film that every window shows and steps through quickly, turned as the film says, and holds it
 * against the film: its pictures are the first of the film's, each at its own time, or it is refused.
 * @param pictures how many there must be, for pictures without times; null for a film
 * @throws DomainError 'cancelled', 'input-malformed'
 */
export async function makeProxy(
  ffmpeg: string,
  film: { readonly place: string; readonly type: FilmType; readonly pictures: number | null },
  copy: string,
  onPicture: (done: number) => void,
  signal: AbortSignal,
): Promise<ProxyMade> {
  const facts = film.pictures === null ? await filmFacts(film.place) : null;
  const decodedAt: number[] = [];
  const sameTimes = words('-map 0:v:0 -fps_mode passthrough -enc_time_base 1/90000');
  const [input, output] = [`file:${film.place}`, `file:${copy}`];
  const args = [
    ...words('-protocol_whitelist file,pipe'),
    ...DEMUXERS[film.type],
    '-i',
    input,
    ...sameTimes,
    // Square pixels, and an even number of them either way, which H.264 needs.
    ...words('-vf scale=iw*sar:ih,setsar=1,pad=ceil(iw/2)*2:ceil(ih/2)*2'),
    ...words(`-c:v libx264 -preset veryfast -crf 16 -g ${GROUP} -bf 0 -pix_fmt yuv420p`),
    ...words('-video_track_timescale 90000 -map_metadata -1 -movflags +faststart -f mp4 -y'),
    output,
    // What ffmpeg decoded, picture by picture with its time: the copy is held against this.
    ...sameTimes,
    ...words('-c:v wrapped_avframe -f framecrc pipe:1'),
  ];
  await runFfmpeg(
    ffmpeg,
    args,
    (line) => {
      const time = /^0,\s*-?\d+,\s*(-?\d+),/.exec(line)?.[1];
      if (time === undefined) return;
      decodedAt.push(Number(time) * TICK_S);
      onPicture(decodedAt.length);
    },
    signal,
  );
  const copied = await filmFacts(copy);
  if (copied === null || copied.times.length < copied.promised) throw notMade('not one picture of it could be decoded');
  const expected = facts?.times ?? decodedAt;
  if (film.pictures !== null && copied.times.length !== film.pictures) {
    throw notMade(`${copied.times.length} of ${film.pictures} pictures could be decoded`);
  }
  if (copied.times.length > expected.length || copied.times.length !== decodedAt.length) {
    throw notMade('the copy does not have the pictures of the film');
  }
  const [c0 = 0, e0 = 0] = [copied.times[0], expected[0]];
  // A tick for each rounding, the film's clock to the copy's and the copy's to seconds.
  const apart = copied.times.findIndex((t, i) => Math.abs(t - c0 - ((expected[i] ?? Infinity) - e0)) > 2 * TICK_S);
  if (apart >= 0) throw notMade(`picture ${apart} of the copy is not at the time it has in the film`);
  return { pictures: copied.times.length, promised: facts?.promised ?? film.pictures };
}

function words(text: string): string[] {
  return text.split(' ');
}

function notMade(why: string): DomainError {
  return new DomainError('input-malformed', `No copy that can be shown could be made of this film: ${why}.`);
}
