import { describe, expect, test } from "vitest";
import { expectAlike } from "../../fixtures/chemistry/checking.ts";
import { aceticClass } from "./aceticClass.ts";
import { acidPh } from "./acidPh.ts";
import { blend } from "./blend.ts";
import { cellPotential } from "./cellPotential.ts";
import { decompositionHeat } from "./decompositionHeat.ts";
import { hydrateMass } from "./hydrateMass.ts";
import { mixTemperature } from "./mixTemperature.ts";
import { molarity } from "./molarity.ts";
import { molarMass } from "./molarMass.ts";
import { peraceticEquilibrium } from "./peraceticEquilibrium.ts";
import { peroxideClass } from "./peroxideClass.ts";
import { peroxideDensity } from "./peroxideDensity.ts";
import { peroxideStrength } from "./peroxideStrength.ts";
import { sheetSilver } from "./sheetSilver.ts";
import { washShare } from "./washShare.ts";

describe("molar masses that others print", () => {
  // Half of their last figure; and sulfur, which went from 32.066 by way of 32.065 to 32.06.
  const sulfurs = (formula: string) => Number(/S(\d?)/.exec(formula)?.[1] || (formula.includes("S") ? 1 : 0));

  test.each([
    ["Na2SO3", 126.04, "iarc-sulfites"],
    ["NaHSO3", 104.06, "iarc-sulfites"],
    ["Na2S2O5", 190.11, "iarc-sulfites"],
    ["SO2", 64.07, "iarc-sulfites"],
    ["Na2S2O3.5H2O", 248.18, "hydrate-pages"],
    ["CuSO4", 159.61, "hydrate-pages"],
    ["C2H4O2", 60.05, "gestis-acetic"],
    ["CH3COOH", 60.05, "gestis-acetic"],
    ["H2O2", 34.0147, "hydrate-pages"],
  ])("%s weighs %d g/mol [%s]", (formula, printed) => {
    expect(Math.abs(molarMass({ formula }) - printed)).toBeLessThan(0.006 + 0.006 * sulfurs(formula));
  });

  test.each([
    ["CuSO4", 159.6],
    ["CuSO4.H2O", 177.6],
  ])("%s weighs %d g/mol by weights of one decimal [army-md0837]", (formula, printed) => {
    expectAlike(molarMass({ formula }), printed, 5e-4);
  });
});

describe("hydrates", () => {
  test("10.0 g of CuSO4 are 11.1 g of its monohydrate [army-md0837]", () => {
    expect(hydrateMass({ massG: 10, from: "CuSO4", to: "CuSO4.H2O" })).toBeCloseTo(11.1, 1);
  });

  test.each([
    ["CuSO4", "CuSO4.5H2O", 36.08],
    ["Na2CO3", "Na2CO3.10H2O", 62.97],
  ])("the water of %s in %s is %d %% [hydrate-pages]", (from, to, printed) => {
    // ±0.02: their water is 18.02, their copper 63.55.
    expect(Math.abs(100 - hydrateMass({ massG: 100, from: to, to: from }) - printed)).toBeLessThan(0.02);
  });
});

describe("dilutions and blends", () => {
  const of = (firstStrength: number, targetStrength: number, totalMl: number, secondStrength = 0) =>
    blend({ firstStrength, secondStrength, targetStrength, totalMl });

  test("5 mL of 0.25 M take 1.25 mL of 1 M and 3.75 mL of water [dilution-pages]", () => {
    expectAlike(of(1, 0.25, 5), { firstMl: 1.25, secondMl: 3.75 });
  });

  test("1.00 mL of 0.500 M in 100 mL is 5.00e-3 M [dilution-pages]", () => {
    expectAlike(of(0.5, 5e-3, 100).firstMl, 1);
  });

  test("300 g of 4 % are 100 g of 2 % and 200 g of 5 % [alligation-pages]", () => {
    expectAlike(of(2, 4, 300, 5), { firstMl: 100, secondMl: 200 });
  });

  test("90 % and 10 % make 50 % one to one [alligation-pages]", () => {
    const { firstMl, secondMl } = of(90, 50, 70, 10);
    expectAlike(firstMl, secondMl);
  });

  test.each([
    [45, 560, 72, 540],
    [20, 480, 31, 76.52],
  ])("%d %% of %d g to %d %% takes %d g of the pure powder [alligation-pages]", (weak, weakG, target, pureG) => {
    expectAlike(of(100, target, weakG + pureG, weak).firstMl, pureG, 1e-4);
  });
});

describe("warm water and cold", () => {
  test.each([
    [200, 80, 300, 10, 38],
    [1000, 10, 1000, 80, 45],
    [8000, 20, 4000, 80, 40],
    [50, 20, 50, 40, 30],
  ])("%d at %d °C and %d at %d °C are %d °C [heat-pages]", (firstMl, firstC, secondMl, secondC, wanted) => {
    expectAlike(mixTemperature({ firstMl, firstC, secondMl, secondC }), wanted);
  });
});

describe("strengths of peroxide", () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])(
    "%d mol/L are 11.2 volumes each [peroxide-volume-pages, table]",
    (molar) => {
      // ±0.1 %: they take 22.4 L for a mole of gas.
      expectAlike(peroxideStrength({ value: molar, basis: "molar" }).volumes, 11.2 * molar, 1e-3);
    },
  );

  test.each([
    [10, 3.03, 0.89],
    [30, 9.11, 2.678],
  ])("%d volumes are %d g in 100 mL and %d mol/L [peroxide-volume-pages]", (value, percentWv, molar) => {
    // ±0.3 %: they take 34 g/mol and 22.4 L, and print two or three figures.
    const strength = peroxideStrength({ value, basis: "volumes" });
    expectAlike(strength, { percentWv, molar }, 3e-3);
  });

  test.each([
    [10, 3],
    [20, 6],
  ])("%d volumes are sold as %d %% [peroxide-grades]", (value, sold) => {
    const { percentWw, percentWv } = peroxideStrength({ value, basis: "volumes" });
    expect(Math.abs((percentWw + percentWv) / 2 / sold - 1)).toBeLessThan(0.01);
  });

  test("3 % w/v is 0.882 mol/L [peroxide-volume-pages]", () => {
    expect(peroxideStrength({ value: 3, basis: "percentWv" }).molar).toBeCloseTo(0.882, 3);
    expect(molarity({ gramsPerL: 30, formula: "H2O2" })).toBeCloseTo(0.882, 3);
  });

  test.each([
    [3, 1.01],
    [30, 1.11],
    [35, 1.13],
  ])("%d %% is %d g/mL dense [textbook-densities]", (percentWw, printed) => {
    expect(peroxideDensity({ percentWw })).toBeCloseTo(printed, 2);
  });
});

describe("density of peroxide against a published cubic", () => {
  // Coefficients of the mass fraction, of its square and cube, each a cubic in °C; water at 18 °C is 0.9986.
  const cubics = [
    [0.39763, -2.8732e-3, 3.2488e-5, -1.6363e-7],
    [0.02206, 3.5357e-3, -6.0947e-5, 3.6165e-7],
    [0.05187, -1.9414e-3, 3.9061e-5, -2.55e-7],
  ];
  const added = (share: number, tempC: number) =>
    cubics.reduce(
      (sum, row, power) => sum + share ** (power + 1) * row.reduce((each, value, n) => each + value * tempC ** n, 0),
      0,
    );

  test.each([1, 3, 5, 9, 12, 17, 25, 30, 35, 42, 50])("%d %% at 18 °C [peroxide-density-program]", (percentWw) => {
    // ±4 in 10 000: two fits to different measurements.
    expect(Math.abs(peroxideDensity({ percentWw }) - 0.9986 - added(percentWw / 100, 18))).toBeLessThan(4e-4);
  });
});

describe("acids", () => {
  test("acetic acid of 0.365 mol/L has pH 2.6 [ph-calculators]", () => {
    expect(acidPh({ acids: [{ name: "acetic", molar: 0.365 }] })).toBeCloseTo(2.6, 1);
  });

  test("citric acid of 5 % has pH 1.87 [ph-calculators]", () => {
    const molar = molarity({ gramsPerL: 50, formula: "C6H8O7" });
    expect(acidPh({ acids: [{ name: "citric", molar }] })).toBeCloseTo(1.87, 2);
  });

  test("half neutralised, acetic acid stands at its pKa of 4.756 [pka-tables]", () => {
    expect(acidPh({ acids: [{ name: "acetic", molar: 1 }], sodiumMolar: 0.5 })).toBeCloseTo(4.756, 3);
  });
});

describe("energy", () => {
  test("zinc and copper: 1.10 V, −212.3 kJ/mol [potential-pages]", () => {
    expectAlike(
      cellPotential({ cathodeV: 0.34, anodeV: -0.76, electrons: 2 }),
      { volts: 1.1, energyKJMol: -212.3 },
      2e-4,
    );
  });

  test("0.80 V and one electron: −77.2 kJ/mol [potential-pages]", () => {
    expect(cellPotential({ cathodeV: 0.8, anodeV: 0, electrons: 1 }).energyKJMol).toBeCloseTo(-77.2, 1);
  });

  test("peroxide against silver: 1.78 − 0.80 V [potential-table]", () => {
    expect(cellPotential({ cathodeV: 1.776, anodeV: 0.7996, electrons: 2 }).volts).toBeCloseTo(1.78 - 0.8, 1);
  });

  test("1.00 g of peroxide gives 2.89 kJ: in a litre 0.69 K [peroxide-heat]", () => {
    expectAlike(decompositionHeat({ percentWv: 0.1, decomposedShare: 1 }) * 4.18, 2.89, 2e-3);
  });
});

describe("washing", () => {
  test.each([
    [1, 0.5],
    [2, 0.25],
    [3, 0.125],
    [4, 0.0625],
  ])("%d times with as much again leaves %d [extraction-page]", (changes, left) => {
    expectAlike(washShare({ carryMl: 1, volumeMl: 1, changeMin: 1e4, timeConstantMin: 1, changes }), left);
  });

  test("a rag that keeps 40.2 of 696 g of water keeps 5.78 % [rinse-page]", () => {
    const share = washShare({ carryMl: 40.2, volumeMl: 655.8, changeMin: 1e4, timeConstantMin: 1, changes: 1 });
    expect(share * 100).toBeCloseTo(5.78, 2);
  });
});

describe("silver and peracid", () => {
  test.each([
    [50, 0.54],
    [150, 1.61],
    [300, 3.23],
  ])("%d mg to the square foot are %d g/m² [coating-post]", (mg, coatGM2) => {
    expectAlike(sheetSilver({ widthMm: 304.8, heightMm: 304.8, coatGM2 }).silverMg, mg, 5e-3);
  });

  test("the constant of peracetic acid is about 2.5: what it leaves fits it [peracetic-article]", () => {
    const { molar } = peraceticEquilibrium({ aceticMolar: 0.8, peroxideMolar: 0.9 });
    expectAlike((molar * 55) / ((0.8 - molar) * (0.9 - molar)), 2.5);
  });
});

describe("hazard classes at the limits and just below them", () => {
  test.each([
    [4.99, []],
    [5, ["Eye Irrit. 2"]],
    [7.99, ["Eye Irrit. 2"]],
    [8, ["Eye Dam. 1"]],
    [34.9, ["Eye Dam. 1"]],
    [35, ["Eye Dam. 1", "STOT SE 3", "Skin Irrit. 2"]],
    [49.9, ["Eye Dam. 1", "STOT SE 3", "Skin Irrit. 2"]],
    [50, ["Ox. Liq. 2", "STOT SE 3", "Skin Corr. 1B"]],
    [69.9, ["Ox. Liq. 2", "STOT SE 3", "Skin Corr. 1B"]],
    [70, ["Ox. Liq. 1", "STOT SE 3", "Skin Corr. 1A"]],
    [100, ["Ox. Liq. 1", "STOT SE 3", "Skin Corr. 1A"]],
  ])("peroxide of %d %% w/w: %j [echa-peroxide]", (percentWw, classes) => {
    expect([...peroxideClass({ percentWw }).classes].sort()).toEqual(classes);
  });

  test.each([
    [7.9, false],
    [8, true],
    [19, true],
    [34.9, true],
  ])("peroxide of %d %% feeds fire: %j [gischem-peroxide]", (percentWw, feeds) => {
    expect(peroxideClass({ percentWw }).treatAsOxidiser).toBe(feeds);
  });

  test.each([
    [12, false],
    [12.1, true],
  ])("peroxide of %d %% w/w needs a licence: %j [eu-2019-1148]", (percentWw, needs) => {
    expect(peroxideClass({ percentWw }).euRestricted).toBe(needs);
  });

  test.each([
    [9.9, []],
    [10, ["Eye Irrit. 2", "Skin Irrit. 2"]],
    [24.9, ["Eye Irrit. 2", "Skin Irrit. 2"]],
    [25, ["Skin Corr. 1B"]],
    [36, ["Skin Corr. 1B"]],
    [89.9, ["Skin Corr. 1B"]],
    [90, ["Skin Corr. 1A"]],
  ])("acetic acid of %d %%: %j [clp-acetic]", (percentWw, classes) => {
    expect([...aceticClass({ percentWw }).classes].sort()).toEqual(classes);
  });
});
