import { expect, test } from "vitest";
import { expectClose, expectRefusal } from "../../fixtures/process/checking.ts";
import { reexposureStops } from "./reexposureStops.ts";

test("200 lx for 30 s on a paper of ISO P200: 10.2288 stops [by hand: log2 of 6000 lx·s over 5 lx·s]", () => {
  expectClose(reexposureStops({ illuminanceLx: 200, timeS: 30, paperSpeed: 200 }), Math.log2(6000 / 5));
});

test("the exposure of the speed point itself is no stop; twice the light or time is one more [iso-6846: P = 1000/H]", () => {
  expectClose(reexposureStops({ illuminanceLx: 5, timeS: 1, paperSpeed: 200 }), 0);
  expectClose(reexposureStops({ illuminanceLx: 10, timeS: 1, paperSpeed: 200 }), 1);
  expectClose(reexposureStops({ illuminanceLx: 5, timeS: 2, paperSpeed: 200 }), 1);
});

test("no light, no time and no speed are refused; great numbers are not lost", () => {
  expectRefusal(() => reexposureStops({ illuminanceLx: 0, timeS: 1, paperSpeed: 200 }), "notPositive", "illuminanceLx");
  expectRefusal(() => reexposureStops({ illuminanceLx: 1, timeS: 0, paperSpeed: 200 }), "notPositive", "timeS");
  expectRefusal(() => reexposureStops({ illuminanceLx: 1, timeS: 1, paperSpeed: -1 }), "notPositive", "paperSpeed");
  expect(reexposureStops({ illuminanceLx: 1e200, timeS: 1e200, paperSpeed: 200 })).toBeGreaterThan(1000);
});
