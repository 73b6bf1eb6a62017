const STOP = 'Stop and be seen: ';

/** A notice as it stands alone. */
export function stopWords(reason: string): string {
  return STOP + reason;
}

/** What a notice says under a heading that already says to stop. */
export function stopReason(words: string): string {
  return words.startsWith(STOP) ? words.slice(STOP.length) : words;
}
