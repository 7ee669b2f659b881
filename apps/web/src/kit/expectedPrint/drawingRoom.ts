import type { PapersAsked } from "@captray/notebook/answers";
import type { DrawnPapers } from "@captray/science/tone";

/** What of a worker is needed here; a test hands in a stand-in. */
export interface DrawingWorker {
  postMessage(question: { readonly number: number; readonly input: PapersAsked["input"] }): void;
  addEventListener(kind: "message", listener: (event: { readonly data: unknown }) => void): void;
  addEventListener(kind: "error", listener: () => void): void;
}

/** `refused`: these papers cannot be drawn, or not here; who asks finds out why by drawing them at once. */
export type Drawn = DrawnPapers | "refused";

export interface DrawingRoom {
  /** What is there for a key; asking for it changes nothing. */
  readonly at: (key: string | undefined) => Drawn | undefined;
  /** Has it drawn, unless it is there or on its way. */
  readonly ask: (asked: PapersAsked) => void;
  /** Calls back whenever something new is there. */
  readonly subscribe: (listener: () => void) => () => void;
}

/** Tables of about a megabyte each: one for each sheet that a person turns over in a while. */
const MOST_KEPT = 8;

/**
 * The tables of drawn papers, made by a worker that is started at the first need.
 *
 * One question is on its way at a time; of those that come meanwhile only the newest waits, as the others are out of date.
 */
export function openDrawingRoom({ start }: { readonly start: () => DrawingWorker }): DrawingRoom {
  const kept = new Map<string, Drawn>();
  const listeners = new Set<() => void>();
  let worker: DrawingWorker | "broken" | undefined;
  let underWay: PapersAsked | undefined;
  let waiting: PapersAsked | undefined;
  let number = 0;

  return { at: (key) => (key === undefined ? undefined : kept.get(key)), ask, subscribe };

  function subscribe(listener: () => void): () => void {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }

  function ask(asked: PapersAsked): void {
    if (kept.has(asked.key) || underWay?.key === asked.key) return;
    if (underWay !== undefined) {
      waiting = asked;
      return;
    }
    send(asked);
  }

  function send(asked: PapersAsked): void {
    worker ??= started();
    if (worker === "broken") {
      keep(asked.key, "refused");
      return;
    }
    underWay = asked;
    number += 1;
    worker.postMessage({ number, input: asked.input });
  }

  function started(): DrawingWorker | "broken" {
    try {
      const fresh = start();
      fresh.addEventListener("message", ({ data }) => answered(data as { number: number; papers?: DrawnPapers }));
      fresh.addEventListener("error", broken);
      return fresh;
    } catch {
      return "broken";
    }
  }

  function answered({ number: of, papers }: { readonly number: number; readonly papers?: DrawnPapers }): void {
    if (underWay === undefined || of !== number) return;
    const { key } = underWay;
    underWay = undefined;
    keep(key, papers ?? "refused");
    next();
  }

  function broken(): void {
    worker = "broken";
    const asked = underWay;
    underWay = undefined;
    if (asked !== undefined) keep(asked.key, "refused");
    next();
  }

  function next(): void {
    const asked = waiting;
    waiting = undefined;
    if (asked !== undefined) ask(asked);
  }

  function keep(key: string, drawn: Drawn): void {
    kept.set(key, drawn);
    for (const oldest of kept.keys()) {
      if (kept.size <= MOST_KEPT) break;
      kept.delete(oldest);
    }
    for (const listener of listeners) listener();
  }
}
