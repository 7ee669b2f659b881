import { expect, test } from "vitest";
import { spokenTime } from "./spokenTime.ts";

test("times as a voice says them [the look's page: “13 seconds, 9 to 17”; by hand]", () => {
  expect(spokenTime({ timeS: 13 })).toBe("13 seconds");
  expect(spokenTime({ timeS: 1 })).toBe("1 second");
  expect(spokenTime({ timeS: 2.5 })).toBe("2.5 seconds");
  expect(spokenTime({ timeS: 150 })).toBe("2 minutes 30");
  expect(spokenTime({ timeS: 120 })).toBe("2 minutes");
  expect(spokenTime({ timeS: 7200 })).toBe("2 hours");
});
