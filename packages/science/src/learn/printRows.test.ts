import { describe, expect, it } from "vitest";
import { curveFrom, curveNames, curvePriors, toScale } from "../tone/curve.ts";
import { type ForwardPatch, forward } from "../tone/forward.ts";
import { naturalOf } from "./fittedCurve.ts";
import { curveCount, layPatches } from "./layPatches.ts";
import { printRows, roomFor } from "./printRows.ts";

const sheets = [
  {},
  { u1: 1.8, rounds: 3, u2: 0.6, flashS: 4, meanLogExposure: 0.9 },
  { process: "negative" as const, u1: 1.3, meanLogExposure: 0.2 },
];
const kinds = ["black", "fogged", "base", "baseProcessed", "bleachOnly"] as const;
const patches: ForwardPatch[] = [0, 1, 2].flatMap((sheet) => [
  ...[-30, -0.3, 0.4, 0.9, 1.5, 2.1, 6].map((logExposure) => ({ sheet, logExposure })),
  ...kinds.map((kind) => ({ sheet, kind })),
]);
const offsets = [0, 0.2, -0.4];

const laid = layPatches(
  patches.map(({ sheet, kind = "image", logExposure }) => {
    const {
      process = "reversal",
      u1 = 1,
      rounds = 2,
      u2 = 1,
      flashS = 0,
      meanLogExposure = -30,
    } = {
      ...({} as {
        process?: "reversal";
        u1?: number;
        rounds?: number;
        u2?: number;
        flashS?: number;
        meanLogExposure?: number;
      }),
      ...sheets[sheet],
    };
    return {
      sheet,
      kind,
      imageLxS: logExposure === undefined ? 0 : 10 ** logExposure,
      meanLxS: 10 ** meanLogExposure,
      flashS,
      settings: { process, u1, rounds, u2 },
    };
  }),
  sheets.length,
);

function zOf(shift: number): Float64Array {
  return Float64Array.from([
    ...curveNames.map((name, index) => {
      const { mean, scale, sd } = curvePriors[name];
      return toScale(mean, scale) + shift * sd * Math.sin(1 + index);
    }),
    ...offsets,
  ]);
}

describe("the flat forward model of the fit", () => {
  it.each([0, 0.7, -1.2])(
    "prints what `forward` prints, with all its slopes, %s sd from the priors [the other writing of the model]",
    (shift) => {
      const z = zOf(shift);
      const curve = curveFrom((name, index) => naturalOf(name, z[index] ?? 0));
      const wanted = forward({ curve, finish: "semimatt", sheets, patches, offsetsStops: offsets });
      const out = roomFor(patches.length);
      expect(printRows(laid, 0.012, z, out)).toBe(true);
      for (const [index, density] of wanted.density.entries()) {
        expect(out.density[index]).toBeCloseTo(density, 11);
        const row = wanted.jacobian[index] ?? [];
        for (let name = 0; name < curveCount; name += 1) {
          expect(out.rows[index * curveCount + name], `${index} ${curveNames[name]}`).toBeCloseTo(row[name] ?? 0, 10);
        }
        expect(out.byStop[index]).toBeCloseTo(row[curveCount + (patches[index]?.sheet ?? 0)] ?? 0, 10);
      }
    },
  );

  it("its slopes are those of its own densities [central differences, extrapolated]", () => {
    const z = zOf(0.4);
    const out = roomFor(patches.length);
    printRows(laid, 0.003, z, out);
    const central = (index: number, step: number) => {
      const [up, down] = [roomFor(patches.length), roomFor(patches.length)];
      const moved = (by: number) => z.map((value, place) => (place === index ? value + by : value));
      printRows(laid, 0.003, moved(step), up);
      printRows(laid, 0.003, moved(-step), down);
      return up.density.map((value, patch) => (value - (down.density[patch] ?? 0)) / (2 * step));
    };
    for (let index = 0; index < z.length; index += 1) {
      const [wide, near] = [central(index, 2e-3), central(index, 1e-3)];
      for (const [patch, { sheet }] of patches.entries()) {
        const slope = (near[patch] ?? 0) + ((near[patch] ?? 0) - (wide[patch] ?? 0)) / 3;
        const ofSheet = curveCount + sheet === index ? (out.byStop[patch] ?? 0) : 0;
        const wanted = index < curveCount ? (out.rows[patch * curveCount + index] ?? 0) : ofSheet;
        expect(Math.abs(slope - wanted), `${patch} by ${curveNames[index] ?? "offset"}`).toBeLessThan(1e-8);
      }
    }
  });

  it("a base at the black of its surface is no paper, and is said so", () => {
    const z = zOf(0);
    z[9] = Math.log(2.6);
    expect(printRows(laid, 0.003, z, roomFor(patches.length))).toBe(false);
  });
});
