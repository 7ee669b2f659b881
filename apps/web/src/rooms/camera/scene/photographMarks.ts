import type { Scene } from "@captray/notebook/records";

type Mark = NonNullable<Scene["marks"]>[number];
interface Place {
  readonly x: number;
  readonly y: number;
}

const step = 0.02;

/** The marks with one area's set elsewhere, or taken away; every area has one at most. */
export function setMark({
  marks,
  areaId,
  at,
}: {
  readonly marks: readonly Mark[];
  readonly areaId: string;
  readonly at: Place | undefined;
}): readonly Mark[] {
  const others = marks.filter((mark) => mark.areaId !== areaId);
  if (at === undefined) return others;
  return [...others, { areaId: areaId as Mark["areaId"], x: inside(at.x), y: inside(at.y) }];
}

/** Where an arrow key takes a mark; one that is not there yet begins in the middle. */
export function steppedBy({
  key,
  from,
}: {
  readonly key: string;
  readonly from: Place | undefined;
}): Place | undefined {
  const by = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[key];
  if (by === undefined) return undefined;
  const { x, y } = from ?? { x: 0.5, y: 0.5 };
  return { x: inside(x + (by[0] ?? 0)), y: inside(y + (by[1] ?? 0)) };
}

function inside(share: number): number {
  return Number(Math.min(1, Math.max(0, share)).toFixed(3));
}
