import { OutOfDomain } from "../errors/outOfDomain.ts";
import { daylightComponents } from "../tables/daylightComponents.ts";
import { type WhiteLedShape, whiteLedShapes } from "../tables/whiteLedShapes.ts";
import { bell, wavelengthsNm } from "./spectralGrid.ts";

export type SourceKind = "illuminantA" | "filament" | "daylight" | "whiteLed";

/** The colour temperatures each kind of light is known for. */
const rangesK = {
  filament: [100, 1_000_000],
  daylight: [4000, 25_000],
  whiteLed: [2500, 7000],
} as const satisfies Record<Exclude<SourceKind, "illuminantA">, readonly [number, number]>;

const choices = ["illuminantA", "filament:2700", "daylight:6500", "whiteLed:4000"] as const;

/** What a word for a light means; `key` is where it was given. Inner helper. */
export function readSource(source: string, key: string): { readonly kind: SourceKind; readonly cctK: number } {
  if (source === "illuminantA") return { kind: "illuminantA", cctK: 2856 };
  const parts = /^(filament|daylight|whiteLed):(\d+(?:\.\d+)?)$/.exec(source);
  if (parts === null) throw new OutOfDomain("unknownWord", { [key]: source, choices });
  const kind = parts[1] as keyof typeof rangesK;
  const cctK = Number(parts[2]);
  const [leastK, mostK] = rangesK[kind];
  if (cctK < leastK || cctK > mostK) throw new OutOfDomain("cctOutOfRange", { [key]: source, cctK, leastK, mostK });
  return { kind, cctK };
}

/** The light of a word on the grid, relative energy; `key` is where the word was given. Inner helper. */
export function sourceSpectrum(source: string, key: string): readonly number[] {
  const { kind, cctK } = readSource(source, key);
  switch (kind) {
    case "illuminantA":
      // The CIE defines A by 2848 K and a c₂ of its day; with the c₂ of today that is 2855.5 K.
      return planck(2848, 1.435e7);
    case "filament":
      return planck(cctK, 1.438777e7);
    case "daylight":
      return daylightOf(daylightWhite(cctK));
    case "whiteLed":
      return whiteLed(cctK);
  }
}

/** A glowing body, 100 at 560 nm. Written with differences of exponents, so that a dull red one does not overflow. */
function planck(temperatureK: number, c2NmK: number): readonly number[] {
  const reduced = (nm: number) => c2NmK / (nm * temperatureK);
  const at560 = reduced(560);
  return wavelengthsNm.map((nm) => {
    const here = reduced(nm);
    return 100 * (560 / nm) ** 5 * Math.exp(at560 - here) * (Math.expm1(-at560) / Math.expm1(-here));
  });
}

/** x and y of CIE daylight. The nominal temperature is carried over to the c₂ of today: D65 is 6504 K. */
export function daylightWhite(nominalK: number): { readonly x: number; readonly y: number } {
  const t = (1.4388 / 1.438) * nominalK;
  const x =
    t <= 7000
      ? -4.607e9 / t ** 3 + 2.9678e6 / t ** 2 + 99.11 / t + 0.244063
      : -2.0064e9 / t ** 3 + 1.9018e6 / t ** 2 + 247.48 / t + 0.23704;
  return { x, y: -3 * x ** 2 + 2.87 * x - 0.275 };
}

/** M₁ and M₂ of CIE daylight, rounded to three decimals as its tables are. */
export function daylightWeights({ x, y }: { readonly x: number; readonly y: number }): readonly [number, number] {
  const divisor = 0.0241 + 0.2562 * x - 0.7341 * y;
  const rounded = (value: number) => Math.round(value * 1000) / 1000;
  return [
    rounded((-1.3515 - 1.7703 * x + 5.9114 * y) / divisor),
    rounded((0.03 - 31.4424 * x + 30.0717 * y) / divisor),
  ];
}

function daylightOf(white: { readonly x: number; readonly y: number }): readonly number[] {
  const [m1, m2] = daylightWeights(white);
  return daylightComponents.map(([, s0, s1, s2]) => s0 + m1 * s1 + m2 * s2);
}

/** The lamps of the table, between them straight in 10⁶/T (the phosphor's height in its logarithm); the ends hold. */
function whiteLed(cctK: number): readonly number[] {
  const shape = shapeAt(cctK);
  return wavelengthsNm.map((nm) => {
    const width = nm < shape.phosphorNm ? shape.leftWidthNm : shape.rightWidthNm;
    return bell(nm, shape.blueNm, shape.blueWidthNm) + shape.phosphorRatio * bell(nm, shape.phosphorNm, width);
  });
}

function shapeAt(cctK: number): WhiteLedShape {
  const above = whiteLedShapes.findIndex((shape) => shape.cctK >= cctK);
  const cooler = whiteLedShapes.at(above);
  const warmer = whiteLedShapes[above - 1];
  // Beyond the last lamp `above` is −1 and at(−1) that lamp; below the first there is no warmer one.
  if (cooler === undefined) throw new OutOfDomain("cctOutOfRange", { cctK });
  if (warmer === undefined) return cooler;
  const share = (1e6 / cctK - 1e6 / warmer.cctK) / (1e6 / cooler.cctK - 1e6 / warmer.cctK);
  const between = (from: number, to: number) => from + share * (to - from);
  return {
    cctK,
    blueNm: between(warmer.blueNm, cooler.blueNm),
    blueWidthNm: between(warmer.blueWidthNm, cooler.blueWidthNm),
    phosphorNm: between(warmer.phosphorNm, cooler.phosphorNm),
    leftWidthNm: between(warmer.leftWidthNm, cooler.leftWidthNm),
    rightWidthNm: between(warmer.rightWidthNm, cooler.rightWidthNm),
    phosphorRatio: Math.exp(between(Math.log(warmer.phosphorRatio), Math.log(cooler.phosphorRatio))),
  };
}
