import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { answerMeasure, measure } from "./measure.ts";

let folder = "";
const at = (name: string) => join(folder, name);

/** Densities of the patches of an invented grey scale beside an invented print, and where they stand. */
const scale = [0.05, 0.2, 0.35, 0.5, 0.65, 0.8, 0.95, 1.1, 1.25, 1.4, 1.55, 1.7];
const patchPlace = (i: number) => ({ x: 10 + 30 * i, y: 10, widthPx: 24, heightPx: 24 });
const hull = { area: "hull", x: 40, y: 60, widthPx: 64, heightPx: 48 };
const shed = { area: "shed door", x: 200, y: 60, widthPx: 64, heightPx: 48 };

/** 400 × 140 codes of 16 bits, written with gamma 1.6: the shed door at D 1.30, the hull at D 0.72. */
async function scanWithScale(path: string): Promise<void> {
  const data = new Uint16Array(400 * 140).fill(codeOf(0.4));
  const put = ({ x, y, widthPx, heightPx }: typeof hull, density: number) => {
    for (let r = 0; r < heightPx; r++) data.fill(codeOf(density), (y + r) * 400 + x, (y + r) * 400 + x + widthPx);
  };
  for (const [i, density] of scale.entries()) put({ area: "", ...patchPlace(i) }, density);
  put(hull, 0.72);
  put(shed, 1.3);
  await sharp(data, { raw: { width: 400, height: 140, channels: 1 } })
    .toColourspace("grey16")
    .tiff({ compression: "lzw", predictor: "horizontal" })
    .toFile(path);
}

const codeOf = (density: number) => Math.round(65535 * 10 ** (-density / 1.6));

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "captray-measure-"));
  await sharp({ create: { width: 1000, height: 800, channels: 3, background: { r: 96, g: 96, b: 96 } } })
    .png()
    .toFile(at("W31.png"));
  await sharp({ create: { width: 5000, height: 300, channels: 3, background: { r: 96, g: 96, b: 96 } } })
    .jpeg({ quality: 98 })
    .toFile(at("W31.jpg"));
  await scanWithScale(at("scale.tif"));
  writeFileSync(at("words.tif"), "snow on the slip");
  writeFileSync(at("cut.png"), (await sharp(at("W31.png")).png().toBuffer()).subarray(0, 200));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function answerOf(input: object): Promise<Record<string, never>> {
  const { document, exit } = await answerMeasure(input);
  expect([exit, document.error]).toEqual([0, undefined]);
  expect(z.safeParse(measure.published.output as z.ZodMiniType, document).error?.issues).toBeUndefined();
  return document as Record<string, never>;
}

describe("measure", () => {
  it("an even sRGB patch of code 96, nothing said of its curve: 0.931923 ± 0.0872 [docs/guide/terminal.md; srgb; by hand]", async () => {
    const place = { x: 900, y: 640, widthPx: 64, heightPx: 64 };
    const got = await answerOf({ id: 7, image: at("W31.png"), areas: [{ area: "hull", ...place }] });
    expect(got).toMatchObject({
      id: 7,
      areas: [{ area: "hull", atLeast: false, clippedShare: 0, blocks: 16 }],
      image: { widthPx: 1000, heightPx: 800, bits: 8, kind: "rgb" },
      calibration: { kind: "assumed", curve: "srgb", residuals: [], reversedPatches: 0 },
      warnings: [{ kind: "curveAssumed" }],
    });
    const [{ density }] = got.areas as unknown as [{ density: { value: number; sd: number } }];
    expect(density.value).toBeCloseTo(0.931923, 6);
    expect(density.sd).toBeCloseTo(0.0872, 4);
  });

  it("the sum of the file is its SHA-256 [peer: Web Crypto]", async () => {
    const { readFile } = await import("node:fs/promises");
    const sum = Buffer.from(await crypto.subtle.digest("SHA-256", await readFile(at("W31.png")))).toString("hex");
    expect(await answerOf({ image: at("W31.png"), areas: [] })).toMatchObject({ image: { sha256: sum } });
  });

  it("by a grey scale beside the print, the true densities come back, whatever curve the scanner had [by hand: gamma 1.6]", async () => {
    const patches = scale.map((density, i) => ({ ...patchPlace(i), density }));
    const got = await answerOf({
      image: at("scale.tif"),
      areas: [hull, shed],
      calibration: { kind: "greyScale", patches },
    });
    const [first, second] = got.areas as unknown as { density: { value: number; sd: number } }[];
    // ±0.001: the curve between two patches 0.15 apart, and rounding to codes.
    expect(Math.abs((first?.density.value ?? 0) - 0.72)).toBeLessThan(0.001);
    expect(Math.abs((second?.density.value ?? 0) - 1.3)).toBeLessThan(0.001);
    expect(first?.density.sd).toBeCloseTo(0.015, 3);
    expect(got).toMatchObject({ calibration: { kind: "greyScale", curve: null, reversedPatches: 0 }, warnings: [] });
  });

  it("a large JPEG is measured reduced, and says so", async () => {
    const got = await answerOf({
      image: at("W31.jpg"),
      areas: [{ area: "hull", x: 3900, y: 200, widthPx: 64, heightPx: 32 }],
    });
    expect(got).toMatchObject({
      image: { widthPx: 4000, heightPx: 240 },
      warnings: [{ kind: "curveAssumed" }, { kind: "reduced" }],
    });
    const [{ density }] = got.areas as unknown as [{ density: { value: number } }];
    expect(Math.abs(density.value - 0.9319)).toBeLessThan(0.01);
  });

  it("at black there is only a bound [by hand: half the lowest code]", async () => {
    const got = await answerOf({
      image: at("W31.png"),
      areas: [{ area: "door", x: 0, y: 0, widthPx: 20, heightPx: 20 }],
      calibration: { kind: "assumed", black: 0.12 },
    });
    expect(got).toMatchObject({ areas: [{ atLeast: true, density: { sd: null } }] });
  });
});

describe("refusals, each at its key", () => {
  const area = { area: "hull", x: 0, y: 0, widthPx: 32, heightPx: 32 };
  it.each<[string, (folder: string) => object, string, string]>([
    ["no such file", () => ({ image: "no-such.tif", areas: [] }), "fileNotFound", "/image"],
    ["a folder", () => ({ image: folder, areas: [] }), "fileUnreadable", "/image"],
    ["words", () => ({ image: at("words.tif"), areas: [] }), "notAPicture", "/image"],
    ["cut off", () => ({ image: at("cut.png"), areas: [area] }), "pictureBroken", "/image"],
    ["too small", () => ({ image: at("W31.png"), areas: [{ ...area, widthPx: 8 }] }), "areaTooSmall", "/areas/0"],
    ["outside", () => ({ image: at("W31.png"), areas: [{ ...area, x: 990 }] }), "areaOutside", "/areas/0"],
    ["one name twice", () => ({ image: at("W31.png"), areas: [area, area] }), "areaTwice", "/areas/1/area"],
    [
      "two patches",
      () => ({
        image: at("scale.tif"),
        areas: [],
        calibration: { kind: "greyScale", patches: [0, 1].map((i) => ({ ...patchPlace(i), density: scale[i] })) },
      }),
      "calibrationTooFew",
      "/calibration/patches",
    ],
    ["no image", () => ({ areas: [] }), "missingKey", "/image"],
  ])("%s", async (_, input, code, path) => {
    const { document, exit } = await answerMeasure(input(folder));
    expect(exit).toBe(2);
    expect(document.error).toMatchObject({ code, path });
    const { message, hint } = document.error as { message: string; hint: string };
    expect(message).toMatch(/^[A-Z].+\.$/);
    expect(hint).not.toBe("");
  });
});
