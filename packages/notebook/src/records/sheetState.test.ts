import { expect, test } from "vitest";
import { sheetState } from "./sheetState.ts";

const at = (minutes: number) => ({ at: minutes, offsetMin: 60 });

test("blank, loaded, flashed, exposed, in process, drying, measured, kept or discarded", () => {
  expect(sheetState({})).toBe("blank");
  expect(sheetState({ loadedAt: at(1) })).toBe("loaded");
  expect(sheetState({ flashedAt: at(1) })).toBe("flashed");
  expect(sheetState({ loadedAt: at(1), flashedAt: at(2) })).toBe("flashed");
  expect(sheetState({ loadedAt: at(1), exposedAt: at(2) })).toBe("exposed");
  expect(sheetState({ exposedAt: at(2), inProcessAt: at(3) })).toBe("inProcess");
  expect(sheetState({ exposedAt: at(2), dryingAt: at(4) })).toBe("drying");
  expect(sheetState({ exposedAt: at(2), dryingAt: at(4), takenDownAt: at(5) })).toBe("dry");
  expect(sheetState({ exposedAt: at(2), measuredAt: at(5) })).toBe("measured");
  expect(sheetState({ measuredAt: at(5), keptAt: at(6) })).toBe("kept");
  expect(sheetState({ measuredAt: at(5), discardedAt: at(6) })).toBe("discarded");
});

test("a late date of an early step does not set a sheet back", () => {
  expect(sheetState({ exposedAt: at(2), loadedAt: at(9) })).toBe("exposed");
});

test("flash planned for after the exposure is owed until it is given or the first bath has begun otherwise", () => {
  const flashPlanned = { timeS: 4, when: "afterExposure" } as const;
  expect(sheetState({ loadedAt: at(1), flashPlanned })).toBe("loaded");
  expect(sheetState({ exposedAt: at(2), flashPlanned })).toBe("flashOwed");
  expect(sheetState({ exposedAt: at(2), flashPlanned, flashedAt: at(3) })).toBe("exposed");
  expect(sheetState({ exposedAt: at(2), flashPlanned, inProcessAt: at(3) })).toBe("inProcess");
  expect(sheetState({ exposedAt: at(2), flashPlanned: { timeS: 4, when: "inCamera" } })).toBe("exposed");
});

test("kept on one device and discarded on another: the later stands, and a print is not lost by a tie", () => {
  expect(sheetState({ keptAt: at(6), discardedAt: at(7) })).toBe("discarded");
  expect(sheetState({ keptAt: at(8), discardedAt: at(7) })).toBe("kept");
  expect(sheetState({ keptAt: at(7), discardedAt: at(7) })).toBe("kept");
});
