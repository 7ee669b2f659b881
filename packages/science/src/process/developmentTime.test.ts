import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/process/checking.ts";
import { activationEnergy } from "./activationEnergy.ts";
import { developmentTime } from "./developmentTime.ts";
import { developmentTimeArrhenius } from "./developmentTimeArrhenius.ts";

const bathC = fc.double({ min: 14, max: 28, noNaN: true });
const q10 = fc.double({ min: 1.1, max: 4, noNaN: true });

describe("developmentTime", () => {
  it("10 °C warmer, half the time: the rule of thumb of a factor of two [q10-page]", () => {
    expectClose(developmentTime({ timeS: 90, bathC: 26, referenceC: 16 }), 45);
    expectClose(developmentTime({ timeS: 90, bathC: 16, referenceC: 26 }), 180);
  });

  it("factors of 1.5 and 4 in 10 °C, the ends of what was seen [q10-page; by hand: a quarter of it in 5 °C by 4]", () => {
    expectClose(developmentTime({ timeS: 60, bathC: 25, q10: 4 }), 30);
    expectClose(developmentTime({ timeS: 60, bathC: 25, q10: 1.5 }), 60 / Math.sqrt(1.5));
  });

  it("5 % faster a degree is a factor of 1.63 [q10-page: 1.05 to the tenth power, by hand]", () => {
    expectClose(developmentTime({ timeS: 100, bathC: 21, q10: 1.05 ** 10 }), 100 / 1.05);
  });

  it("90 s at 20 °C are 68.2072 s at 24 °C [by hand: 90 · 2^(−0.4)]", () => {
    expectClose(developmentTime({ timeS: 90, bathC: 24 }), 68.2072, 0, 5e-5);
  });

  it("goes there and back, and falls with warmth [property]", () => {
    fc.assert(
      fc.property(bathC, bathC, q10, (one, other, factor) => {
        const there = developmentTime({ timeS: 90, bathC: one, referenceC: other, q10: factor });
        expectClose(developmentTime({ timeS: there, bathC: other, referenceC: one, q10: factor }), 90, 1e-12);
        if (one > other + 1e-9) expect(there).toBeLessThan(90);
      }),
      seeded,
    );
  });

  it("14 and 28 °C are worked out, beyond them is refused; so is a factor no developer has", () => {
    expectClose(developmentTime({ timeS: 60, bathC: 14 }), 60 * 2 ** 0.6);
    expectClose(developmentTime({ timeS: 60, bathC: 28 }), 60 * 2 ** -0.8);
    for (const bathOff of [13.99, 28.01]) {
      expectRefusal(() => developmentTime({ timeS: 60, bathC: bathOff }), "temperatureOutOfRange", "bathC");
    }
    for (const factor of [1, 4.01]) {
      expectRefusal(() => developmentTime({ timeS: 60, bathC: 20, q10: factor }), "outOfRange", "q10");
    }
    expectRefusal(() => developmentTime({ timeS: 60, bathC: 20, q10: 0 }), "notPositive", "q10");
    expectRefusal(() => developmentTime({ timeS: 0, bathC: 20 }), "notPositive", "timeS");
    expectRefusal(() => developmentTime({ timeS: 60, bathC: Number.NaN }), "notFinite", "bathC");
  });
});

describe("developmentTimeArrhenius and activationEnergy", () => {
  it("twice as fast from 298 K to 308 K is about 53 kJ/mol, the schoolbook example [from memory; by hand: R ln 2 · T₁T₂/10]", () => {
    expectClose(activationEnergy({ q10: 2, fromC: 25 }) / 1000, 52.9, 0, 0.05);
  });

  it("a factor of 2 from 20 to 30 °C: 51216.2 J/mol, and 90 s at 20 °C are 67.8265 s at 24 °C [by hand]", () => {
    const activationJMol = activationEnergy({ q10: 2, fromC: 20 });
    expectClose(activationJMol, 51216.2, 0, 0.05);
    expectClose(developmentTimeArrhenius({ timeS: 90, bathC: 24, activationJMol }), 67.8265, 0, 5e-5);
  });

  it("over the very 10 °C of its factor it gives that factor [property]", () => {
    fc.assert(
      fc.property(q10, fc.double({ min: 14, max: 18, noNaN: true }), (factor, fromC) => {
        const activationJMol = activationEnergy({ q10: factor, fromC });
        const timeS = developmentTimeArrhenius({ timeS: 100, bathC: fromC + 10, referenceC: fromC, activationJMol });
        expectClose(timeS, 100 / factor, 1e-9);
      }),
      seeded,
    );
  });

  it("differs from a constant factor by less than 1.6 % within 4 °C [by hand]", () => {
    const activationJMol = activationEnergy({ q10: 2, fromC: 20 });
    for (const bath of [16, 18, 22, 24]) {
      const ratio =
        developmentTimeArrhenius({ timeS: 90, bathC: bath, activationJMol }) /
        developmentTime({ timeS: 90, bathC: bath });
      expect(Math.abs(ratio - 1)).toBeLessThan(0.016);
    }
  });

  it("refuses baths beyond 14 to 28 °C, no energy, and what is colder than can be", () => {
    const fine = { timeS: 90, bathC: 20, activationJMol: 5e4 };
    expectRefusal(() => developmentTimeArrhenius({ ...fine, bathC: 13 }), "temperatureOutOfRange", "bathC");
    expectRefusal(() => developmentTimeArrhenius({ ...fine, activationJMol: 0 }), "notPositive", "activationJMol");
    expectRefusal(() => developmentTimeArrhenius({ ...fine, referenceC: -300 }), "temperatureOutOfRange", "referenceC");
    expectRefusal(() => activationEnergy({ q10: 2, fromC: -273.15 }), "temperatureOutOfRange", "fromC");
    expectRefusal(() => activationEnergy({ q10: 1, fromC: 20 }), "outOfRange", "q10");
  });
});
