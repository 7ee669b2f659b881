/** A night at the trays: what was read before it is read again. */
const sittingMs = 12 * 3_600_000;

let read: readonly string[] = [];
let since = 0;
const listeners = new Set<() => void>();
const nothing: readonly string[] = [];

/** The cautions that were read in this sitting; a page that is loaded anew shows all of them again. */
export function readThisSitting(): readonly string[] {
  return Date.now() - since > sittingMs ? nothing : read;
}

/** They were read, and need not stand there again until it is worse. */
export function markRead(ids: readonly string[]): void {
  const before = readThisSitting();
  if (before.length === 0) since = Date.now();
  read = [...new Set([...before, ...ids])];
  for (const listener of [...listeners]) listener();
}

export function followSitting(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
