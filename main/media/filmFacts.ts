import { ALL_FORMATS, EncodedPacketSink, FilePathSource, Input } from 'mediabunny';
import { type ReadablePictures, readablePictures } from '../../shared/film/readablePictures.ts';

export interface FilmFacts extends ReadablePictures {
  /** `avc`, `hevc`; as the file names it where that is not a known one. */
  readonly codec: string;
}

/**
 * What a film file says of itself and which of its pictures are there, without decoding any; null for a file that has
 * no pictures, or whose container is not one that can be read without ffmpeg.
 */
export async function filmFacts(file: string): Promise<FilmFacts | null> {
  const input = new Input({ formats: ALL_FORMATS, source: new FilePathSource(file) });
  try {
    const track = await input.getPrimaryVideoTrack();
    if (track === null) return null;
    const pictures = await readablePictures(new EncodedPacketSink(track));
    if (pictures.times.length === 0) return null;
    return { ...pictures, codec: (await track.getCodec()) ?? String(await track.getInternalCodecId()) };
  } catch {
    // Every failure to read here means the same: nothing of it can be had this way.
    return null;
  } finally {
    input.dispose();
  }
}
