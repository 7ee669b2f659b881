import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { idIn, segmentsOf } from "./route.ts";

describe("the way through the app [none: our own addresses]", () => {
  test("a hash path is its parts; a broken one is the start", () => {
    expect(segmentsOf({ hash: "#/camera/cap/0abc" })).toEqual(["camera", "cap", "0abc"]);
    expect(segmentsOf({ hash: "" })).toEqual([]);
    expect(segmentsOf({ hash: "#/%" })).toEqual([]);
  });

  test("a pattern finds its id, a word is no id of another pattern", () => {
    expect(idIn({ pattern: "/camera/cap/:id", path: ["camera", "cap", "0abc"] })).toBe("0abc");
    expect(idIn({ pattern: "/camera/now", path: ["camera", "now"] })).toBe("");
    expect(idIn({ pattern: "/camera/now", path: ["camera", "0abc"] })).toBeUndefined();
    expect(idIn({ pattern: "/camera/:id", path: ["camera"] })).toBeUndefined();
  });

  test("an id survives the address, whatever its signs [property]", () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (id) => {
        const path = segmentsOf({ hash: `#/logbook/${encodeURIComponent(id)}` });
        expect(idIn({ pattern: "/logbook/:id", path })).toBe(id);
      }),
      { seed: 32 },
    );
  });
});
