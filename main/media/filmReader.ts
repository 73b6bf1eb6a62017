import { parentPort, workerData } from 'node:worker_threads';
import { ALL_FORMATS, EncodedPacketSink, FilePathSource, Input } from 'mediabunny';
import { readablePictures } from '../../shared/film/readablePictures.ts';
import type { FilmFacts } from './filmFacts.ts';

// A thread of its own, because a reader that a damaged film sends in circles never lets go of the one it runs in.
// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has one listener and no origin to name
parentPort?.postMessage(await read(String(workerData)));

async function read(file: string): Promise<FilmFacts | null> {
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
