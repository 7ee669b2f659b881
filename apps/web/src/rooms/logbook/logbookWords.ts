import type { Moment, SheetState } from "@captray/notebook/records";

/** A sheet's state, in the words of the list and of the search. */
export const stateWords: Readonly<Record<SheetState, string>> = {
  blank: "blank, laid out",
  loaded: "loaded",
  flashed: "flashed",
  exposed: "exposed",
  flashOwed: "exposed, flash owed",
  inProcess: "in the trays",
  drying: "drying",
  dry: "dry, taken down",
  measured: "measured",
  kept: "kept",
  discarded: "discarded",
};

const day = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", timeZone: "UTC" });
const dayAndYear = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});
const time = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit", timeZone: "UTC" });

/** "1 Dec", with the year where it is not the present one; in the time the person lived in. */
export function dayWords({ moment, nowMs }: { readonly moment: Moment; readonly nowMs: number }): string {
  const there = new Date(moment.at + moment.offsetMin * 60_000);
  const thisYear = there.getUTCFullYear() === new Date(nowMs).getUTCFullYear();
  return (thisYear ? day : dayAndYear).format(there);
}

/** "14:12", in the time the person lived in. */
export function timeWords({ moment }: { readonly moment: Moment }): string {
  return time.format(new Date(moment.at + moment.offsetMin * 60_000));
}

/** 13 s, 13.6 s, 2m05: as it was given, to a tenth. */
export function givenWords(seconds: number): string {
  if (!(seconds > 0)) return "nothing";
  if (seconds >= 99.95) {
    const whole = Math.round(seconds);
    return `${Math.floor(whole / 60)}m${String(whole % 60).padStart(2, "0")}`;
  }
  const tenths = Math.round(seconds * 10) / 10;
  return tenths > 0 ? `${tenths} s` : `${Number(seconds.toPrecision(1))} s`;
}
