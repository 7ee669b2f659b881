import { expect, test } from "vitest";
import { densityWords } from "./densityWords.ts";

test("a density with its ±, a range once the ± passes 0.3 [the look's page of parts: eye strip]", () => {
  expect(densityWords({ density: 0.244, low: 0.214, high: 0.274 })).toBe("0.24 ±0.03");
  expect(densityWords({ density: 0.75, low: 0.46, high: 1.05 })).toBe("0.75 ±0.30");
  expect(densityWords({ density: 0.75, low: 0.28, high: 1.61 })).toBe("0.3 to 1.6");
});
