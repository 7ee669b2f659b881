import type { Shape } from "../shapes/shape.ts";
import type { Places } from "./placesOf.ts";
import type { ToneDrawingInput } from "./toneTypes.ts";

const greyStep = 0.1;

/** Axes, their figures, and the greys at the left edge in steps of 0.1 D. */
export function frameShapes({ letterPx, kind }: ToneDrawingInput, places: Places): Shape[] {
  const { left, right, top, axisY, mostDensity, x, y } = places;
  const stripX = left - 19;
  const text = { kind: "text", size: letterPx, ink: "soft" } as const;
  const shapes: Shape[] = [
    { kind: "rect", x: left - 22, y: top, width: 22, height: axisY - top, fill: "mount", name: "mount of the greys" },
  ];
  const steps = Math.floor(mostDensity / greyStep + 1e-9);
  for (let step = 0; step < steps; step++) {
    const [one, other] = [y(step * greyStep), y((step + 1) * greyStep)];
    const [from, to] = [Math.min(one, other), Math.max(one, other)];
    const density = (step + 0.5) * greyStep;
    // Half a px over the next one, so that no ground shines through between them.
    shapes.push({ kind: "rect", x: stripX, y: from, width: 16, height: to - from + 0.5, fill: { density } });
  }
  for (let half = 0; half <= mostDensity * 2; half++) {
    const at = y(half / 2);
    shapes.push({ kind: "path", d: `M${left} ${at}H${right}`, stroke: "rule", width: 1 });
    shapes.push({
      ...text,
      text: (half / 2).toFixed(1),
      x: left - 27,
      y: at + letterPx / 3,
      anchor: "end",
      name: `figure D ${half / 2}`,
    });
  }
  const betweenFirst = kind === "positive" ? y(0.25) : y(1.75);
  shapes.push({ ...text, text: "D", x: 0, y: betweenFirst + letterPx / 3, anchor: "start" });
  shapes.push({ kind: "path", d: `M${left} ${axisY}H${right}`, stroke: "ink", width: 1.5 });
  const figuresY = axisY + letterPx * 1.6;
  shapes.push({ ...text, text: "stops", x: 0, y: figuresY, anchor: "start" });
  const every = tickEvery(places, letterPx);
  for (let stop = Math.ceil(places.fromStops); stop <= Math.floor(places.toStops); stop++) {
    const at = x(stop);
    shapes.push({ kind: "path", d: `M${at} ${axisY}v8`, stroke: "ink", width: 1.2 });
    const isFree = at > letterPx * 3.2 && at < right + 6 - letterPx * 0.5;
    if (stop % every !== 0 || !isFree) continue;
    const sign = stop < 0 ? "−" : stop > 0 ? "+" : "";
    const figure = `${sign}${Math.abs(stop)}`;
    shapes.push({ ...text, text: figure, x: at, y: figuresY, anchor: "middle", name: `figure stops ${stop}` });
  }
  return shapes;
}

/** Every stop is figured where there is room, else every second, fourth … */
function tickEvery({ x }: Places, letterPx: number): number {
  let every = 1;
  while (every < 16 && (x(every) - x(0)) / letterPx < 2.4) every *= 2;
  return every;
}
