import { describe, expect, test } from "vitest";
import { holdWakeLock, type WakeState } from "./wakeLock.ts";

const settle = () => new Promise((done) => setTimeout(done, 0));

/** A page that can be hidden and shown, and a machine that lends wake locks or refuses. */
const machine = ({ refuses = false } = {}) => {
  const listeners = new Set<() => void>();
  let lost: (() => void) | null = null;
  const made = {
    page: {
      visibilityState: "visible" as DocumentVisibilityState,
      addEventListener: (_name: string, listener: () => void) => void listeners.add(listener),
      removeEventListener: (_name: string, listener: () => void) => void listeners.delete(listener),
    },
    asked: 0,
    released: 0,
    wakeLock: {
      request: async () => {
        made.asked++;
        if (refuses) throw new Error("NotAllowedError");
        return {
          release: async () => void made.released++,
          addEventListener: (_name: "release", listener: () => void) => {
            lost = listener;
          },
        };
      },
    },
    listeners,
    turn(state: DocumentVisibilityState) {
      made.page.visibilityState = state;
      if (state === "hidden") lost?.();
      for (const listener of listeners) listener();
    },
  };
  return made;
};

describe("holdWakeLock", () => {
  test("asks again when the page is seen again [screen-wake-lock: the lock is released when hidden; from memory]", async () => {
    const states: WakeState[] = [];
    const { page, wakeLock, ...rest } = machine();
    const made = { page, wakeLock, ...rest };
    const letGo = holdWakeLock({ onState: (state) => states.push(state), parts: { wakeLock, page: page as never } });
    await settle();
    made.turn("hidden");
    await settle();
    made.turn("visible");
    await settle();
    expect(states).toEqual(["held", "released", "held"]);
    letGo();
    expect(made.listeners.size).toBe(0);
  });

  test("says when it is refused, and asks again when the page is seen again", async () => {
    const states: WakeState[] = [];
    const made = machine({ refuses: true });
    const parts = { wakeLock: made.wakeLock, page: made.page as never };
    const letGo = holdWakeLock({ onState: (state) => states.push(state), parts });
    await settle();
    expect(states).toEqual(["refused"]);
    made.turn("visible");
    await settle();
    expect(made.asked).toBe(2);
    letGo();
  });

  test("says when the machine has none", () => {
    const states: WakeState[] = [];
    const parts = { wakeLock: undefined, page: machine().page as never };
    holdWakeLock({ onState: (state) => states.push(state), parts })();
    expect(states).toEqual(["missing"]);
  });

  test("a lock that comes after the page was left is given back", async () => {
    const states: WakeState[] = [];
    const made = machine();
    holdWakeLock({
      onState: (state) => states.push(state),
      parts: { wakeLock: made.wakeLock, page: made.page as never },
    })();
    await settle();
    expect(made.released).toBe(1);
    expect(states).toEqual([]);
  });
});
