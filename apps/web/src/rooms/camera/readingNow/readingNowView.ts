import { type PlanOf, planOf } from "@captray/notebook/answers";
import type { Result } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { formatLength, formatStops } from "@captray/science/notation";
import { saidWords } from "../saidWords.ts";
import { figuresOf, rangeWords, supposes } from "./barWords.ts";
import type { Draft } from "./draft.ts";
import {
  type DraftRecords,
  draftRecords,
  type FreshIds,
  guessedIndex,
  indexOf,
  type ShelfView,
} from "./draftRecords.ts";
import { indexWords } from "./kitTexts.ts";
import { fieldValue, readerOf, saysDistant } from "./readTexts.ts";
import { type Granted, takenForGranted } from "./takenForGranted.ts";

/** Everything the page shows beside what was typed. */
export interface ReadingNowView {
  readonly records: DraftRecords;
  readonly plan: PlanOf;
  readonly bar: BarView;
  /** Said under the meter's fields, where the dial means more than it says. */
  readonly timeSaid: string | undefined;
  /** Said beside the lens's f-number. */
  readonly apertureSaid: string | undefined;
  /** Said beside the board-to-glass field. */
  readonly extensionSaid: string | undefined;
  readonly indexes: { readonly [R in Result]: string };
  readonly granted: readonly Granted[];
  readonly problem: ProblemView | undefined;
  /** The answer to “I worked it out as”. */
  readonly said: string | undefined;
}

export interface BarView {
  readonly time: { readonly figures: string; readonly unit: string } | undefined;
  readonly head: string;
  readonly second: string | undefined;
  /** Why the cap has to wait; nothing where it need not. */
  readonly waits: string | undefined;
}

interface ProblemView {
  readonly head: string;
  readonly say: string;
}

const missingWords = {
  reading: "what the meter says",
  focalLength: "the focal length",
  aperture: "the lens’s f-number",
  exposureIndex: "negative or positive",
  pinholeExtension: "board to paper",
} as const;

/** The page worked out from the draft and the shelf; pure, and quick enough for every key stroke. */
export function readingNowView({
  draft,
  shelf,
  fresh,
  takenAt,
  lengthUnit,
}: {
  readonly draft: Draft;
  readonly shelf: ShelfView;
  readonly fresh: FreshIds;
  readonly takenAt: { readonly at: number; readonly offsetMin: number };
  readonly lengthUnit: "mm" | "inch";
}): ReadingNowView {
  const records = draftRecords({ draft, shelf, fresh, takenAt });
  const plan = planOf(records.kit);
  const box = shelf.boxes.find((one) => one.id === draft.paperBoxId) ?? shelf.boxes.at(-1);
  const indexFor = (result: Result) => {
    const typed = draft.result === result ? records.kit.exposureIndex : undefined;
    return indexWords(typed ?? indexOf(shelf, box?.id, result), guessedIndex(result));
  };
  return {
    records,
    plan,
    bar: barOf(plan, draft),
    timeSaid: timeSaid(draft),
    apertureSaid: apertureSaid(draft),
    extensionSaid: extensionSaid(plan, draft, lengthUnit),
    indexes: { negative: indexFor("negative"), positive: indexFor("positive") },
    granted: plan.kind === "plan" ? takenForGranted({ plan, kit: records.kit, lengthUnit }) : [],
    problem: problemOf(plan, lengthUnit),
    said: saidOf(plan),
  };
}

function barOf(plan: PlanOf, draft: Draft): BarView {
  if (plan.kind === "missing") {
    const [first, ...rest] = plan.missing.map((part) => missingWords[part]);
    return {
      time: undefined,
      head: `Type ${first}`,
      second: rest.length > 0 ? `then ${rest.join(", ")}` : undefined,
      waits: "a time",
    };
  }
  if (plan.kind === "refused") {
    return { time: undefined, head: "No time yet", second: "one figure cannot be: see above", waits: "that figure" };
  }
  const { answer } = plan;
  return {
    time: figuresOf(answer.timeS),
    head: `nine in ten: ${rangeWords(answer.timeIntervalS)}`,
    second: supposes(answer, draft.texts.extension.trim() !== ""),
    waits: undefined,
  };
}

function timeSaid({ texts }: Draft): string | undefined {
  const read = readerOf("time")(texts.time);
  if (read.kind !== "read") return undefined;
  const plain = (words: string) => words.replaceAll(/[\s,]|s$/g, "");
  return plain(read.understood).startsWith(plain(texts.time)) && !read.understood.includes("exactly")
    ? undefined
    : read.understood;
}

function apertureSaid({ texts }: Draft): string | undefined {
  const read = readerOf("lensFNumber")(texts.lensFNumber);
  if (read.kind !== "read") return undefined;
  return read.marked === true ? "as marked" : "as cut: measured, no mark";
}

function extensionSaid(plan: PlanOf, draft: Draft, lengthUnit: "mm" | "inch"): string | undefined {
  if (saysDistant(draft.texts.extension)) return "nothing to add for a distant subject";
  if (plan.kind !== "plan" || fieldValue(draft, "extension") === undefined) return undefined;
  const line = plan.answer.ledger.find((one) => one.line === "extension");
  if (line?.line !== "extension") return undefined;
  const stops = `${formatStops({ stops: line.stops.value, sd: line.stops.sd }).replace(/^[+]/, "")} stop of extension`;
  const { subjectDistanceMm } = line.facts;
  if (subjectDistanceMm === null) return stops;
  return `${stops}; sharp at ${distanceWords(subjectDistanceMm, lengthUnit)}`;
}

/** A distance to a subject: metres to two decimals, or inches. */
function distanceWords(lengthMm: number, unit: "mm" | "inch"): string {
  if (unit === "inch") return formatLength({ lengthMm, unit });
  return lengthMm >= 1000 ? `${(lengthMm / 1000).toPrecision(3)} m` : `${Math.round(lengthMm / 10)} cm`;
}

function problemOf(plan: PlanOf, lengthUnit: "mm" | "inch"): ProblemView | undefined {
  if (plan.kind === "refused") {
    const { code, facts, key } = plan.fault;
    const { message, hint } = messageOf({ code, facts, key, lengthUnit });
    return { head: message, say: hint };
  }
  return undefined;
}

function saidOf(plan: PlanOf): string | undefined {
  if (plan.kind !== "plan" || plan.answer.said === null || plan.input.saidTimeS === undefined) return undefined;
  return saidWords({ said: plan.answer.said, saidTimeS: plan.input.saidTimeS, timeS: plan.answer.timeS });
}
