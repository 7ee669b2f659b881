import type { BathLabelInput } from "@captray/drawings/baths";
import { type BathOnHand, type WasteOf, wasteOf } from "@captray/notebook/answers";
import type { Bath, FieldSet, Moment, WasteVessel } from "@captray/notebook/records";
import { parseNumber, readTime } from "@captray/science/notation";
import { bathName, hourWords, volumeWords } from "../../../kit/baths/bathWords.ts";
import type { Reading } from "../../../kit/reading.ts";

/** What is asked when a bath is discarded: which of two vessels, or neither. */
export interface VesselAsked {
  readonly vessel: WasteVessel;
  readonly name: string;
  readonly detail: string;
  /** Why it must not go there; nothing where it may. */
  readonly refusal: string | undefined;
}

const vessels: readonly { readonly vessel: WasteVessel; readonly name: string; readonly detail: string }[] = [
  { vessel: "usedBleach", name: "Used bleach", detail: "open, or with a vented cap" },
  { vessel: "usedFixer", name: "Used fixer", detail: "its own, never the bleach’s" },
  { vessel: "neither", name: "Neither", detail: "as your local rules say" },
];

const refusals: Readonly<Record<NonNullable<WasteOf["refused"][WasteVessel]>, string>> = {
  bleachMeetsFixer:
    "Used bleach and used fixer never share a vessel: they heat, and give off choking gas. Take the other one.",
  alkaliMeetsPeroxide: "Developer is alkaline: in used bleach it makes the peroxide boil up as gas. Keep it out.",
  acidMeetsFixer: "Acid on fixer gives off choking gas. Keep it out.",
  alkaliMeetsFixer: "Developer in a rapid fixer drives out ammonia. Keep it out.",
  silverInDrain: "It holds silver: collect it in its own vessel, and ask what your local rules allow.",
};

/** The vessels as they are asked for, each with the reason where it is the wrong one. */
export function vesselsFor(bath: Bath): readonly VesselAsked[] {
  const { vessel: right, refused } = wasteOf({ bath });
  return vessels.map((one) => {
    const reason = refused[one.vessel];
    return { ...one, refusal: one.vessel === right || reason === undefined ? undefined : refusals[reason] };
  });
}

export function vesselName(vessel: WasteVessel | undefined): string {
  return vessel === "usedBleach"
    ? "into the vessel for used bleach"
    : vessel === "usedFixer"
      ? "into the vessel for used fixer"
      : "as your local rules say";
}

export function discardSet(vessel: WasteVessel, now: Moment): FieldSet {
  return { discardedAt: { ...now }, discardedInto: vessel };
}

/** Sheets counted by hand, of the size the notebook knows. */
export function countedSet(bath: Bath, sheets: number, sheetM2: number, now: Moment): FieldSet {
  const before = (bath.byHand ?? []).map((one) => ({ ...one, at: { ...one.at } }));
  return { byHand: [...before, { at: { ...now }, sheets, areaM2: sheets * sheetM2 }].slice(-100) };
}

/** A strip timed in it; the first is what the later ones are held against. */
export function stripSet(bath: Bath, timeS: number, now: Moment): FieldSet {
  const before = (bath.strips ?? []).map((one) => ({ ...one, at: { ...one.at } }));
  return { strips: [...before, { at: { ...now }, timeS }].slice(-100) };
}

export function readCount(text: string): Reading {
  if (text.trim() === "") return { kind: "empty" };
  try {
    const value = parseNumber({ text });
    if (Number.isInteger(value) && value >= 1 && value <= 200) return { kind: "read", value, understood: "" };
  } catch {
    // Answered below, like a number that does not fit.
  }
  return { kind: "unreadable", message: "A whole number of sheets, 1 to 200." };
}

export function readSeconds(text: string): Reading {
  const answer = readTime({ text });
  if (answer.kind !== "read" || (answer.value >= 1 && answer.value <= 3600)) return answer;
  return { kind: "unreadable", message: "A time from 1 s to an hour." };
}

const substances: Readonly<Record<string, string>> = {
  h2o2: "peroxide",
  citric: "citric acid",
  acetic: "acetic acid",
  sulfite: "sulfite",
  fixer: "fixer",
  metol: "metol",
  hydroquinone: "hydroquinone",
};

/** What a bath holds, in the words of its label. */
export function holdsWords({ holds = [] }: Bath): string {
  return holds
    .map(({ what, percentWv }) => {
      const name = substances[what] ?? what;
      return percentWv === undefined ? name : `${name} ${Number(percentWv.toPrecision(3))} % w/v`;
    })
    .join(", ");
}

/** Peroxide, alone or mixed, is never closed. */
export function isVented({ role, holds = [] }: Bath): boolean {
  return role === "peroxide" || role === "acidAndPeroxide" || holds.some(({ what }) => what === "h2o2");
}

/** The label of a bath: what, how strong, since when, until when, and where it goes. */
export function labelOf({ bath, wear }: BathOnHand): BathLabelInput {
  const { mixedAt } = bath;
  const day = (moment: Moment) =>
    new Date(moment.at + moment.offsetMin * 60_000).toLocaleDateString("en-GB", {
      day: "numeric",
      month: "long",
      year: "numeric",
      timeZone: "UTC",
    });
  return {
    title: bathName(bath),
    lines: [holdsWords(bath), volumeWords(bath.volumeMl)].filter((line) => line !== ""),
    mixed: mixedAt === undefined ? "mixed" : `mixed ${day(mixedAt)}, ${hourWords(mixedAt.at, mixedAt.offsetMin)}`,
    ...(wear.lastHourMs !== undefined &&
      mixedAt !== undefined && { lastHour: `last hour ${hourWords(wear.lastHourMs, mixedAt.offsetMin)}` }),
    isVented: isVented(bath),
    foot: [
      `Used: ${vesselName(wasteOf({ bath }).vessel)}.`,
      "No food, no drink. The supplier’s safety sheet comes first.",
    ],
  };
}
