import type { Fault, FaultKind, Moment } from "@captray/notebook/records";

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What a press does to a fault that is marked already. */
export type FaultChange =
  | { readonly do: "larger" | "smaller" | "turn" }
  | { readonly do: "moveTo"; readonly to: Point }
  | { readonly do: "say"; readonly words: string }
  | { readonly do: "isRather"; readonly what: FaultKind };

/** How large a fault is drawn at first, as shares of the sheet's shorter side; a press makes it larger or smaller. */
const firstSize: Readonly<Record<FaultKind, readonly [across: number, down: number]>> = {
  scratch: [0.35, 0.06],
  tongMark: [0.12, 0.08],
  stain: [0.14, 0.14],
  residue: [0.25, 0.25],
  fog: [0.6, 0.4],
  uneven: [0.5, 0.4],
  finger: [0.12, 0.14],
  lightLeak: [0.25, 0.25],
  blister: [0.08, 0.08],
  dust: [0.2, 0.2],
  waterMark: [0.1, 0.13],
  unbleached: [0.2, 0.2],
  other: [0.14, 0.14],
};
const growth = Math.SQRT2;
const least = 0.02;

/** The faults of a sheet and one more. `high`: the sheet's height ÷ its width. */
export function markFault({
  faults,
  what,
  at,
  id,
  noticedAt,
  high,
}: {
  readonly faults: readonly Fault[];
  readonly what: FaultKind;
  readonly at: Point;
  readonly id: Fault["id"];
  readonly noticedAt: Moment;
  readonly high: number;
}): readonly Fault[] {
  const [across, down] = firstSize[what];
  const shorter = Math.min(1, high);
  const fault: Fault = {
    id,
    what,
    x: share(at.x),
    y: share(at.y),
    width: size(across * shorter),
    height: size((down * shorter) / high),
    noticedAt: { ...noticedAt },
  };
  return [...faults, fault];
}

/** The faults with one of them changed; the others are the same objects. */
export function changeFault({
  faults,
  id,
  change,
  high,
}: {
  readonly faults: readonly Fault[];
  readonly id: string;
  readonly change: FaultChange;
  readonly high: number;
}): readonly Fault[] {
  return faults.map((fault) => (fault.id === id ? changed(fault, change, high) : fault));
}

function changed(fault: Fault, change: FaultChange, high: number): Fault {
  switch (change.do) {
    case "larger":
      return { ...fault, width: size(fault.width * growth), height: size(fault.height * growth) };
    case "smaller":
      return { ...fault, width: size(fault.width / growth), height: size(fault.height / growth) };
    case "turn":
      // Turned on the paper, not in shares of it: what was wide is high by as many millimetres.
      return { ...fault, width: size(fault.height * high), height: size(fault.width / high) };
    case "moveTo":
      return { ...fault, x: share(change.to.x), y: share(change.to.y) };
    case "isRather":
      return { ...fault, what: change.what };
    case "say": {
      const { words: _, ...bare } = fault;
      return change.words === "" ? bare : { ...bare, words: change.words };
    }
  }
}

/** Where the cross goes by a key: a twentieth of the sheet, with Shift a hundredth; nothing for another key. */
export function crossMoved({
  cross,
  key,
  isFine,
}: {
  readonly cross: Point;
  readonly key: string;
  readonly isFine: boolean;
}): Point | undefined {
  const by = isFine ? 0.01 : 0.05;
  const steps: Readonly<Record<string, readonly [number, number]>> = {
    ArrowLeft: [-by, 0],
    ArrowRight: [by, 0],
    ArrowUp: [0, -by],
    ArrowDown: [0, by],
  };
  const step = steps[key];
  return step && { x: share(cross.x + step[0]), y: share(cross.y + step[1]) };
}

function share(value: number): number {
  return Number(Math.min(1, Math.max(0, value)).toFixed(4));
}

function size(value: number): number {
  return Number(Math.min(1, Math.max(least, value)).toFixed(4));
}
