import {
  ALL_FORMATS,
  BlobSource,
  EncodedPacketSink,
  Input,
  type InputVideoTrack,
  type Rotation,
  UrlSource,
} from 'mediabunny';
import { DomainError } from '../../shared/errors.ts';
import { type Pace, paceOf } from '../../shared/film/paceOf.ts';
import { readablePictures, SAME_TIME_S } from '../../shared/film/readablePictures.ts';

/** What a film file says of itself, and every one of its pictures by its true time. */
export interface Film {
  readonly track: InputVideoTrack;
  /** As shown: turned as the file says. Points are stored in these pixels. */
  readonly width: number;
  readonly height: number;
  /** Clockwise, to be applied to decoded pictures. */
  readonly rotation: Rotation;
  readonly codec: string;
  /** Presentation time of each picture in the file's own seconds, rising. */
  readonly times: readonly number[];
  /** Pictures the file promises; more than there are times if it was cut off. */
  readonly promised: number;
  /** Most pictures from one that stands alone to the next. */
  readonly longestGroup: number;
  readonly pace: Pace;
  close(): void;
}

/**
 * Opens a film and lists its pictures. Nothing is decoded yet.
 * @throws DomainError 'input-malformed' for what is no film, 'not-comparable' for one this computer cannot decode
 */
export async function openFilm(from: Blob | string, name: string): Promise<Film> {
  const input = new Input({
    formats: ALL_FORMATS,
    source: typeof from === 'string' ? new UrlSource(new URL(from, self.location.href)) : new BlobSource(from),
  });
  try {
    const track = await input.getPrimaryVideoTrack().catch(() => undefined);
    if (track === undefined) throw noFilm(`${name} is not a film that can be read here (MP4, MOV, MKV or WebM).`);
    if (track === null) throw noFilm(`${name} holds no pictures: it is sound only, or was cut off before its index.`);
    if (!(await track.canDecode())) {
      const codec = (await track.getCodec()) ?? String(await track.getInternalCodecId());
      throw new DomainError(
        'not-comparable',
        `${name} is a film in “${codec}”, which this computer cannot decode here. Save it again as H.264, VP9 or AV1, then bring it in.`,
      );
    }
    const { times, promised, longestGroup } = await readablePictures(new EncodedPacketSink(track));
    if (times.length === 0) throw noFilm(`Not one picture of ${name} can be read. It seems to have been cut off.`);
    return {
      track,
      width: await track.getDisplayWidth(),
      height: await track.getDisplayHeight(),
      rotation: await track.getRotation(),
      codec: (await track.getCodec()) ?? 'unknown',
      times,
      promised,
      longestGroup,
      pace: paceOf(times),
      close: () => input.dispose(),
    };
  } catch (thrown) {
    input.dispose();
    throw thrown;
  }
}

function noFilm(message: string): DomainError {
  return new DomainError('input-malformed', message);
}

/** The picture shown at a time: the last that began by then. */
export function indexAt(times: readonly number[], t: number): number {
  let [low, high] = [0, times.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((times[middle] ?? Infinity) <= t + SAME_TIME_S) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Whether a decoded picture is the one asked for. Decoders count whole microseconds. */
export function isSameTime(a: number, b: number): boolean {
  return Math.abs(a - b) < 2e-6;
}
