import type { PapersAsked } from "@captray/notebook/answers";
import type { DrawnPapers } from "@captray/science/tone";
import { expect, test } from "vitest";
import { type DrawingWorker, openDrawingRoom } from "./drawingRoom.ts";

const asked = (key: string): PapersAsked => ({ key, input: { seed: key.length } });
const papers = { draws: 1 } as DrawnPapers;

/** A room with a worker that answers when the test says so. */
function roomWithStandIn() {
  const asks: { readonly number: number; readonly input: PapersAsked["input"] }[] = [];
  const listeners: Record<string, ((event: { readonly data: unknown }) => void)[]> = { message: [], error: [] };
  let starts = 0;
  const worker: DrawingWorker = {
    postMessage: (question) => asks.push(question),
    addEventListener: (kind: string, listener: (event: { readonly data: unknown }) => void) =>
      listeners[kind]?.push(listener),
  };
  const room = openDrawingRoom({
    start: () => {
      starts += 1;
      return worker;
    },
  });
  const say = (kind: "message" | "error", data?: unknown) => {
    for (const listener of listeners[kind] ?? []) listener({ data });
  };
  return { room, asks, say, starts: () => starts };
}

test("the worker is started at the first question, and each key is drawn once", () => {
  const { room, asks, say, starts } = roomWithStandIn();
  expect(starts()).toBe(0);
  let news = 0;
  const leave = room.subscribe(() => {
    news += 1;
  });
  room.ask(asked("a"));
  room.ask(asked("a"));
  expect(room.at("a")).toBeUndefined();
  expect(asks.length).toBe(1);
  say("message", { number: 1, papers });
  expect(room.at("a")).toBe(papers);
  room.ask(asked("a"));
  expect([asks.length, starts(), news]).toEqual([1, 1, 1]);
  leave();
});

test("of the questions that come while one is on its way only the newest is put", () => {
  const { room, asks, say } = roomWithStandIn();
  for (const key of ["a", "bb", "ccc"]) room.ask(asked(key));
  expect(asks.map(({ input }) => input.seed)).toEqual([1]);
  say("message", { number: 1, papers });
  expect(asks.map(({ input }) => input.seed)).toEqual([1, 3]);
  say("message", { number: 1, papers });
  expect(room.at("ccc")).toBeUndefined();
  say("message", { number: 2, papers });
  expect(room.at("ccc")).toBe(papers);
});

test("what the worker cannot draw is refused, and so is everything once it has broken", () => {
  const { room, say } = roomWithStandIn();
  room.ask(asked("a"));
  say("message", { number: 1 });
  expect(room.at("a")).toBe("refused");
  room.ask(asked("b"));
  room.ask(asked("c"));
  say("error");
  expect([room.at("b"), room.at("c")]).toEqual(["refused", "refused"]);
});

test("a machine without workers is one whose worker broke", () => {
  const room = openDrawingRoom({
    start: () => {
      throw new Error("no workers here");
    },
  });
  room.ask(asked("a"));
  expect(room.at("a")).toBe("refused");
});

test("eight tables are kept, the oldest goes first", () => {
  const { room, say } = roomWithStandIn();
  for (let n = 1; n <= 9; n += 1) {
    room.ask(asked(`k${n}`));
    say("message", { number: n, papers });
  }
  expect(room.at("k1")).toBeUndefined();
  expect(room.at("k2")).toBe(papers);
  expect(room.at(undefined)).toBeUndefined();
});
