import { VideoSampleSink, type VideoSample } from 'mediabunny';
import { DomainError } from '../../shared/errors.ts';
import { type Film, indexAt, isSameTime } from './film.ts';

/** A decoded picture, as the decoder laid it out: a third of the bytes of one ready to be shown. */
export interface Picture {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly init: VideoFrameBufferInit & { readonly layout: PlaneLayout[] };
}

export interface FrameStore {
  /**
   * The picture of one frame, exactly. Requests are met one after the other.
   * @throws DomainError 'not-found' where the film is damaged
   */
  get(frame: number): Promise<Picture>;
  /** Bytes of the pictures held now; never more than the budget by more than one picture. */
  heldBytes(): number;
  close(): void;
}

/** Sixty pictures of 1920 × 1080: enough to step back through a whole block while the next one is decoded. */
const BUDGET_BYTES = 192 * 1024 * 1024;
/** Most pictures decoded at once for a step back. */
const BLOCK = 24;

/**
 * Pictures around the playhead. Forward, one decoder stays open and gives the next; back, a block that ends with the
 * frame asked for is decoded from its key frame and kept.
 */
export function createFrameStore(film: Film, budgetBytes = BUDGET_BYTES): FrameStore {
  const sink = new VideoSampleSink(film.track);
  /** The least recently used first. */
  const held = new Map<number, Picture>();
  let bytes = 0;
  let last = -1;
  let forward: { readonly samples: AsyncGenerator<VideoSample, void>; next: number } | null = null;
  let queue: Promise<unknown> = Promise.resolve();
  let isClosed = false;

  const timeOf = (frame: number) => film.times[frame] ?? Infinity;

  async function keep(sample: VideoSample): Promise<number | null> {
    try {
      const frame = indexAt(film.times, sample.timestamp);
      if (!isSameTime(sample.timestamp, timeOf(frame))) return null;
      if (!held.has(frame)) {
        const picture = await copyOf(sample);
        bytes += picture.bytes.length;
        held.set(frame, picture);
      }
      return frame;
    } finally {
      sample.close();
    }
  }

  function trim(): void {
    for (const [frame, picture] of held) {
      if (bytes <= budgetBytes || held.size === 1) return;
      held.delete(frame);
      bytes -= picture.bytes.length;
    }
  }

  async function stopForward(): Promise<void> {
    const open = forward;
    forward = null;
    await open?.samples.return().catch(() => undefined);
  }

  async function decodeForward(frame: number): Promise<void> {
    if (forward?.next !== frame) {
      await stopForward();
      forward = { samples: sink.samples(timeOf(frame)), next: frame };
    }
    const { value } = await forward.samples.next();
    const kept = value === undefined ? null : await keep(value);
    if (kept === frame) forward.next = frame + 1;
    else await stopForward();
  }

  async function decodeBack(frame: number): Promise<void> {
    const size = [...held.values()][0]?.bytes.length ?? 1;
    const block = Math.max(1, Math.min(BLOCK, Math.floor(budgetBytes / size / 2)));
    const first = Math.max(0, frame - block + 1);
    // The end is exclusive, and the frame itself is wanted.
    for await (const sample of sink.samples(timeOf(first), timeOf(frame) + 1e-5)) {
      if (isClosed) sample.close();
      else await keep(sample);
    }
  }

  async function find(frame: number): Promise<Picture> {
    if (isClosed) throw new DomainError('cancelled', 'The film is closed.');
    const isBack = frame < last && last - frame <= BLOCK;
    last = frame;
    try {
      if (!held.has(frame)) await (isBack ? decodeBack(frame) : decodeForward(frame));
      // A decoder that was open past the frame, or that skipped, is asked once more from the key frame.
      if (!held.has(frame)) await decodeBack(frame);
    } catch (thrown) {
      await stopForward();
      throw unreadable(frame, thrown);
    }
    const picture = held.get(frame);
    if (picture === undefined) throw unreadable(frame, null);
    held.delete(frame);
    held.set(frame, picture);
    trim();
    return picture;
  }

  return {
    get(frame) {
      const found = queue.then(() => find(frame));
      queue = found.catch(() => undefined);
      return found;
    },
    heldBytes: () => bytes,
    close() {
      isClosed = true;
      queue = queue.then(stopForward);
      held.clear();
      bytes = 0;
    },
  };
}

function unreadable(frame: number, thrown: unknown): DomainError {
  const why = thrown instanceof Error ? ` (${thrown.message})` : '';
  return new DomainError('not-found', `Frame ${frame} cannot be decoded: the film is damaged there${why}.`);
}

async function copyOf(sample: VideoSample): Promise<Picture> {
  const frame = sample.toVideoFrame();
  try {
    const { format, visibleRect, timestamp, colorSpace } = frame;
    if (format === null) throw new DomainError('not-comparable', 'The decoder gave a picture of no known form.');
    const bytes = new Uint8Array(frame.allocationSize());
    const layout = await frame.copyTo(bytes);
    const { width = frame.codedWidth, height = frame.codedHeight } = visibleRect ?? {};
    return {
      bytes,
      init: { format, codedWidth: width, codedHeight: height, timestamp, layout, colorSpace: colorSpace.toJSON() },
    };
  } finally {
    frame.close();
  }
}
