import { showTime } from "@captray/science/notation";
import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";

export interface DayMoment {
  /** From midnight by the local clock. */
  readonly minute: number;
  readonly timeS: number;
  /** Nine in ten. */
  readonly lowS: number;
  readonly highS: number;
}

export interface DayDrawingInput {
  readonly widthPx: number;
  readonly letterPx: number;
  /** In order, while the sun is up. */
  readonly moments: readonly DayMoment[];
  readonly spans: readonly { readonly fromMin: number; readonly toMin: number }[];
  readonly leastS?: number | undefined;
  readonly mostS?: number | undefined;
}

const hatchEveryPx = 4;
const marksS = [1 / 60, 1 / 15, 1 / 4, 1, 4, 15, 60, 240, 900, 3600, 14_400];

/**
 * The cap time over a day: the hours across, the time upward in stops, its doubt as hatching, and the hours that are wanted as a bar on the
 * line of the hours.
 */
export function dayDrawing(input: DayDrawingInput): Drawing {
  const { widthPx, letterPx, moments, spans, leastS, mostS } = input;
  const [first, last] = [moments[0], moments.at(-1)];
  const fromMin = Math.floor(((first?.minute ?? 480) - 30) / 60) * 60;
  const toMin = Math.ceil(((last?.minute ?? 960) + 30) / 60) * 60;
  const shownS = [...moments.flatMap(({ lowS, highS }) => [lowS, highS]), leastS ?? 1, mostS ?? 1];
  const lowLog = Math.log2(Math.min(...shownS)) - 0.3;
  const highLog = Math.log2(Math.max(...shownS)) + 0.3;
  const left = letterPx * 3.6;
  const right = widthPx - letterPx * 0.6;
  const top = letterPx * 0.8;
  const axisY = top + Math.max(120, letterPx * 9);
  const x = (minute: number) => left + ((minute - fromMin) / (toMin - fromMin)) * (right - left);
  const y = (timeS: number) => axisY - 8 - ((Math.log2(timeS) - lowLog) / (highLog - lowLog)) * (axisY - 8 - top);

  const shapes: Shape[] = [];
  const text = { kind: "text", size: letterPx, ink: "soft" } as const;
  const marks = marksS.filter((mark) => Math.log2(mark) > lowLog && Math.log2(mark) < highLog);
  let freeAbove = Number.POSITIVE_INFINITY;
  for (const mark of marks) {
    const at = y(mark);
    shapes.push({ kind: "path", d: `M${left} ${fixed(at)}H${right}`, stroke: "rule", width: 1 });
    if (at > freeAbove) continue;
    freeAbove = at - letterPx * 1.3;
    const label = { ...text, text: showTime({ timeS: mark }), x: left - 7, y: fixed(at + letterPx / 3) };
    shapes.push({ ...label, anchor: "end", name: `figure ${mark} s` });
  }
  for (const span of spans) {
    shapes.push({
      kind: "rect",
      x: fixed(x(span.fromMin)),
      y: axisY - 4,
      width: fixed(Math.max(1, x(span.toMin) - x(span.fromMin))),
      height: 8,
      fill: "ink",
      name: `hours ${span.fromMin} to ${span.toMin}`,
    });
  }
  const hatches = hatching();
  if (hatches !== "")
    shapes.push({ kind: "path", d: hatches, stroke: "ink", width: 0.9, opacity: 0.75, name: "doubt" });
  for (const [name, wanted] of [
    ["at least", leastS],
    ["at most", mostS],
  ] as const) {
    if (wanted === undefined) continue;
    shapes.push({
      kind: "path",
      d: `M${left} ${fixed(y(wanted))}H${right}`,
      stroke: "ink",
      width: 1.5,
      dashes: [7, 5],
      name: `${name} ${wanted} s`,
    });
  }
  const points = moments.map((moment) => `${fixed(x(moment.minute))} ${fixed(y(moment.timeS))}`);
  if (points.length > 0)
    shapes.push({ kind: "path", d: `M${points.join("L")}`, stroke: "ink", width: 2.4, name: "cap time" });
  shapes.push({ kind: "path", d: `M${left} ${axisY}H${right}`, stroke: "ink", width: 1.5, name: "hours" });
  const every = hoursEvery();
  for (let hour = fromMin / 60; hour <= toMin / 60; hour++) {
    const at = fixed(x(hour * 60));
    shapes.push({ kind: "path", d: `M${at} ${axisY}v8`, stroke: "ink", width: 1.2 });
    const shown = ((hour % 24) + 24) % 24;
    if (shown % every !== 0) continue;
    const label = { ...text, text: String(shown), x: at, y: axisY + 9 + letterPx };
    shapes.push({ ...label, anchor: "middle", name: `figure hour ${hour}` });
  }
  return { width: widthPx, height: fixed(axisY + letterPx * 2.2), shapes, says: says() };

  function hatching(): string {
    let d = "";
    if (first === undefined || last === undefined) return d;
    for (let at = x(first.minute) + hatchEveryPx / 2; at < x(last.minute); at += hatchEveryPx) {
      const minute = fromMin + ((at - left) / (right - left)) * (toMin - fromMin);
      const next = moments.findIndex((moment) => moment.minute >= minute);
      const [lower, upper] = [moments[next - 1], moments[next]];
      if (lower === undefined || upper === undefined) continue;
      const share = (minute - lower.minute) / (upper.minute - lower.minute);
      const between = (key: "lowS" | "highS") => lower[key] * (upper[key] / lower[key]) ** share;
      d += `M${fixed(at)} ${fixed(y(between("highS")))}V${fixed(y(between("lowS")))}`;
    }
    return d;
  }

  function hoursEvery(): number {
    const wide = textWidth({ text: "22", size: letterPx }) + letterPx * 0.6;
    return [1, 2, 3, 4, 6].find((every) => x(fromMin + 60 * every) - x(fromMin) >= wide) ?? 6;
  }

  function says(): string {
    if (first === undefined || last === undefined) return "No daylight that can be reckoned on this day.";
    const least = moments.reduce((a, b) => (b.timeS < a.timeS ? b : a));
    const held = spans.map((span) => `${clock(span.fromMin)} to ${clock(span.toMin)}`).join(" and ");
    const wanted = spans.length === 0 ? "At no hour as wanted." : `As wanted from ${held}.`;
    return `Cap time over the day: ${showTime({ timeS: first.timeS })} at ${clock(first.minute)}, shortest ${showTime({ timeS: least.timeS })} at ${clock(least.minute)}, ${showTime({ timeS: last.timeS })} at ${clock(last.minute)}. ${wanted}`;
  }
}

function clock(minute: number): string {
  const whole = ((Math.round(minute) % 1440) + 1440) % 1440;
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

function fixed(px: number): number {
  return Math.round(px * 100) / 100;
}
