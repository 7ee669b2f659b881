import * as z from "zod/mini";
import { estimate, link, longText, moment, notNegative, positive, result, typedText } from "./fields.ts";
import { plainJson } from "./plainJson.ts";
import { controlPatches } from "./recipe.ts";
import { type RecordFrom, record } from "./record.ts";

/** What a person writes on the back in soft pencil: up to 12 characters, no blank at either end. */
export const sheetCode = z
  .string()
  .check(z.regex(/^[\p{L}\p{N}]([\p{L}\p{N} ./-]{0,10}[\p{L}\p{N}])?$/u))
  .brand<"SheetCode">();
export type SheetCode = z.output<typeof sheetCode>;

export const mishaps = [
  "slideLeftIn",
  "slideOutCapOff",
  "knocked",
  "exposedTwice",
  "holderNotSeated",
  "lightLeak",
] as const;
export type Mishap = (typeof mishaps)[number];

/** The steps of a sheet's way, in their order; each is a dated field, and its state follows from the dates. */
export const stepDates = [
  "loadedAt",
  "flashedAt",
  "exposedAt",
  "inProcessAt",
  "dryingAt",
  "measuredAt",
  "keptAt",
  "discardedAt",
] as const;
export type StepDate = (typeof stepDates)[number];

/** The cap off once. `givenS` with its doubt; `manner`: what the person went by, or nothing was pressed. */
const opening = z.strictObject({
  plannedS: positive,
  givenS: estimate,
  manner: z.enum(["ticks", "counted", "takenAsPlanned"]),
  handId: z.exactOptional(link),
  startedAt: z.exactOptional(moment),
  /** Open times between which the cap was put on to wait. */
  piecesS: z.exactOptional(z.array(positive).check(z.maxLength(50))),
  /** The time was corrected by the person afterwards. */
  corrected: z.exactOptional(z.boolean()),
});
export type Opening = z.output<typeof opening>;

/** The plan as it was that day: the question and the whole answer, kept as they were. */
const planned = z.strictObject({
  timeS: positive,
  ledger: plainJson({ most: 20_000 }),
  input: z.exactOptional(plainJson({ most: 60_000 })),
  answer: z.exactOptional(plainJson({ most: 60_000 })),
  frozenAt: z.exactOptional(moment),
});
export type Planned = z.output<typeof planned>;

const flash = z.strictObject({
  timeS: positive,
  lampId: z.exactOptional(link),
  flashLampId: z.exactOptional(link),
  when: z.enum(["beforeLoading", "inCamera", "afterExposure"]),
});

/** A share of the sheet's width or height, from its upper left corner as the print is looked at. */
const share = z.number().check(z.gte(0), z.lte(1));
const size = z.number().check(z.gt(0), z.lte(1));
/** A part of a sheet: its upper left corner and its size, as shares of the sheet. */
const part = z.strictObject({ x: share, y: share, width: size, height: size });
export type SheetPart = z.output<typeof part>;

/** Where something wet was put to dry; the number is that of the hook, screen or place on the line. */
const hangs = z.strictObject({
  on: z.enum(["line", "hook", "screen", "glass", "elsewhere"]),
  number: z.exactOptional(z.int().check(z.gte(1), z.lte(99))),
  words: z.exactOptional(typedText),
});
export type Hangs = z.output<typeof hangs>;

/** What is cut off a sheet: each goes through the trays by itself; its run is found through the runs that name its letter. */
const piece = z.strictObject({
  letter: z.string().check(z.regex(/^[a-z]$/)),
  cut: z.enum(["half", "quarter", "strip", "controlPatch"]),
  place: part,
  /** Of a control patch: how it is treated. */
  patch: z.exactOptional(z.enum(controlPatches)),
  words: z.exactOptional(typedText),
  inProcessAt: z.exactOptional(moment),
  dryingAt: z.exactOptional(moment),
  hangs: z.exactOptional(hangs),
  takenDownAt: z.exactOptional(moment),
  measuredAt: z.exactOptional(moment),
  keptAt: z.exactOptional(moment),
  discardedAt: z.exactOptional(moment),
});
export type Piece = z.output<typeof piece>;

/** What can be seen to be wrong with a print. */
export const faultKinds = [
  "scratch",
  "tongMark",
  "stain",
  "residue",
  "fog",
  "uneven",
  "finger",
  "lightLeak",
  "blister",
  "dust",
  "waterMark",
  "unbleached",
  "other",
] as const;
export type FaultKind = (typeof faultKinds)[number];

/** A fault where it was seen: its middle and its size, as shares of the sheet. */
const fault = z.strictObject({
  id: link,
  what: z.enum(faultKinds),
  x: share,
  y: share,
  width: size,
  height: size,
  noticedAt: moment,
  words: z.exactOptional(longText),
});
export type Fault = z.output<typeof fault>;

/** One sheet of paper and everything known of it. Its state is derived from the dates of its steps. */
export const sheet = record("sheet", {
  fields: {
    code: sheetCode,
    result,
    paperBoxId: link,
    exposureIndexId: link,
    sceneId: link,
    recipeId: link,
    /** The test this sheet answers. */
    testId: link,
    cameraId: link,
    lensId: link,
    stopId: link,
    handId: link,
    holderSide: z.strictObject({ holderId: link, sideId: link }),
    planned,
    flashPlanned: flash,
    flashGivenS: notNegative,
    loadedAt: moment,
    flashedAt: moment,
    exposedAt: moment,
    inProcessAt: moment,
    dryingAt: moment,
    measuredAt: moment,
    keptAt: moment,
    discardedAt: moment,
    /** Where it was put to dry, and when it was taken down from there, dry. */
    hangs,
    takenDownAt: moment,
    /** Each letter once. */
    pieces: z.array(piece).check(
      z.maxLength(26),
      z.refine((all) => new Set(all.map(({ letter }) => letter)).size === all.length),
    ),
    faults: z.array(fault).check(z.maxLength(100)),
    /** When it left its holder otherwise than into the trays: into the box for exposed sheets. */
    takenOutAt: moment,
    rating: z.int().check(z.gte(1), z.lte(5)),
    /** What the person wants to find it by, in their own words. */
    label: typedText,
  },
  lists: {
    openings: { fields: { opening } },
    mishaps: { fields: { what: z.enum(mishaps), notedAt: moment } },
  },
});
export type Sheet = RecordFrom<typeof sheet>;
