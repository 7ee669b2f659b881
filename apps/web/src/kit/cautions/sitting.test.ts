import { CAUTIONS } from "@captray/science/chemistry";
import { expect, test, vi } from "vitest";
import { cautionHead } from "./cautionHeads.ts";
import { followSitting, markRead, readThisSitting } from "./sitting.ts";

test("every caution of the table has its own words before it", () => {
  const heads = CAUTIONS.map(({ id }) => cautionHead(id));
  expect(heads.filter((head) => head === "Take care.")).toEqual([]);
  expect(heads.every((head) => head.endsWith("."))).toBe(true);
});

test("what was read is read for this sitting, not for the next", () => {
  vi.useFakeTimers({ now: 1_764_000_000_000 });
  let told = 0;
  const leave = followSitting(() => told++);
  markRead(["food"]);
  markRead(["ci", "food"]);
  expect(readThisSitting()).toEqual(["food", "ci"]);
  vi.setSystemTime(1_764_000_000_000 + 13 * 3_600_000);
  expect(readThisSitting()).toEqual([]);
  markRead(["air"]);
  expect(readThisSitting()).toEqual(["air"]);
  leave();
  vi.useRealTimers();
  expect(told).toBe(3);
});
