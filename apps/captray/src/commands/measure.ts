import { createHash } from "node:crypto";
import {
  type Codes,
  openPicture,
  type Picture,
  PictureProblem,
  readWindows,
  type Tone,
  type Window,
} from "@captray/scans";
import {
  type AreaLight,
  areaDensity,
  areaLight,
  type CodeTone,
  calibrateGreyScale,
  type GreyScale,
  linearTable,
  type ToneCurve,
} from "@captray/science/measure";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { type FileSource, fileSource } from "../decoders/fileSource.ts";
import { nodeDecoders } from "../decoders/nodeDecoders.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { Refusal } from "../terminal/refusal.ts";
import { type Reply, replyLater } from "../terminal/reply.ts";
import type { Command } from "./command.ts";
import { helpText } from "./helpText.ts";
import { measureInput } from "./measureInput.ts";
import { measureOutput } from "./measureOutput.ts";

const declared = withId(measureInput);
/** Smaller areas say more of grain than of tone. */
const LEAST_SIDE_PX = 16;
const HASH_PIECE_BYTES = 1 << 20;

const example = `echo '{"image":"W31.png","areas":[{"area":"hull","x":900,"y":640,"widthPx":64,"heightPx":64}]}' | npx captray measure`;

/** Densities from a scan. */
export const measure: Command = {
  name: "measure",
  job: "The density of areas of a scan, with its doubt.",
  positionals: ["[FILE]"],
  takesBatch: true,
  help: () =>
    helpText({
      usage: "captray measure [FILE] [--batch]",
      job: measure.job,
      keys: keyLines(declared),
      more: [
        "Answers:",
        ...keyLines(measure.published.output, "answer"),
        "",
        "captray schema measure prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, terminal }) => (batch ? answerLines : answerOne)(terminal, file, answerMeasure),
  published: { name: "measure", input: declared, output: withId(measureOutput) },
};

interface Area extends Window {
  readonly area: string;
}

interface Assumed {
  readonly kind?: "assumed";
  readonly curve?: ToneCurve;
  readonly black?: number;
  readonly white?: number;
  readonly whiteDensity?: number;
}

interface MeasureInput {
  readonly image: string;
  readonly areas: readonly Area[];
  readonly calibration?:
    | Assumed
    | { readonly kind: "greyScale"; readonly patches: readonly (Window & { readonly density: number })[] };
  readonly channel?: "green" | "luminance";
  readonly blockPx?: number;
  readonly trim?: number;
}

/** Answers one input of `measure`. */
export function answerMeasure(raw: unknown): Promise<Reply> {
  return replyLater(raw, async () => {
    const input = readChecked(declared, raw) as unknown as MeasureInput;
    requireAreas(input);
    const source = await opened(input.image);
    try {
      return await measured(input, source);
    } catch (fault) {
      if (fault instanceof PictureProblem) {
        throw new Refusal({ code: fault.code, pointer: "/image", facts: { why: fault.why, way: fault.hint } });
      }
      throw fault;
    } finally {
      await source.close();
    }
  });
}

function requireAreas({ areas }: MeasureInput): void {
  const names = new Set<string>();
  for (const [i, { area, widthPx, heightPx }] of areas.entries()) {
    if (names.has(area)) throw new Refusal({ code: "areaTwice", pointer: `/areas/${i}/area`, facts: { area } });
    names.add(area);
    if (Math.min(widthPx, heightPx) < LEAST_SIDE_PX) {
      throw new Refusal({ code: "areaTooSmall", pointer: `/areas/${i}`, facts: { area, widthPx, heightPx } });
    }
  }
}

async function opened(path: string): Promise<FileSource> {
  try {
    return await fileSource(path);
  } catch (fault) {
    const missing = (fault as { code?: string }).code === "ENOENT";
    throw new Refusal({ code: missing ? "fileNotFound" : "fileUnreadable", pointer: "/image", facts: { image: path } });
  }
}

async function measured(input: MeasureInput, source: FileSource): Promise<Readonly<Record<string, unknown>>> {
  const picture = await openPicture({ source, decoders: nodeDecoders });
  const { info } = picture;
  const { calibration = {} as Assumed, channel = "green", blockPx = 16, trim = 0.1 } = input;
  const patches = calibration.kind === "greyScale" ? calibration.patches : [];
  for (const [i, area] of input.areas.entries()) requireInside(area, info, `/areas/${i}`, area.area);
  for (const [i, patch] of patches.entries()) requireInside(patch, info, `/calibration/patches/${i}`, "");
  const windows = [...input.areas, ...patches].map(({ x, y, widthPx, heightPx }) => ({ x, y, widthPx, heightPx }));
  const codes = await readWindows({ picture, windows });
  const bytes = source.bytesRead();

  const stated = calibration.kind !== "greyScale" ? calibration.curve : undefined;
  const { tone, name, assumed } = toneOf(info.tone, stated);
  const table = linearTable({ tone, maxCode: info.bits === 16 ? 65535 : 255 });
  const lightOf = (area: Codes): AreaLight => areaLight({ ...area, channel, table, blockPx, trim });
  const scale =
    calibration.kind === "greyScale" ? scaleOf(calibration, codes.slice(input.areas.length).map(lightOf)) : undefined;
  const warnings: { kind: string; area?: string }[] = [];
  if (calibration.kind !== "greyScale" && assumed) warnings.push({ kind: "curveAssumed" });
  if (info.reducedFrom !== undefined) warnings.push({ kind: "reduced" });
  const areas = input.areas.map(({ area }, i) => {
    const light = checked(input, () => lightOf(codes[i] as Codes));
    const { density, atLeast, dusty, extended } = checked(input, () =>
      areaDensity({
        area: light,
        calibration:
          calibration.kind !== "greyScale"
            ? {
                black: 0,
                white: 1,
                whiteDensity: 0,
                ...calibration,
                kind: "assumed" as const,
                ...("curve" in tone ? { curve: tone.curve } : {}),
                curveAssumed: assumed,
              }
            : { kind: "greyScale", scale: scale as GreyScale },
        bits: info.bits,
        table,
      }),
    );
    if (light.clippedShare > 0) warnings.push({ kind: "clipped", area });
    if (dusty) warnings.push({ kind: "dusty", area });
    if (extended) warnings.push({ kind: "extended", area });
    return { area, density, atLeast, clippedShare: light.clippedShare, blocks: light.blocks };
  });
  return {
    areas,
    image: {
      widthPx: info.widthPx,
      heightPx: info.heightPx,
      bits: info.bits,
      kind: info.kind,
      sha256: await sha256Of(source),
    },
    calibration: {
      kind: scale === undefined ? "assumed" : "greyScale",
      curve: calibration.kind !== "greyScale" ? name : null,
      residuals: scale?.residuals ?? [],
      reversedPatches: scale?.reversedPatches ?? 0,
    },
    read: { bytes, strips: stripsRead(picture, windows) },
    warnings,
  };
}

function scaleOf(
  calibration: Extract<MeasureInput["calibration"], { readonly kind: "greyScale" }>,
  lights: readonly AreaLight[],
): GreyScale {
  const patches = calibration.patches.map(({ density }, i) => ({ light: (lights[i] as AreaLight).light, density }));
  try {
    return checked({ patches }, () => calibrateGreyScale({ patches }));
  } catch (fault) {
    if (!(fault instanceof Refusal)) throw fault;
    throw new Refusal({ ...fault.fault, pointer: "/calibration/patches" });
  }
}

function requireInside(
  { x, y, widthPx, heightPx }: Window,
  info: Picture["info"],
  pointer: string,
  area: string,
): void {
  if (x + widthPx <= info.widthPx && y + heightPx <= info.heightPx) return;
  const facts = { area, x, y, widthPx, heightPx, pictureWidthPx: info.widthPx, pictureHeightPx: info.heightPx };
  throw new Refusal({ code: "areaOutside", pointer, facts });
}

/** What is taken of how codes stand for light, what it is called, and whether nobody but we say so. */
function toneOf(said: Tone, stated: ToneCurve | undefined): { tone: CodeTone; name: string; assumed: boolean } {
  if (stated !== undefined) return { tone: { curve: stated }, name: stated, assumed: !names(said, stated) };
  if (said.named === "srgb") return { tone: { curve: "srgb" }, name: "srgb", assumed: false };
  if (said.named === "gamma") return ofGamma(said.gamma);
  if (said.named === "profile") {
    if (said.gamma !== undefined) return { ...ofGamma(said.gamma), name: said.profile };
    if (said.curve !== undefined) return { tone: { points: said.curve }, name: said.profile, assumed: false };
  }
  return { tone: { curve: "srgb" }, name: "srgb", assumed: true };
}

function ofGamma(gamma: number): { tone: CodeTone; name: string; assumed: boolean } {
  const near = ([1, 1.8, 2.2] as const).find((each) => Math.abs(gamma - each) < 0.002);
  if (near === undefined) return { tone: { gamma }, name: `gamma${Number(gamma.toFixed(3))}`, assumed: false };
  const curve = near === 1 ? "linear" : (`gamma${near}` as const);
  return { tone: { curve }, name: curve, assumed: false };
}

const names = (said: Tone, curve: ToneCurve) =>
  (said.named === "srgb" && curve === "srgb") || (said.named === "gamma" && ofGamma(said.gamma).name === curve);

function stripsRead(picture: Picture, windows: readonly Window[]): number {
  if (picture.info.orientation !== 1) return picture.blocks.length;
  return picture.blocks.filter((block) =>
    windows.some(
      ({ x, y, widthPx, heightPx }) =>
        x < block.x + block.widthPx && block.x < x + widthPx && y < block.y + block.heightPx && block.y < y + heightPx,
    ),
  ).length;
}

async function sha256Of(source: FileSource): Promise<string> {
  const sum = createHash("sha256");
  for (let at = 0; at < source.size; at += HASH_PIECE_BYTES) {
    sum.update(await source.read(at, Math.min(HASH_PIECE_BYTES, source.size - at)));
  }
  return sum.digest("hex");
}
