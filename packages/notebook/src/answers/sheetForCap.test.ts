import { describe, expect, test } from "vitest";
import { at, boxC, cardFor, holders, side } from "./holdersTesting.ts";
import { sheetForCap } from "./sheetForCap.ts";
import { idNumber } from "./testing.ts";

const sceneId = idNumber(1);
const ask = (...cards: Parameters<typeof sheetForCap>[0]["cards"]) =>
  sheetForCap({ holders, cards, sceneId, paperBoxId: boxC.id });
const loaded = { loadedAt: at(1) };

describe("which sheet goes to the cap", () => {
  test("none loaded: a new one; one of this scene that still waits: that one", () => {
    expect(ask()).toEqual({ kind: "new" });
    expect(ask(cardFor(36, { sceneId }))).toMatchObject({ kind: "this", sheet: { code: "W36" } });
    expect(ask(cardFor(36, { sceneId, exposedAt: at(2) }))).toEqual({ kind: "new" });
  });

  test("one loaded of the chosen box: that one, whichever side it is in", () => {
    expect(ask(cardFor(36, { ...side(12), ...loaded }))).toMatchObject({ kind: "this", sheet: { code: "W36" } });
  });

  test("several loaded: which side?", () => {
    const which = ask(cardFor(36, { ...side(11), ...loaded }), cardFor(37, { ...side(16), ...loaded }));
    expect(which.kind === "which" ? which.sides.map(({ holder, side: { name } }) => holder.name + name) : []).toEqual([
      "2A",
      "3B",
    ]);
  });

  test("a sheet of another box, of another scene, exposed, or not yet loaded is not taken", () => {
    expect(
      ask(
        cardFor(36, { ...side(11), ...loaded, paperBoxId: idNumber(31) }),
        cardFor(37, { ...side(12), ...loaded, sceneId: idNumber(2) }),
        cardFor(38, { ...side(15), ...loaded, exposedAt: at(2) }),
        cardFor(39, side(16)),
      ),
    ).toEqual({ kind: "new" });
  });

  test("one waits in no holder and another is loaded: nobody guesses which", () => {
    expect(ask(cardFor(36, { sceneId }), cardFor(37, { ...side(12), ...loaded })).kind).toBe("which");
  });

  test("two loaded for this scene: which one, after a change of mind at the cap?", () => {
    const own = (n: number, sideNumber: number) => cardFor(n, { ...side(sideNumber), ...loaded, sceneId });
    expect(ask(own(36, 11), own(37, 12)).kind).toBe("which");
  });

  test("loaded for this scene goes before all others", () => {
    const own = cardFor(37, { ...side(12), ...loaded, sceneId });
    expect(ask(cardFor(36, { ...side(11), ...loaded }), own)).toMatchObject({ kind: "this", sheet: { code: "W37" } });
  });
});
