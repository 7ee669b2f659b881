import type { BathOnHand, BathWearOf } from "@captray/notebook/answers";
import type { BathRole, Moment } from "@captray/notebook/records";
import { worthSaying } from "./roughly.ts";

const roles: Readonly<Record<BathRole, string>> = {
  developer: "developer",
  firstDeveloper: "first developer",
  secondDeveloper: "second developer",
  stop: "stop",
  acid: "acid",
  peroxide: "peroxide",
  acidAndPeroxide: "bleach, acid and peroxide",
  clear: "clear",
  fix: "fixer",
  washAid: "wash aid",
  water: "water",
};

/** What a bath does, in the words of the trays. */
export function roleWords(role: BathRole | undefined): string {
  return role === undefined ? "bath" : roles[role];
}

export function bathName({ name, role }: { readonly name: string; readonly role?: BathRole | undefined }): string {
  return name.trim() === "" ? roleWords(role) : name;
}

/** The hour by the clock of the place: “18:40”. */
export function hourWords(atMs: number, offsetMin: number): string {
  return new Date(atMs + offsetMin * 60_000).toISOString().slice(11, 16);
}

/** “today 18:40”, “yesterday 18:40”, “29 November 18:40”. */
export function whenWords({ at, offsetMin }: Moment, nowMs: number): string {
  const day = (ms: number) => Math.floor((ms + offsetMin * 60_000) / 86_400_000);
  const apart = day(nowMs) - day(at);
  const named = new Date(at + offsetMin * 60_000).toLocaleDateString("en-GB", {
    day: "numeric",
    month: "long",
    ...(apart > 300 && { year: "numeric" }),
    timeZone: "UTC",
  });
  const words = apart === 0 ? "today" : apart === 1 ? "yesterday" : named;
  return `${words} ${hourWords(at, offsetMin)}`;
}

export function volumeWords(volumeMl: number | undefined): string {
  if (volumeMl === undefined) return "";
  return volumeMl >= 1000 && volumeMl % 100 === 0
    ? `${volumeMl / 1000} ${volumeMl === 1000 ? "litre" : "litres"}`
    : `${Math.round(volumeMl)} ml`;
}

export function sheetsWords(sheets: number): string {
  return sheets === 1 ? "1 sheet done" : `${sheets} sheets done`;
}

/** What to do with a bath, in two or three words: a list has no room for more. */
export function verdictWords({ verdict }: BathWearOf): string {
  return {
    use: "use",
    longer: "give it longer",
    replace: "mix it anew",
    over: "discard it now",
    discarded: "discarded",
  }[verdict];
}

/** When it was mixed and how long it is good, in one sentence. */
export function mixedWords({ bath, wear }: BathOnHand, nowMs: number): string {
  const { mixedAt } = bath;
  if (mixedAt === undefined) return "Nobody wrote down when it was mixed.";
  const mixed = `Mixed ${whenWords(mixedAt, nowMs)}`;
  const { goodUntilMs, lastHourMs, verdict } = wear;
  if (lastHourMs === undefined || goodUntilMs === undefined) return `${mixed}.`;
  if (verdict === "over") return `${mixed}; its last hour was ${hourWords(lastHourMs, mixedAt.offsetMin)}.`;
  if (goodUntilMs.value <= nowMs)
    return `${mixed}; worn by now, its last hour is ${hourWords(lastHourMs, mixedAt.offsetMin)}.`;
  return `${mixed}, good until about ${hourWords(tenMinutes(goodUntilMs.value), mixedAt.offsetMin)}.`;
}

/** An hour that nobody knows to the minute. */
function tenMinutes(atMs: number): number {
  return Math.round(atMs / 600_000) * 600_000;
}

/** What to do and why: a sentence for the verdict, one for each reason that weighs. */
export function adviceSentences({ bath, wear }: BathOnHand): readonly string[] {
  return [verdictSentence(wear, bath.role), ...wear.reasons.map((reason) => reasonSentences[reason]).filter(Boolean)];
}

function verdictSentence({ verdict, timeFactor, lastHourMs }: BathWearOf, role: BathRole | undefined): string {
  const times = `${worthSaying(timeFactor.value)} times as long (${worthSaying(timeFactor.low)} to ${worthSaying(timeFactor.high)})`;
  switch (verdict) {
    case "use":
      if (timeFactor.high < 1.15) return "Use it: its time is as the recipe says.";
      return `Use it: its time as the recipe says, perhaps ${worthSaying(timeFactor.value)} times that (${worthSaying(timeFactor.low)} to ${worthSaying(timeFactor.high)}).`;
    case "longer":
      return role === "firstDeveloper"
        ? `Mix it anew before the next sheet that matters: it would take about ${times}, and no later bath makes good a first development that was too short.`
        : `Use it, and give about ${times}.`;
    case "replace":
      return `Mix a new one; this one would take about ${times}.`;
    case "over":
      return "Discard it now, from an open vessel. It goes into no further run.";
    case "discarded":
      return lastHourMs === undefined ? "It was discarded." : "It was discarded, and is not offered again.";
  }
}

const reasonSentences: Readonly<Record<BathWearOf["reasons"][number], string>> = {
  fresh: "",
  age: "Hours in the open tray weigh.",
  area: "The paper that went through it weighs.",
  ageUnknown: "When it was mixed is not known: the range is as wide as that.",
  areaUnknown: "What went through it is not known: the range is as wide as that.",
  volumeUnknown: "Its volume is not known; half a litre is supposed.",
  bubbles: "Gas at the entry of a sheet: alkali or silver spends the peroxide. Rinse longer before the bleach.",
  pastLastHour: "Its last hour is over.",
  nearLastHour: "Less than an hour is left to it.",
  firstDevelopment: "A tired first developer leaves halide in the whites, and time does not make that good.",
  stripsSaid: "Strips timed in it say so.",
  lasts: "Water is changed; it does not wear.",
};

const grounds = {
  prior: "Its life is common practice for such a bath, to a factor of two. Two strips timed in it would tell.",
  learnt: "Its life is what strips told, in it or in the one before.",
  told: "Its life is what you said.",
} as const;

/** What the estimate rests on. */
export function groundSentence({ ground, halves }: BathWearOf): string {
  return halves === undefined ? "" : grounds[ground];
}
