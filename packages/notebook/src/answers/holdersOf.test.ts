import { describe, expect, test } from "vitest";
import { holdersOf } from "./holdersOf.ts";
import { at, cardFor, holders, said, side } from "./holdersTesting.ts";
import { demoSheet } from "./testing.ts";

const inside = (...cards: Parameters<typeof holdersOf>[0]["cards"]) => holdersOf({ holders, cards });

describe("what lies in a side follows from the sheets", () => {
  test("empty, laid out for it, loaded, exposed", () => {
    expect(said(inside())).toEqual(["A empty ", "B empty ", "A empty ", "B empty "]);
    const found = inside(
      cardFor(31, { ...side(11), loadedAt: at(1) }),
      cardFor(30, { ...side(12), loadedAt: at(1), exposedAt: at(2) }),
      cardFor(36, side(15)),
    );
    expect(said(found)).toEqual(["A loaded W31", "B exposed W30", "A planned W36", "B empty "]);
  });

  test.each([
    ["inProcessAt", "goes into the trays"],
    ["takenOutAt", "goes into the box for exposed sheets"],
    ["discardedAt", "is discarded"],
    ["keptAt", "is kept"],
  ])("an exposed sheet leaves its side when it has a date for %s: it %s", (step) => {
    const card = cardFor(30, { ...side(12), loadedAt: at(1), exposedAt: at(2), [step]: at(3) });
    expect(said(inside(card))[1]).toBe("B empty ");
  });

  test("exposed and nobody noted the loading: it lies where it says", () => {
    expect(said(inside(cardFor(30, { ...side(12), exposedAt: at(2) })))[1]).toBe("B exposed W30");
  });

  test("flash owed: still exposed, still in its side", () => {
    const flashPlanned = { timeS: 4, when: "afterExposure" };
    const [holder] = inside(cardFor(30, { ...side(12), loadedAt: at(1), exposedAt: at(2), flashPlanned }));
    expect(holder?.sides[1]?.state).toBe("exposed");
    expect(holder?.sides[1]?.sheet?.state).toBe("flashOwed");
  });

  test("two that are said to be in one side: the exposed one counts, the other is named", () => {
    const [holder] = inside(
      cardFor(31, { ...side(11), loadedAt: at(5) }),
      cardFor(30, { ...side(11), loadedAt: at(1), exposedAt: at(2) }),
    );
    expect(holder?.sides[0]?.sheet?.code).toBe("W30");
    expect(holder?.sides[0]?.others.map(({ code }) => code)).toEqual(["W31"]);
  });

  test("the invented notebook: W30 lies exposed in holder 2, side B; W35 loaded in holder 3, side B [look: the shelf]", async () => {
    const { notebook } = await demoSheet("W30");
    const found = holdersOf({ holders: notebook.shelf("holder"), cards: notebook.cards() });
    expect(said(found)).toEqual(["A empty ", "B exposed W30", "A empty ", "B loaded W35"]);
  });
});
