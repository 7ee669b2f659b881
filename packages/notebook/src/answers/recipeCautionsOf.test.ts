import { expect, test } from "vitest";
import type { RecipeStep } from "../records/index.ts";
import { recipeFrames } from "../starters/recipes/index.ts";
import { recipeCautionsOf } from "./recipeCautionsOf.ts";

const steps = recipeFrames().find(({ frame }) => frame === "directPositiveTwoTrays")?.steps ?? [];
const today = "2026-12-01";
const idsAt = (all: readonly RecipeStep[], stepId: string) =>
  (recipeCautionsOf({ steps: all, today }).at.get(stepId) ?? []).map(({ id }) => id);

test("each caution stands once, at the first bath it is due at; mains, chlorine and first aid are of the whole", () => {
  const { at, whole } = recipeCautionsOf({ steps, today });
  expect(idsAt(steps, "1")).toEqual(["dev-skin"]);
  expect(idsAt(steps, "5")).toEqual(["air", "ox-vent"]);
  const shown = [...at.values()].flat().map(({ id }) => id);
  expect(new Set(shown).size).toBe(shown.length);
  expect(whole.map(({ id }) => id)).toEqual(expect.arrayContaining(["mains", "cl-acid", "help"]));
  expect(whole.at(-1)?.id).toBe("help");
});

// 5 % irritates eyes, from 8 % on it damages them [EU CLP Annex VI limits, as the table of cautions keeps them].
test("peroxide of 6 % w/v asks for goggles, of 9 % for sealed ones, of 3 % for neither", () => {
  const of = (percentWv: number) =>
    steps.map((step) => (step.id === "5" ? { ...step, holds: [{ what: "h2o2" as const, percentWv }] } : step));
  expect(idsAt(of(3), "5").filter((id) => id.startsWith("ox-eye"))).toEqual([]);
  expect(idsAt(of(6), "5")).toContain("ox-eye5");
  expect(idsAt(of(9), "5")).toContain("ox-eye8");
  expect(idsAt(of(9), "5")).not.toContain("ox-eye5");
});

test("sulfite straight after an acid warns of choking gas; with a rinse between only where the recipe lists it", () => {
  const noRinse = steps.filter(({ id }) => id !== "5" && id !== "6").map((step) => ({ ...step, cautions: [] }));
  expect(idsAt(noRinse, "7")).toContain("so2");
  expect(idsAt(steps, "7").toSorted()).toEqual(["clear-hot", "so2"]);
  const rinsed = steps.map((step) => ({ ...step, cautions: [] }));
  expect(idsAt(rinsed, "7")).not.toContain("so2");
});

test("an empty recipe has the cautions of any darkroom, and first aid", () => {
  expect(recipeCautionsOf({ steps: [], today }).at.size).toBe(0);
  expect(recipeCautionsOf({ steps: [], today }).whole.at(-1)?.id).toBe("help");
});

test("a table that is older than two years says its date", () => {
  expect(recipeCautionsOf({ steps, today }).checkedOn).toBeUndefined();
  expect(recipeCautionsOf({ steps, today: "2029-01-01" }).checkedOn).toMatch(/^20\d\d-\d\d-\d\d$/);
});
