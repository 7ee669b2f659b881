import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readCapMirror } from "./capMirror.ts";
import { type CapEvent, startCap, stepCap } from "./capState.ts";

const plan = { wantedS: 12.6, way: "ticks", biasS: 0, rate: 1 } as const;

describe("readCapMirror", () => {
  test("whatever the page can be is read back as it was [property]", () => {
    const event = fc.tuple(
      fc.constantFrom("press", "wait", "endHere", "goOn", "stillOff", "takeBack", "mishap", "correct", "hand"),
      fc.integer({ min: 400, max: 20_000 }),
    );
    fc.assert(
      fc.property(fc.array(event, { maxLength: 20 }), fc.boolean(), (events, countIn) => {
        let state = startCap({ plan, countIn });
        let nowMs = 1_764_000_000_000;
        for (const [kind, later] of events) {
          nowMs += later;
          const facts = { kind, nowMs, spareId: `o${nowMs}`, mishap: "knocked", byS: 0.5, step: "slideIn" };
          state = stepCap({ state, event: facts as CapEvent });
        }
        const held = { state, seenMs: nowMs, kept: false };
        expect(readCapMirror(JSON.parse(JSON.stringify(held)))).toEqual(held);
      }),
      { seed: 20261125 },
    );
  });

  test("anything else is nothing, and never an error [property]", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (held) => {
        expect(readCapMirror(held)).toBeNull();
      }),
      { seed: 20261125 },
    );
  });

  test("a page with a time that is no number, or an unknown phase, is not believed", () => {
    const whole = { state: startCap({ plan }), seenMs: 1, kept: true };
    expect(readCapMirror(whole)).toEqual(whole);
    expect(readCapMirror({ ...whole, seenMs: null })).toBeNull();
    expect(readCapMirror({ ...whole, state: { ...whole.state, plan: { ...plan, wantedS: -1 } } })).toBeNull();
    expect(readCapMirror({ ...whole, state: { ...whole.state, phase: { name: "off", openedMs: "x" } } })).toBeNull();
    expect(readCapMirror({ ...whole, state: { ...whole.state, phase: { name: "lost" } } })).toBeNull();
    expect(readCapMirror({ ...whole, state: { ...whole.state, openings: [{}] } })).toBeNull();
  });
});
