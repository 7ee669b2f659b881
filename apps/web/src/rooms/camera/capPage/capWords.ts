/** Words of the cap page for seconds, stops and counts. */

/** 13 s, 8.3 s, 2m05: as a watch says it. */
export function secondsWords(seconds: number): string {
  if (seconds >= 99.95) return clockFigure(seconds, "m");
  return `${plain(seconds)} s`;
}

/** The large figure: 8, 4.3, 1:05. */
export function figureOf(seconds: number): string {
  return seconds >= 99.95 ? clockFigure(seconds, ":") : plain(seconds);
}

/** 0:23, 1:02:03: how long somebody waits. */
export function waitedWords(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const two = (n: number) => String(n).padStart(2, "0");
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}

/** 0.04 stop, 0.6 stop, 2 stops; digits no finer than a hand is worth. */
export function stopsWords(stops: number): string {
  const size = Math.abs(stops);
  const digits = size < 0.095 ? size.toFixed(2) : size.toFixed(1);
  return `${digits} ${Number(digits) > 1 ? "stops" : "stop"}`;
}

/** "0.1 stop more than wanted", "as wanted". */
export function comparedWords({ givenS, wantedS }: { readonly givenS: number; readonly wantedS: number }): string {
  if (!(givenS > 0 && wantedS > 0)) return "nothing given";
  const stops = Math.log2(givenS / wantedS);
  if (!(Math.abs(stops) >= 0.005)) return "as wanted";
  return `${stopsWords(stops)} ${stops > 0 ? "more" : "short"}`;
}

/** ± of a doubt, nine in ten. */
export function plusMinusStops(sdStops: number): string {
  return `±${(1.645 * sdStops).toFixed(2)} stop`;
}

const numbers = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** one opening, two openings, 14 openings. */
export function openingsWords(count: number): string {
  return `${numbers[count] ?? count} ${count === 1 ? "opening" : "openings"}`;
}

/** "four ticks", "four ticks and a bit", "less than a tick". */
export function ticksWords(ticks: number): string {
  const whole = Math.floor(ticks + 1e-6);
  if (whole === 0) return "less than a tick";
  const rest = ticks - whole > 0.05;
  return `${numbers[whole] ?? whole} ${whole === 1 ? "tick" : "ticks"}${rest ? " and a bit" : ""}`;
}

/** 1st, 2nd, 3rd, 4th, 11th, 13th, 21st. */
export function ordinal(n: number): string {
  const lastTwo = n % 100;
  const ending = lastTwo >= 11 && lastTwo <= 13 ? "th" : (["th", "st", "nd", "rd"][n % 10] ?? "th");
  return `${n}${ending}`;
}

function plain(seconds: number): string {
  const tenths = Math.max(0, Math.round(seconds * 10)) / 10;
  return Number.isInteger(tenths) ? String(tenths) : tenths.toFixed(1);
}

function clockFigure(seconds: number, between: ":" | "m"): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}${between}${String(whole % 60).padStart(2, "0")}`;
}
