import { expect, test } from "vitest";
import { cautionsAt } from "./cautionsAt.ts";
import { unread } from "./unread.ts";

const peroxide = (percentWw: number) => [{ substance: "h2o2" as const, percentWw }];
const idsOf = (asked: Omit<Parameters<typeof cautionsAt>[0], "today">) =>
  cautionsAt({ ...asked, today: "2026-12-01" }).cautions.map(({ id }) => id);

test("a caution read in this sitting is gone until it is worse; those that must stay are never gone", () => {
  const at6 = idsOf({ held: peroxide(6), act: "mix", beside: [] });
  expect(at6).toContain("ox-eye5");
  const seen = at6;
  // Of what must stay by the table: never stoppered, and what to do if it happens.
  expect(idsOf({ held: peroxide(6), act: "mix", beside: [], seen })).toEqual(["ox-vent", "help"]);
  expect(idsOf({ held: peroxide(9), act: "mix", beside: [], seen })).toContain("ox-eye8");
  const { cautions } = cautionsAt({ held: peroxide(6), act: "mix", beside: [], today: "2026-12-01" });
  expect(unread({ cautions, seen: ["ox-eye8"] }).map(({ id }) => id)).not.toContain("ox-eye5");
  expect(unread({ cautions, seen: cautions.map(({ id }) => id) }).map(({ id }) => id)).toEqual(["ox-vent", "help"]);
});

test("once its limits are older than two years the table says its day beside every caution [common practice]", () => {
  const at = (today: string) => cautionsAt({ held: [], act: "run", today }).checkedOn;
  expect(at("2027-06-01")).toBeUndefined();
  expect(at("2029-01-01")).toMatch(/^\d{4}-\d{2}-\d{2}$/);
});
