import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectAlike, expectRefusal, seeded } from "../../fixtures/chemistry/checking.ts";
import { acidPh } from "./acidPh.ts";
import { bathStrength } from "./bathStrength.ts";
import { bleachCapacity } from "./bleachCapacity.ts";
import { bottlePressure } from "./bottlePressure.ts";
import { carryOver } from "./carryOver.ts";
import { decompositionHeat } from "./decompositionHeat.ts";
import { fixerSilver } from "./fixerSilver.ts";
import { peraceticEquilibrium } from "./peraceticEquilibrium.ts";
import { peroxideClass } from "./peroxideClass.ts";
import { returnedHalideShare } from "./returnedHalideShare.ts";
import { sheetSilver } from "./sheetSilver.ts";
import { stopBathSheets } from "./stopBathSheets.ts";
import { sulfiteForPeroxide } from "./sulfiteForPeroxide.ts";
import { washChanges } from "./washChanges.ts";
import { washShare } from "./washShare.ts";
import { washTwoStores } from "./washTwoStores.ts";

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("what always holds [property]", () => {
  test("more acid is never less sour, alkali never sourer", () => {
    fc.assert(
      fc.property(within(1e-6, 2), within(1e-6, 2), within(0, 1), (molar, more, sodiumMolar) => {
        for (const name of ["citric", "acetic"] as const) {
          const pH = (amount: number, sodium: number) =>
            acidPh({ acids: [{ name, molar: amount }], sodiumMolar: sodium });
          expect(pH(molar + more, sodiumMolar)).toBeLessThanOrEqual(pH(molar, sodiumMolar) + 1e-12);
          expect(pH(molar, sodiumMolar + more)).toBeGreaterThanOrEqual(pH(molar, sodiumMolar) - 1e-12);
        }
      }),
      seeded,
    );
  });

  test("a bath is its own and its predecessor's, and each sheet makes it less its own", () => {
    fc.assert(
      fc.property(within(10, 5000), within(0, 0.99), fc.integer({ min: 0, max: 300 }), (volumeMl, share, sheets) => {
        const carryMl = volumeMl * share;
        const { own, before } = carryOver({ volumeMl, carryMl, sheets });
        expectAlike(own + before, 1);
        expect(carryOver({ volumeMl, carryMl, sheets: sheets + 1 }).own).toBeLessThanOrEqual(own);
      }),
      seeded,
    );
  });

  test("the changes of a wash reach the share, and one fewer does not", () => {
    fc.assert(
      fc.property(
        within(0.1, 20),
        within(50, 2000),
        within(0.2, 20),
        within(1e-5, 0.9),
        (carryMl, volumeMl, changeMin, targetShare) => {
          const wash = { carryMl, volumeMl, changeMin, timeConstantMin: 3 };
          const changes = washChanges({ ...wash, targetShare });
          expect(washShare({ ...wash, changes })).toBeLessThanOrEqual(targetShare * (1 + 1e-9));
          if (changes > 0)
            expect(washShare({ ...wash, changes: changes - 1 })).toBeGreaterThan(targetShare * (1 - 1e-9));
        },
      ),
      seeded,
    );
  });

  test("two stores wash out between the fast one and the slow one", () => {
    fc.assert(
      fc.property(within(0, 90), within(0, 1), (washMin, fastShare) => {
        const left = washTwoStores({ washMin, fastShare, fastMin: 1.5, slowMin: 12 });
        expect(left).toBeGreaterThanOrEqual(Math.exp(-washMin / 1.5) * (1 - 1e-12));
        expect(left).toBeLessThanOrEqual(Math.exp(-washMin / 12) * (1 + 1e-12));
      }),
      seeded,
    );
  });

  test("peracid balances and never takes more than there is", () => {
    fc.assert(
      fc.property(within(0, 17), within(0, 12), within(0.5, 5), (aceticMolar, peroxideMolar, constant) => {
        const { molar } = peraceticEquilibrium({ aceticMolar, peroxideMolar, constant });
        expect(molar).toBeGreaterThanOrEqual(0);
        expect(molar).toBeLessThanOrEqual(Math.min(aceticMolar, peroxideMolar));
        expectAlike(molar * 55, constant * (aceticMolar - molar) * (peroxideMolar - molar), 1e-8);
      }),
      seeded,
    );
  });

  test("time and strength of a bath are each other's inverse, age and paper add", () => {
    fc.assert(
      fc.property(within(0, 20), within(0, 3), within(0.1, 5), (ageH, areaM2, volumeL) => {
        const halves = { halfLifeH: 4, halfAreaM2L: 0.6, volumeL };
        const { strength, timeFactor, halvings } = bathStrength({ ...halves, ageH, areaM2 });
        expectAlike(strength * timeFactor, 1);
        const aged = bathStrength({ ...halves, ageH, areaM2: 0 }).halvings;
        expectAlike(halvings, aged + bathStrength({ ...halves, ageH: 0, areaM2 }).halvings);
      }),
      seeded,
    );
  });

  test("returned halide is a share, and doubles with what is brought until it is all", () => {
    fc.assert(
      fc.property(within(1e-3, 1), within(0, 200), within(0, 1), (areaM2, carryMlM2, bromideMolar) => {
        const { share, halideMmol, silverMmol } = returnedHalideShare({
          areaM2,
          carryMlM2,
          bathMlPerSheet: 0,
          bromideMolar,
        });
        expect(share).toBeLessThanOrEqual(1);
        expectAlike(share, Math.min(1, halideMmol / silverMmol));
        const twice = returnedHalideShare({ areaM2, carryMlM2: 2 * carryMlM2, bathMlPerSheet: 0, bromideMolar });
        expectAlike(twice.halideMmol, 2 * halideMmol);
      }),
      seeded,
    );
  });

  test("stronger peroxide is in no milder class", () => {
    const eye = (percentWw: number) => {
      const { classes } = peroxideClass({ percentWw });
      if (classes.some((each) => each.startsWith("Skin Corr"))) return 3;
      return classes.includes("Eye Dam. 1") ? 2 : classes.includes("Eye Irrit. 2") ? 1 : 0;
    };
    fc.assert(
      fc.property(within(0, 100), within(0, 100), (one, other) => {
        expect(eye(Math.max(one, other))).toBeGreaterThanOrEqual(eye(Math.min(one, other)));
      }),
      seeded,
    );
  });
});

describe("what is not possible is refused", () => {
  const bath = { ageH: 1, halfLifeH: 4, areaM2: 0.1, volumeL: 1, halfAreaM2L: 0.5 };
  const wash = { carryMl: 1, volumeMl: 500, changeMin: 1, timeConstantMin: 1 };
  const bottle = { percentWv: 3, liquidMl: 900, headMl: 100, decomposedShare: 0.05 };

  test.each<[string, () => unknown, string, string]>([
    [
      "a carry-over of the whole bath",
      () => carryOver({ volumeMl: 5, carryMl: 5, sheets: 1 }),
      "carryOverTooLarge",
      "carryMl",
    ],
    ["half a sheet", () => carryOver({ volumeMl: 500, carryMl: 1, sheets: 1.5 }), "wrongType", "sheets"],
    ["minus one sheet", () => carryOver({ volumeMl: 500, carryMl: 1, sheets: -1 }), "negative", "sheets"],
    ["a wash to nothing", () => washChanges({ ...wash, targetShare: 0 }), "shareOutOfRange", "targetShare"],
    ["a wash to all", () => washChanges({ ...wash, targetShare: 1 }), "shareOutOfRange", "targetShare"],
    ["no water", () => washShare({ ...wash, volumeMl: 0, changes: 1 }), "notPositive", "volumeMl"],
    ["half a change", () => washShare({ ...wash, changes: 0.5 }), "wrongType", "changes"],
    [
      "more loose than all",
      () => washTwoStores({ washMin: 1, fastShare: 1.1, fastMin: 1, slowMin: 9 }),
      "outOfRange",
      "fastShare",
    ],
    ["a bath of no age below zero", () => bathStrength({ ...bath, ageH: -1 }), "negative", "ageH"],
    ["a bath that never wears", () => bathStrength({ ...bath, halfLifeH: 0 }), "notPositive", "halfLifeH"],
    ["a bottle without air", () => bottlePressure({ ...bottle, headMl: 0 }), "notPositive", "headMl"],
    [
      "six fifths decomposed",
      () => bottlePressure({ ...bottle, decomposedShare: 1.2 }),
      "shareOutOfRange",
      "decomposedShare",
    ],
    [
      "minus a tenth decomposed",
      () => decompositionHeat({ percentWv: 3, decomposedShare: -0.1 }),
      "shareOutOfRange",
      "decomposedShare",
    ],
    [
      "a capacity beyond all peroxide",
      () => bleachCapacity({ percentWv: 3, volumeL: 1, efficiency: 1.01 }),
      "outOfRange",
      "efficiency",
    ],
    ["a sheet of no width", () => sheetSilver({ widthMm: 0, heightMm: 127 }), "notPositive", "widthMm"],
    [
      "a stop of no acid",
      () => stopBathSheets({ acidMolar: 0, volumeMl: 1, areaM2: 1, carryMlM2: 1, alkaliMolar: 1 }),
      "notPositive",
      "acidMolar",
    ],
    ["minus sulfite", () => sulfiteForPeroxide({ carryMl: -1, percentWv: 3 }), "negative", "carryMl"],
    [
      "fixer of half a share too much",
      () => fixerSilver({ areaM2: 1, undevelopedShare: 1.5, volumeL: 1 }),
      "outOfRange",
      "undevelopedShare",
    ],
    [
      "an unknown acid",
      () => acidPh({ acids: [{ name: "nitric" as "citric", molar: 1 }] }),
      "unknownWord",
      "acids/0/name",
    ],
    ["minus acid", () => acidPh({ acids: [{ name: "citric", molar: -1 }] }), "negative", "acids/0/molar"],
    [
      "no number for acid",
      () => acidPh({ acids: [{ name: "citric", molar: Number.NaN }] }),
      "notFinite",
      "acids/0/molar",
    ],
    ["150 % peroxide", () => peroxideClass({ percentWw: 150 }), "outOfRange", "percentWw"],
    ["minus peroxide", () => peroxideClass({ percentWw: -1 }), "negative", "percentWw"],
  ])("%s", (_, call, code, key) => {
    expectRefusal(call, code, key);
  });
});
