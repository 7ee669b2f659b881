import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";

export interface BathLabelInput {
  /** What it is: “bleach, acid and peroxide”. */
  readonly title: string;
  /** Strengths and volume, a line each. */
  readonly lines: readonly string[];
  /** “mixed 1 December 2025, 18:40”. */
  readonly mixed: string;
  /** “last hour 00:40”; nothing where it has none. */
  readonly lastHour?: string | undefined;
  /** Must never be closed. */
  readonly isVented: boolean;
  /** Where it goes, and who comes first. */
  readonly foot: readonly string[];
}

/** Two of them find room on A6. */
const bathLabelMm = { width: 89, height: 66 } as const;

const { width, height } = bathLabelMm;
const edge = 3;
const letter = 4.2;
const pitch = 5.1;

/** A label to cut out and tie on: what, how strong, since when, until when; a bath that makes gas says that it is never stoppered. Lengths in mm. */
export function bathLabel(input: BathLabelInput): Drawing {
  const { title, lines, mixed, lastHour, isVented, foot } = input;
  const room = width - 2 * edge;
  const shapes: Shape[] = [{ kind: "rect", x: 0, y: 0, width, height, stroke: "ink", strokeWidth: 0.5, name: "edge" }];
  let y = edge;
  const say = (text: string, size: number, isBold: boolean, name?: string) => {
    y += size * 1.2;
    shapes.push({
      kind: "text",
      text,
      x: edge,
      y: fixed(y),
      anchor: "start",
      size: fitted(text, size, room, isBold),
      isBold,
      ink: "ink",
      name,
    });
  };
  say(title, 6.4, true, "title");
  for (const text of lines) say(text, letter, false);
  say(mixed, letter, false, "mixed");
  if (lastHour !== undefined) say(lastHour, 7.2, true, "last hour");
  if (isVented) {
    y += 2;
    const words = "Vented. Never stopper it.";
    const size = fitted(words, 5.6, room - 4, true);
    shapes.push(
      { kind: "rect", x: edge, y: fixed(y), width: room, height: 8, stroke: "ink", strokeWidth: 0.9, name: "vented" },
      { kind: "text", text: words, x: width / 2, y: fixed(y + 5.9), anchor: "middle", size, isBold: true, ink: "ink" },
    );
    y += 8;
  }
  const wrapped = foot.flatMap((text) => wrap(text, room));
  const from = Math.max(y + 1, height - edge - wrapped.length * pitch);
  for (const [place, text] of wrapped.entries()) {
    const base = fixed(from + (place + 0.8) * pitch);
    if (base > height - 1) break;
    shapes.push({ kind: "text", text, x: edge, y: base, anchor: "start", size: letter, ink: "ink", name: "foot" });
  }
  return {
    width,
    height,
    shapes,
    says: `Label. ${[title, ...lines, mixed, lastHour, ...foot].filter(Boolean).join(". ")}.`,
  };
}

function wrap(words: string, within: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && textWidth({ text: longer, size: letter }) <= within) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** The size asked for, or the largest smaller one that fits. */
function fitted(text: string, size: number, within: number, isBold: boolean): number {
  const wide = textWidth({ text, size, isBold });
  return wide <= within ? size : fixed((size * within) / wide);
}

function fixed(mm: number): number {
  return Number(mm.toFixed(3));
}
