import * as z from "zod/mini";
import { estimate, link, moment, notNegative, positive, result, typedText } from "./fields.ts";
import { plainJson } from "./plainJson.ts";
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
