import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";

export interface StripStep {
  readonly name: string;
  readonly timeS: number;
  /** Steps of one round, by its name. */
  readonly roundId?: string | undefined;
  /** How often it is gone through. */
  readonly visits: number;
  /** Whether white light may be on. */
  readonly white: boolean;
}

export interface RecipeStripInput {
  readonly widthPx: number;
  /** Of the smallest letters. */
  readonly letterPx: number;
  readonly steps: readonly StripStep[];
}

interface Stay {
  /** Counted from 1, as in the list of steps. */
  readonly number: number;
  readonly fromS: number;
  readonly timeS: number;
  readonly white: boolean;
  readonly roundId: string | undefined;
}

const trayPx = 34;
const lightPx = 8;
const inset = 2;
/** A stay longer than this share of all the others together is drawn broken. */
const longestShare = 0.5;

/** A recipe along the time of one sheet, to scale: a tray for each stay, a bracket over the rounds, and below it which light. */
export function recipeStrip({ widthPx, letterPx, steps }: RecipeStripInput): Drawing {
  const stays = staysOf(steps);
  const all = stays.reduce((sum, { timeS }) => sum + timeS, 0);
  const longest = stays.reduce((most, { timeS }) => Math.max(most, timeS), 0);
  const rest = all - longest;
  // Only the last stay is broken: what comes after a break would no longer stand at its time.
  const last = stays.at(-1);
  const broken = last !== undefined && last.timeS === longest && rest > 0 && longest > longestShare * rest;
  const drawnS = broken ? rest + longestShare * rest : all;
  const scale = drawnS > 0 ? (widthPx - 2 * inset) / drawnS : 0;
  const x = (timeS: number) => fixed(inset + Math.min(timeS, drawnS) * scale);
  const bracketY = fixed(letterPx * 1.3);
  const hasRounds = steps.some(({ roundId }) => roundId !== undefined);
  const top = hasRounds ? fixed(bracketY + 12) : 2;
  const lightY = top + trayPx + 5;
  const figuresY = fixed(lightY + lightPx + 4 + letterPx);
  const shapes: Shape[] = [];

  let freeFrom = Number.NEGATIVE_INFINITY;
  for (const stay of stays) {
    const from = x(stay.fromS);
    const to = x(stay.fromS + stay.timeS);
    const width = fixed(Math.max(1, to - from));
    const name = `stay ${stay.number}`;
    shapes.push({ kind: "rect", x: from, y: top, width, height: trayPx, stroke: "ink", strokeWidth: 1.5, name });
    const words = String(stay.number);
    const wide = textWidth({ text: words, size: letterPx });
    if (wide + 3 <= width && (from + to) / 2 - wide / 2 > freeFrom) {
      const at = { x: fixed((from + to) / 2), y: fixed(top + trayPx / 2 + letterPx * 0.36) };
      shapes.push({
        kind: "text",
        text: words,
        ...at,
        anchor: "middle",
        size: letterPx,
        ink: "ink",
        name: `number ${words}`,
      });
      freeFrom = (from + to) / 2 + wide / 2;
    }
  }
  if (broken && last !== undefined) {
    const middle = fixed((x(last.fromS) + widthPx) / 2 + letterPx);
    const d = `M${middle - 4} ${top + trayPx + 4}l6 ${-(trayPx + 8)}m5 0l-6 ${trayPx + 8}`;
    shapes.push({ kind: "path", d, stroke: "ink", width: 1.5, name: "break" });
  }
  shapes.push(...rounds(), ...lights(), ...figures());
  return { width: widthPx, height: fixed(figuresY + letterPx * 0.4), shapes, says: sentence() };

  /** A bracket over each group, with how often it is gone through. */
  function rounds(): readonly Shape[] {
    const ids = [...new Set(stays.flatMap(({ roundId }) => roundId ?? []))];
    return ids.flatMap((id): readonly Shape[] => {
      const of = stays.filter(({ roundId }) => roundId === id);
      const [first, end] = [of[0], of.at(-1)];
      if (first === undefined || end === undefined) return [];
      const [from, to] = [x(first.fromS), x(end.fromS + end.timeS)];
      const visits = steps.find(({ roundId }) => roundId === id)?.visits ?? 1;
      const words = visits === 1 ? "1 round" : `${visits} rounds`;
      const half = textWidth({ text: words, size: letterPx }) / 2;
      const middle = Math.min(Math.max((from + to) / 2, half), widthPx - half);
      return [
        {
          kind: "path",
          d: `M${from} ${fixed(bracketY + 8)}v-6H${fixed(to)}v6`,
          stroke: "ink",
          width: 2,
          name: "rounds",
        },
        {
          kind: "text",
          text: words,
          x: fixed(middle),
          y: fixed(bracketY - 3),
          anchor: "middle",
          size: letterPx,
          ink: "ink",
        },
      ];
    });
  }

  /** Filled where it is dark or under the safelight, open where white light may be on. */
  function lights(): readonly Shape[] {
    const shapesOf: Shape[] = [];
    for (let at = 0; at < stays.length; ) {
      const first = stays[at];
      let next = at;
      while (stays[next]?.white === first?.white && next < stays.length) next++;
      const end = stays[next - 1];
      if (first === undefined || end === undefined) break;
      const from = x(first.fromS);
      const width = fixed(Math.max(1, x(end.fromS + end.timeS) - from));
      const box = {
        kind: "rect",
        x: from,
        y: lightY,
        width,
        height: lightPx,
        stroke: "ink",
        strokeWidth: 1.5,
      } as const;
      shapesOf.push(first.white ? { ...box, name: "white light" } : { ...box, fill: "ink", name: "no white light" });
      at = next;
    }
    return shapesOf;
  }

  /** Whole minutes along the foot, as many as have room. */
  function figures(): readonly Shape[] {
    const made: Shape[] = [];
    const least = textWidth({ text: "88 min", size: letterPx }) + letterPx;
    const stepMin = [1, 2, 5, 10, 20, 30, 60, 120, 240].find((minutes) => minutes * 60 * scale >= least) ?? 480;
    const untilS = broken ? (last?.fromS ?? 0) : all;
    for (let minutes = 0; minutes * 60 <= untilS; minutes += stepMin) {
      const words = minutes === 0 ? "0 min" : String(minutes);
      const half = textWidth({ text: words, size: letterPx }) / 2;
      const middle = Math.min(Math.max(x(minutes * 60), half), widthPx - half);
      made.push({
        kind: "text",
        text: words,
        x: fixed(middle),
        y: figuresY,
        anchor: "middle",
        size: letterPx,
        ink: "soft",
        name: `minute ${minutes}`,
      });
    }
    return made;
  }

  function sentence(): string {
    if (steps.length === 0) return "A recipe without steps.";
    const first = stays.find(({ white }) => white);
    const light =
      first === undefined
        ? "no white light at all"
        : first.fromS === 0
          ? "white light from the start"
          : `white light from ${minutesWords(first.fromS)} on`;
    const scaleWords = broken ? "To scale but for the last, which is drawn shorter" : "To scale";
    return `${scaleWords}: ${steps.map(({ name, timeS, visits }) => `${name} ${minutesWords(timeS)}${visits > 1 ? `, ${visits} times` : ""}`).join("; ")}. In all ${minutesWords(all)}; ${light}.`;
  }
}

/** Every stay of one sheet; the steps of a round come by turns. */
function staysOf(steps: readonly StripStep[]): readonly Stay[] {
  const stays: Stay[] = [];
  let fromS = 0;
  for (let at = 0; at < steps.length; ) {
    const first = steps[at];
    if (first === undefined) break;
    let next = at + 1;
    if (first.roundId !== undefined) while (steps[next]?.roundId === first.roundId) next++;
    for (let round = 0; round < first.visits; round++) {
      for (const [place, { timeS, white, roundId }] of steps.slice(at, next).entries()) {
        stays.push({ number: at + place + 1, fromS, timeS, white, roundId });
        fromS += timeS;
      }
    }
    at = next;
  }
  return stays;
}

function minutesWords(timeS: number): string {
  if (timeS < 60) return `${Number(timeS.toFixed(1))} s`;
  const minutes = Math.floor(Math.round(timeS) / 60);
  const seconds = Math.round(timeS) % 60;
  return seconds === 0 ? `${minutes} min` : `${minutes} min ${seconds}`;
}

function fixed(value: number): number {
  return Number(value.toFixed(2));
}
