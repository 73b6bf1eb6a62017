/** A fresh id for a record made on screen. */
export function newId(): string {
  return crypto.randomUUID();
}

/** Today by this machine's calendar, `2026-11-25`. */
export function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}
