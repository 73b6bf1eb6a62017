/** What is asked of whoever reads the container: its packets in the order of decoding, and one of them with its bytes. */
export interface PacketSource {
  packets(
    from: undefined,
    to: undefined,
    options: { readonly metadataOnly: true },
  ): AsyncIterable<{ readonly timestamp: number; readonly type: 'key' | 'delta'; readonly byteLength: number }>;
  getPacket(timestamp: number): Promise<{ readonly byteLength: number; readonly data: Uint8Array } | null>;
}

export interface ReadablePictures {
  /** Presentation time of each picture that is there, s, rising. */
  readonly times: readonly number[];
  /** Pictures the index promises; more than there are times if the file was cut off. */
  readonly promised: number;
  /** Most pictures from one that stands alone to the next: so many may have to be decoded to show one. */
  readonly longestGroup: number;
}

/** Times that differ by less are one time: containers round. */
export const SAME_TIME_S = 1e-7;

/**
 * Groups longer than this step back slowly enough to be worth a copy with short ones: a convention; 240 pictures of
 * 1920 × 1080 took about half a second where it was measured, 30 about an eighth.
 */
export const MOST_GROUP = 120;

/**
 * Which of a film's pictures can be had. Those before time 0 are hidden by an edit list. A file that was cut off lacks its
 * end, so the last one there is found by halving.
 * @source 14496-12 (edit lists start presentation at 0); halving
 */
export async function readablePictures(source: PacketSource): Promise<ReadablePictures> {
  const listed: { readonly t: number; readonly isKey: boolean; readonly bytes: number }[] = [];
  for await (const { timestamp, type, byteLength } of source.packets(undefined, undefined, { metadataOnly: true })) {
    listed.push({ t: timestamp, isKey: type === 'key', bytes: byteLength });
  }
  const isThere = async (i: number) => {
    const one = listed[i];
    const packet = one === undefined ? null : await source.getPacket(one.t + SAME_TIME_S / 2).catch(() => null);
    return packet !== null && packet.byteLength === one?.bytes && packet.data.length === one.bytes;
  };
  let there = listed.length;
  if (there > 0 && !(await isThere(there - 1))) {
    let [low, high] = [0, there - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (await isThere(middle)) low = middle + 1;
      else high = middle;
    }
    there = low;
  }
  const shown = (pictures: typeof listed) => pictures.map(({ t }) => t).filter((t) => t >= -SAME_TIME_S);
  let [group, longestGroup] = [0, 0];
  for (const { isKey } of listed.slice(0, there)) {
    group = isKey ? 1 : group + 1;
    longestGroup = Math.max(longestGroup, group);
  }
  return {
    times: shown(listed.slice(0, there)).toSorted((a, b) => a - b),
    promised: shown(listed).length,
    longestGroup,
  };
}
