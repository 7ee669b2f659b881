import type { Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { acrossOf } from "./placesOf.ts";
import type { ToneDrawingInput } from "./toneTypes.ts";

const apartPx = 7;
const mostRows = 6;

interface Label {
  readonly text: string;
  readonly width: number;
  /** Where its area stands. */
  readonly at: number;
  /** Where the words are centred. */
  x: number;
  row: number;
}

/** The areas' names under the axis: in as few rows as keep each near its plumb line, none over another. */
export function nameShapes(input: ToneDrawingInput): {
  readonly height: number;
  readonly shapesBelow: (axisY: number) => Shape[];
} {
  const { letterPx, leastNameRows = 1 } = input;
  const { labels, rows } = placed(input);
  const rowPx = letterPx * 1.27;
  const firstBase = letterPx * 2.93;
  return {
    height: firstBase + (Math.max(rows, leastNameRows) - 1) * rowPx + letterPx * 0.5,
    shapesBelow: (axisY) => {
      const leaders: Shape[] = [];
      const words: Shape[] = [];
      for (const { text, at, x, row, width } of labels) {
        const base = axisY + firstBase + row * rowPx;
        const isUnder = Math.abs(at - x) <= width / 2 + 4;
        if (row > 0 || !isUnder) {
          const d = `M${at} ${axisY + letterPx * 1.93}L${x} ${base - letterPx * 0.87}`;
          leaders.push({ kind: "path", d, stroke: "ink", width: 0.8, name: `leader ${text}` });
        }
        // A leader to a lower row must not strike through the words of an upper one.
        const ground = { x: x - width / 2 - 1, y: base - letterPx * 0.8, width: width + 2, height: letterPx };
        if (row < rows - 1) words.push({ kind: "rect", ...ground, fill: "paper" });
        words.push({
          kind: "text",
          text,
          x,
          y: base,
          anchor: "middle",
          size: letterPx,
          isBold: true,
          ink: "ink",
          name: `name ${text}`,
        });
      }
      return [...leaders, ...words];
    },
  };
}

function placed(input: ToneDrawingInput): { readonly labels: readonly Label[]; readonly rows: number } {
  const { letterPx, widthPx, areas } = input;
  const across = acrossOf(input);
  const inside = (stops: number) => across.x(Math.min(across.toStops, Math.max(across.fromStops, stops)));
  const labels = areas
    .map(({ name, stops }): Label => {
      const text = shortened(name);
      return { text, width: textWidth({ text, size: letterPx, isBold: true }), at: inside(stops), x: 0, row: 0 };
    })
    .sort((one, other) => one.at - other.at || one.text.localeCompare(other.text));
  for (let rows = 1; ; rows++) {
    // Neighbours go to different rows, so that each row has the most room.
    for (const [index, label] of labels.entries()) label.row = (labels.length - 1 - index) % rows;
    const furthest = spread(labels, rows, widthPx);
    if (rows >= mostRows || rows >= labels.length || furthest <= letterPx * 1.1) return { labels, rows };
  }
}

/** Moves the words of each row apart, as little as it takes, and inside the drawing; gives the furthest move. */
function spread(labels: readonly Label[], rows: number, widthPx: number): number {
  let furthest = 0;
  for (let row = 0; row < rows; row++) {
    const line = labels.filter((label) => label.row === row);
    for (const group of grouped(line, widthPx)) {
      let edge = group.left;
      for (const label of group.labels) {
        label.x = edge + label.width / 2;
        edge += label.width + apartPx;
        furthest = Math.max(furthest, Math.abs(label.x - label.at));
      }
    }
  }
  return furthest;
}

interface Group {
  readonly labels: readonly Label[];
  readonly width: number;
  readonly left: number;
}

/** Words that would touch stand as one group, as near their marks as they can on the whole. */
function grouped(line: readonly Label[], widthPx: number): readonly Group[] {
  const groups: Group[] = [];
  for (const label of line) {
    let group = groupOf([label], widthPx);
    let before = groups.at(-1);
    while (before !== undefined && before.left + before.width + apartPx > group.left) {
      groups.pop();
      group = groupOf([...before.labels, ...group.labels], widthPx);
      before = groups.at(-1);
    }
    groups.push(group);
  }
  return groups;
}

function groupOf(labels: readonly Label[], widthPx: number): Group {
  let width = -apartPx;
  let wish = 0;
  for (const label of labels) {
    width += apartPx;
    wish += label.at - label.width / 2 - width;
    width += label.width;
  }
  const left = Math.max(0, Math.min(widthPx - width, wish / labels.length));
  return { labels, width, left };
}

function shortened(name: string): string {
  const signs = [...name];
  return signs.length <= 14 ? name : `${signs.slice(0, 13).join("").trimEnd()}…`;
}
