import type { Shape } from "../shapes/shape.ts";
import type { DrawnFault } from "./faultWords.ts";

/** Where a mark is drawn, in px. */
export interface MarkBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
export type Edge = "left" | "right" | "top" | "bottom";

/** Turns shares of the box into the px of a path. */
type At = (x: number, y: number) => string;

/**
 * The mark of a fault, drawn into its box: told apart by its shape alone, in one ink.
 *
 * A scratch runs along the longer side of its box, a light leak opens away from `from`, the edge the light came in by.
 */
export function faultShapes(what: DrawnFault, box: MarkBox, from: Edge = "left", name: string = what): Shape[] {
  const at: At = (x, y) => `${fixed(box.x + x * box.width)} ${fixed(box.y + y * box.height)}`;
  const long = box.height > box.width;
  const line = (d: string, width = 2, dashes?: readonly number[]): Shape => ({
    kind: "path",
    d,
    stroke: "ink",
    width,
    name,
    ...(dashes && { dashes }),
  });
  switch (what) {
    case "scratch": {
      const along: At = (x, y) => (long ? at(y, x) : at(x, y));
      return [
        line(`M${along(0, 0.62)}L${along(1, 0.38)}`),
        line(`M${along(0.14, 0.9)}L${along(0.78, 0.72)}`, 1.2),
        line(`M${along(0.3, 0.3)}L${along(0.9, 0.12)}`, 1.2),
      ];
    }
    case "tongMark":
      return [
        line(
          `M${at(0, 0.12)}L${at(0.36, 0.12)}L${at(0.36, 0.88)}L${at(0, 0.88)}M${at(1, 0.12)}L${at(0.64, 0.12)}L${at(0.64, 0.88)}L${at(1, 0.88)}`,
          3,
        ),
      ];
    case "stain":
      return [line(blob(at))];
    case "residue":
      return [line(crosses(box), 2)];
    case "fog":
      return [line([0.2, 0.5, 0.8].map((y) => wave(box, y)).join(""))];
    case "uneven":
      return [line([0.02, 0.1, 0.2, 0.33, 0.5, 0.72, 0.98].map((x) => `M${at(x, 0.04)}L${at(x, 0.96)}`).join(""), 1.6)];
    case "finger": {
      const ridge = (by: number) =>
        `M${at(by, 1)}C${at(by, 1.3 * by - 0.28)} ${at(1 - by, 1.3 * by - 0.28)} ${at(1 - by, 1)}`;
      return [line(`${[0, 0.16, 0.32].map(ridge).join("")}M${at(0.5, 0.62)}L${at(0.5, 1)}`, 1.6)];
    }
    case "lightLeak": {
      const away: Readonly<Record<Edge, At>> = {
        left: at,
        right: (x, y) => at(1 - x, y),
        top: (x, y) => at(y, x),
        bottom: (x, y) => at(y, 1 - x),
      };
      const ray = away[from];
      return [line([0, 0.3, 0.7, 1].map((y) => `M${ray(0, 0.5)}L${ray(1, y)}`).join(""), 1.8)];
    }
    case "blister":
      return [line(ring(box, 1)), line(`M${at(0.24, 0.46)}C${at(0.26, 0.3)} ${at(0.36, 0.22)} ${at(0.52, 0.2)}`, 2)];
    case "dust":
      return [
        [0.16, 0.22],
        [0.62, 0.12],
        [0.88, 0.5],
        [0.4, 0.56],
        [0.1, 0.84],
        [0.7, 0.88],
      ].map(
        ([x = 0, y = 0]): Shape => ({
          kind: "circle",
          x: fixed(box.x + x * box.width),
          y: fixed(box.y + y * box.height),
          radius: 2.2,
          fill: "ink",
          stroke: "ink",
          strokeWidth: 0,
          name,
        }),
      );
    case "waterMark":
      return [
        line(
          `M${at(0.5, 0)}C${at(0.6, 0.25)} ${at(0.95, 0.45)} ${at(0.95, 0.68)}C${at(0.95, 1.1)} ${at(0.05, 1.1)} ${at(0.05, 0.68)}C${at(0.05, 0.45)} ${at(0.4, 0.25)} ${at(0.5, 0)}Z`,
        ),
      ];
    case "unbleached":
      return [line(`M${at(0, 0)}L${at(1, 0)}L${at(1, 1)}L${at(0, 1)}Z`, 2), line(hatching(box), 1.2)];
    case "other":
      return [line(`M${at(0.5, 0)}L${at(1, 0.5)}L${at(0.5, 1)}L${at(0, 0.5)}Z`, 2, [5, 4])];
  }
}

/** A closed line that bulges five times. */
function blob(at: At): string {
  const bulges = 5;
  const point = (turn: number, radius: number) =>
    at(0.5 + radius * Math.cos(2 * Math.PI * turn), 0.5 + radius * Math.sin(2 * Math.PI * turn));
  const arcs = Array.from(
    { length: bulges },
    (_, k) => `Q${point((k + 0.5) / bulges, 0.54)} ${point((k + 1) / bulges, 0.38)}`,
  );
  return `M${point(0, 0.38)}${arcs.join("")}Z`;
}

/** Small crosses like the five of a die; they stay small in a large box. */
function crosses({ x, y, width, height }: MarkBox): string {
  const arm = Math.min(5, 0.12 * Math.min(width, height) + 2);
  return [
    [0.15, 0.15],
    [0.85, 0.15],
    [0.5, 0.5],
    [0.15, 0.85],
    [0.85, 0.85],
  ]
    .map(([u = 0, v = 0]) => {
      const [a, b] = [x + u * width, y + v * height];
      return `M${fixed(a - arm)} ${fixed(b)}L${fixed(a + arm)} ${fixed(b)}M${fixed(a)} ${fixed(b - arm)}L${fixed(a)} ${fixed(b + arm)}`;
    })
    .join("");
}

/** Short waves side by side across the box; in a large one there are more of them, not larger ones. */
function wave({ x, y, width, height }: MarkBox, down: number): string {
  const waves = Math.max(2, Math.round(width / 26));
  const [half, rise] = [width / waves / 2, Math.min(9, 0.2 * height)];
  const level = y + down * height;
  const swings = Array.from({ length: 2 * waves }, (_, k) => {
    const top = level + (k % 2 === 0 ? -rise : rise);
    return `Q${fixed(x + (k + 0.5) * half)} ${fixed(top)} ${fixed(x + (k + 1) * half)} ${fixed(level)}`;
  });
  return `M${fixed(x)} ${fixed(level)}${swings.join("")}`;
}

function ring({ x, y, width, height }: MarkBox, share: number): string {
  const [rx, ry] = [(share * width) / 2, (share * height) / 2];
  const [left, right, middle] = [x + width / 2 - rx, x + width / 2 + rx, y + height / 2];
  const arc = `A${fixed(rx)} ${fixed(ry)} 0 1 0`;
  return `M${fixed(left)} ${fixed(middle)}${arc} ${fixed(right)} ${fixed(middle)}${arc} ${fixed(left)} ${fixed(middle)}Z`;
}

/** Slanting lines, 7 px apart, cut at the frame. */
function hatching({ x, y, width, height }: MarkBox): string {
  const step = 7;
  const lines: string[] = [];
  for (let shift = step; shift < width + height; shift += step) {
    const [fromX, fromY] = shift < height ? [0, shift] : [shift - height, height];
    const [toX, toY] = shift < width ? [shift, 0] : [width, shift - width];
    lines.push(`M${fixed(x + fromX)} ${fixed(y + fromY)}L${fixed(x + toX)} ${fixed(y + toY)}`);
  }
  return lines.join("");
}

function fixed(value: number): number {
  return Number(value.toFixed(2));
}
