/** A small store that has written by the time the call returns, so that a killed tab loses nothing. */
export interface Mirror {
  readonly read: (name: string) => unknown;
  /** False where the machine would not keep it. */
  readonly write: (name: string, value: unknown) => boolean;
  readonly drop: (name: string) => void;
}

interface MirrorStore {
  readonly getItem: (name: string) => string | null;
  readonly setItem: (name: string, value: string) => void;
  readonly removeItem: (name: string) => void;
}

/** The browser's small synchronous store. Where it is barred, reading gives null and writing says false. */
export function createMirror(storeOf: () => MirrorStore = () => localStorage): Mirror {
  return {
    read(name) {
      try {
        const text = storeOf().getItem(name);
        return text === null ? null : (JSON.parse(text) as unknown);
      } catch {
        return null;
      }
    },
    write(name, value) {
      try {
        storeOf().setItem(name, JSON.stringify(value));
        return true;
      } catch {
        return false;
      }
    },
    drop(name) {
      try {
        storeOf().removeItem(name);
      } catch {
        // A store that is barred has nothing to drop.
      }
    },
  };
}
