import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";

/** How a control patch is treated: what stays on the sheet, and what is cut off. */
export type PatchTreatment = "masked" | "lit" | "cutAfterBleach" | "cutBeforeAll" | "cutAndFixed";

export interface DrawnPatch {
  /** Pencilled on its back: "a". */
  readonly letter: string;
  readonly treatment: PatchTreatment;
  /** For who does not see it: “a, black: masked from all light”. */
  readonly says: string;
}

export interface PatchesDrawingInput {
  readonly widthPx: number;
  /** Of the smallest letters. */
  readonly letterPx: number;
  readonly patches: readonly DrawnPatch[];
  readonly sheet?: { readonly widthMm: number; readonly heightMm: number } | undefined;
}

/** Large enough for ten readings of a scan beside its edges. */
export const patchMm = 15;
const betweenMm = 5;
const edgeMm = 6;
const mostPxPerMm = 1.5;
const gapPx = 28;
const staysOn: ReadonlySet<PatchTreatment> = new Set(["masked", "lit"]);

/** Where control patches lie on a sheet, masked, lit or cut off, and how all of them are laid beside the print for the scan; both in one scale. */
export function patchesDrawing({ widthPx, letterPx, patches, sheet }: PatchesDrawingInput): Drawing {
  // More patches than the sheet is wide for lie in a second row; nobody has more than five.
  const across = patches.length * (patchMm + betweenMm) + betweenMm;
  const widthMm = Math.max(sheet?.widthMm ?? 130, across);
  const heightMm = Math.max(sheet?.heightMm ?? 180, 3 * patchMm);
  const cut = patches.filter(({ treatment }) => !staysOn.has(treatment));
  const beside = cut.length > 0 ? patchMm + betweenMm : 0;
  const letters = Math.max(0, ...patches.map(({ letter }) => textWidth({ text: letter, size: letterPx })));
  const room = widthPx - gapPx - 4 - (cut.length > 0 ? letters + 6 : 0);
  const scale = Math.min(mostPxPerMm, room / (2 * widthMm + beside));
  const px = (mm: number) => fixed(mm * scale);
  const top = fixed(letterPx * 1.5);
  const second = 2 + px(widthMm) + gapPx;
  const patchPx = px(patchMm);
  const rowY = fixed(top + px(heightMm - patchMm - edgeMm));
  const shapes: Shape[] = [
    ...head("before the first bath", 2),
    outline(2, "sheet"),
    ...head("for the scan", second),
    outline(second, "print"),
  ];
  for (const [place, { letter, treatment }] of patches.entries()) {
    const x = 2 + px(betweenMm + place * (patchMm + betweenMm));
    shapes.push(...treated(treatment, x), ...named(letter, x + patchPx / 2, rowY - letterPx * 0.3, "middle"));
    if (staysOn.has(treatment)) {
      const there = second + px(betweenMm + place * (patchMm + betweenMm));
      shapes.push(square(there, rowY, `scanned ${letter}`));
      shapes.push(...named(letter, there + patchPx / 2, rowY - letterPx * 0.3, "middle"));
    }
  }
  for (const [place, { letter }] of cut.entries()) {
    const x = second + px(widthMm + betweenMm);
    const y = fixed(top + place * (patchPx + Math.max(px(betweenMm), letterPx * 0.4)));
    shapes.push(square(x, y, `laid ${letter}`));
    shapes.push(...named(letter, x + patchPx + 5, y + patchPx / 2 + letterPx * 0.35, "start"));
  }
  const lowest = top + px(heightMm);
  const laid = top + cut.length * (patchPx + Math.max(px(betweenMm), letterPx * 0.4));
  return { width: widthPx, height: fixed(Math.max(lowest, laid) + 4), shapes, says: sentence() };

  function head(words: string, x: number): readonly Shape[] {
    if (textWidth({ text: words, size: letterPx }) > px(widthMm) + gapPx / 2) return [];
    return [{ kind: "text", text: words, x, y: letterPx, anchor: "start", size: letterPx, ink: "soft" }];
  }

  function outline(x: number, name: string): Shape {
    const [width, height] = [px(widthMm), px(heightMm)];
    return { kind: "rect", x, y: top, width, height, stroke: "ink", strokeWidth: 2, name };
  }

  function square(x: number, y: number, name: string): Shape {
    return { kind: "rect", x, y, width: patchPx, height: patchPx, stroke: "ink", strokeWidth: 1.5, name };
  }

  function named(letter: string, x: number, y: number, anchor: "start" | "middle"): readonly Shape[] {
    const at = { x: fixed(x), y: fixed(y), anchor, size: letterPx, ink: "ink" } as const;
    return [{ kind: "text", text: letter, isBold: true, name: `letter ${letter}`, ...at }];
  }

  function treated(treatment: PatchTreatment, x: number): readonly Shape[] {
    const y = rowY;
    if (treatment === "masked") {
      // A card over it, a little larger than what it hides.
      return [
        { kind: "rect", x: x - 2, y: y - 2, width: patchPx + 4, height: patchPx + 4, fill: "ink", name: treatment },
      ];
    }
    if (treatment === "lit") return [square(x, y, treatment), sun(x + patchPx / 2, y + patchPx / 2)];
    const cutLines = `M${x} ${y}h${patchPx}v${patchPx}h${-patchPx}z`;
    const marks = { cutAfterBleach: 1, cutBeforeAll: 2, cutAndFixed: 3 }[treatment];
    const step = patchPx / (marks + 1);
    const strokes = Array.from(
      { length: marks },
      (_, place) => `M${fixed(x + (place + 1) * step)} ${fixed(y + patchPx * 0.3)}v${fixed(patchPx * 0.4)}`,
    ).join("");
    return [
      { kind: "path", d: cutLines, stroke: "ink", width: 1.5, dashes: [3, 2], name: treatment },
      { kind: "path", d: strokes, stroke: "ink", width: 2, name: `${treatment} mark` },
    ];
  }

  function sun(x: number, y: number): Shape {
    const r = patchPx * 0.16;
    const rays = [0, 1, 2, 3, 4, 5, 6, 7].map((eighth) => {
      const [dx, dy] = [Math.cos((eighth * Math.PI) / 4), Math.sin((eighth * Math.PI) / 4)];
      return `M${fixed(x + dx * r * 1.5)} ${fixed(y + dy * r * 1.5)}L${fixed(x + dx * r * 2.5)} ${fixed(y + dy * r * 2.5)}`;
    });
    const ring = `M${fixed(x - r)} ${fixed(y)}a${fixed(r)} ${fixed(r)} 0 1 1 ${fixed(2 * r)} 0a${fixed(r)} ${fixed(r)} 0 1 1 ${fixed(-2 * r)} 0`;
    return { kind: "path", d: ring + rays.join(""), stroke: "ink", width: 1.5, name: "sun" };
  }

  function sentence(): string {
    if (patches.length === 0) return "A sheet without control patches.";
    const size = `${patchMm} mm each, along the lower edge of a sheet of ${widthMm} by ${heightMm} mm`;
    const laidWords =
      cut.length === 0
        ? "All stay on the print."
        : `For the scan ${cut.map(({ letter }) => letter).join(", ")} ${cut.length === 1 ? "lies" : "lie"} beside the print.`;
    return `Control patches, ${size}: ${patches.map(({ says }) => says).join("; ")}. ${laidWords}`;
  }
}

function fixed(value: number): number {
  return Number(value.toFixed(2));
}
