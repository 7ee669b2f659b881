import type { SheetCard } from "@captray/notebook/journal";
import { describe, expect, test } from "vitest";
import { traysView } from "./traysView.ts";

const card = (code: string, state: SheetCard["state"], exposedAt = 0) =>
  ({
    id: code,
    code,
    state,
    result: code.startsWith("N") ? "negative" : "positive",
    dates: { exposedAt: { at: exposedAt, offsetMin: 60 } },
    links: { sceneId: "slip" },
  }) as unknown as SheetCard;
const subjectOf = (id: string | undefined) => (id === "slip" ? "snow on the slip" : "");

describe("traysView", () => {
  test("a sheet that owes its flash stands first, the others as they were exposed [by hand]", () => {
    const cards = [
      card("W34", "exposed", 300),
      card("W33", "flashOwed", 200),
      card("W31", "exposed", 100),
      card("W30", "drying", 50),
      card("W29", "blank"),
    ];
    expect(traysView({ cards, subjectOf }).waiting.map(({ code }) => code)).toEqual(["W33", "W31", "W34"]);
  });

  test("what is in the trays does not wait for them", () => {
    const view = traysView({ cards: [card("N1", "inProcess")], subjectOf });
    expect(view.waiting).toEqual([]);
    expect(view.inProcess[0]?.what).toBe("paper negative, snow on the slip");
  });
});
