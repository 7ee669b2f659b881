import type { Moment } from "@captray/notebook/records";
import { dayWords, timeWords } from "../logbookWords.ts";

export type MomentRead =
  | { readonly kind: "empty" }
  | { readonly kind: "read"; readonly value: number; readonly understood: string; readonly moment: Moment }
  | { readonly kind: "unreadable"; readonly message: string; readonly likely?: { readonly text: string } };

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const minuteMs = 60_000;
const dayMs = 86_400_000;

/**
 * Reads when something happened, in ordinary words: 14:12, yesterday 20:40, 30 Nov 20:40, 30 Nov 2025, 10 min ago, now.
 *
 * An hour alone is the last time it was so late; a day without an hour is its noon. What is still to come did not happen.
 */
export function readMoment({ text, now }: { readonly text: string; readonly now: Moment }): MomentRead {
  const said = text.trim().toLowerCase().replace(/,/g, " ").replace(/\s+/g, " ");
  if (said === "") return { kind: "empty" };
  const dotted = /^(\d{1,2})\.(\d{2})$/.exec(said);
  if (dotted) {
    const likely = `${dotted[1]}:${dotted[2]}`;
    return { kind: "unreadable", message: "An hour with a colon:", likely: { text: likely } };
  }
  const at = instantOf(said, now);
  if (at === undefined) {
    return { kind: "unreadable", message: "An hour, or a day and an hour: 14:12, yesterday 20:40, 30 Nov 20:40." };
  }
  if (at > now.at) {
    return { kind: "unreadable", message: `That is still to come: it is ${timeWords({ moment: now })} now.` };
  }
  if (at < 0) return { kind: "unreadable", message: "A year from 1970 on." };
  const moment = { at, offsetMin: now.offsetMin };
  const day = dayWords({ moment, nowMs: now.at });
  return { kind: "read", value: at, understood: `${day}, ${timeWords({ moment })}`, moment };
}

function instantOf(said: string, now: Moment): number | undefined {
  if (said === "now" || said === "just now") return now.at;
  const ago = /^(an?|\d{1,3}) ?(min(?:ute)?s?|h(?:our)?s?|days?)(?: ago)?$/.exec(said);
  if (ago) {
    const unit = ago[2]?.startsWith("m") ? minuteMs : ago[2]?.startsWith("h") ? 60 * minuteMs : dayMs;
    const count = ago[1]?.startsWith("a") ? 1 : Number(ago[1]);
    return now.at - count * unit;
  }
  const [, days = "", hours, minutes] = /^(.*?) ?(?:(?:at )?(\d{1,2}):(\d{2}))?$/.exec(said) ?? [];
  if (hours !== undefined && (Number(hours) > 23 || Number(minutes) > 59)) return undefined;
  const within = hours === undefined ? 720 : Number(hours) * 60 + Number(minutes);
  const midnight = localMidnight(now);
  if (days === "") {
    if (hours === undefined) return undefined;
    const today = midnight + within * minuteMs;
    return today > now.at ? today - dayMs : today;
  }
  if (days === "today") return midnight + within * minuteMs;
  if (days === "yesterday") return midnight - dayMs + within * minuteMs;
  return dayNamed(days, within, now);
}

/** "30 nov", "30 november 2025": of the year that is not to come, where none is said. */
function dayNamed(days: string, minutes: number, now: Moment): number | undefined {
  const [, day, name, year] = /^(\d{1,2}) ?([a-z]{3,9})\.?(?: (\d{4}))?$/.exec(days) ?? [];
  const month = name === undefined ? -1 : months.indexOf(name.slice(0, 3));
  if (day === undefined || month < 0) return undefined;
  const inYear = (of: number): number | undefined => {
    const utc = Date.UTC(of, month, Number(day), 0, minutes);
    const there = new Date(Date.UTC(of, month, Number(day)));
    return there.getUTCMonth() === month && there.getUTCDate() === Number(day)
      ? utc - now.offsetMin * minuteMs
      : undefined;
  };
  if (year !== undefined) return inYear(Number(year));
  const thisYear = new Date(now.at + now.offsetMin * minuteMs).getUTCFullYear();
  const at = inYear(thisYear);
  return at === undefined || at > now.at ? inYear(thisYear - 1) : at;
}

function localMidnight({ at, offsetMin }: Moment): number {
  const local = at + offsetMin * minuteMs;
  return local - (((local % dayMs) + dayMs) % dayMs) - offsetMin * minuteMs;
}
