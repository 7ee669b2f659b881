import type { Shape } from "../shapes/shape.ts";

export interface CheckLineInput {
  /** Where it begins, mm from the left and the top of the page. */
  readonly xMm: number;
  readonly yMm: number;
  /** Along the page, or down it: then the words are read from the right. */
  readonly runs: "along" | "down";
}

export const checkLineMm = 100;
/** What the line and its words take up across, mm. */
export const checkLineAcrossMm = 6;

const sizeMm = 3.3;
const tickMm = 2;
const says = "This line is 100 mm. Measure it: if it is not 100 mm, print at 100 %, without fitting.";

/**
 * A line of 100 mm with a stroke across at both ends, and the sentence that says what to do with it.
 *
 * The length counts from the middle of one end stroke to the middle of the other.
 */
export function checkLine({ xMm, yMm, runs }: CheckLineInput): readonly Shape[] {
  const [x, y] = [xMm, yMm];
  const line = { kind: "path", stroke: "ink", width: 0.25 } as const;
  const text = { kind: "text", text: says, anchor: "start", size: sizeMm, ink: "ink" } as const;
  if (runs === "along") {
    return [
      { ...line, d: `M${x} ${y}h${checkLineMm}`, name: "check line" },
      ...[x, x + checkLineMm].map((end) => ({ ...line, d: `M${end} ${y - tickMm / 2}v${tickMm}` })),
      { ...text, x, y: y + checkLineAcrossMm - 1.5 },
    ];
  }
  return [
    { ...line, d: `M${x} ${y}v${checkLineMm}`, name: "check line" },
    ...[y, y + checkLineMm].map((end) => ({ ...line, d: `M${x - tickMm / 2} ${end}h${tickMm}` })),
    { ...text, x: x + 1.7, y, turnDeg: 90 },
  ];
}
