import fc from "fast-check";
import { expect, test } from "vitest";
import { rows } from "../../fixtures/light/daylight.json";
import { airMass } from "./airMass.ts";

const fixed = { seed: 20261125 };

test("every height of the daylight table [kasten-young-1989; peer: plain Python]", () => {
  for (const row of rows) {
    const airMassRule = row.in.airMassRule === "secant" ? "secant" : "kastenYoung";
    expect(airMass({ altitudeDeg: row.in.altitudeDeg, airMassRule }) / row.airMass).toBeCloseTo(1, 8);
  }
});

test("1.9943 at 30° by default, 2 by the secant [kasten-young-1989, ies-1984; by hand]", () => {
  expect(airMass({ altitudeDeg: 30 })).toBeCloseTo(1.9942929, 7);
  expect(airMass({ altitudeDeg: 30, airMassRule: "secant" })).toBeCloseTo(2, 12);
});

test("one air overhead, some 38 at the horizon [common practice]", () => {
  expect(airMass({ altitudeDeg: 90 })).toBeCloseTo(1, 3);
  expect(airMass({ altitudeDeg: 1e-9 })).toBeCloseTo(38, 0);
});

test("the lower the sun, the more air, and the secant always has more [property]", () => {
  const altitude = fc.double({ min: 0.01, max: 89.9, noNaN: true });
  fc.assert(
    fc.property(altitude, (altitudeDeg) => {
      expect(airMass({ altitudeDeg })).toBeGreaterThan(airMass({ altitudeDeg: altitudeDeg + 0.1 }));
      expect(airMass({ altitudeDeg, airMassRule: "secant" })).toBeGreaterThan(airMass({ altitudeDeg }));
    }),
    fixed,
  );
});

test("a sun at the horizon or below, beyond the zenith, or an unknown rule is refused", () => {
  for (const altitudeDeg of [0, -3]) {
    expect(() => airMass({ altitudeDeg })).toThrow(
      expect.objectContaining({ code: "sunBelowHorizon", key: "altitudeDeg" }),
    );
  }
  expect(() => airMass({ altitudeDeg: 90.5 })).toThrow(
    expect.objectContaining({ code: "outOfRange", key: "altitudeDeg" }),
  );
  expect(() => airMass({ altitudeDeg: 30, airMassRule: "flat" as "secant" })).toThrow(
    expect.objectContaining({ code: "unknownWord", key: "airMassRule" }),
  );
});
