import { bath } from "./bath.ts";
import { camera } from "./camera.ts";
import { exposureIndex } from "./exposureIndex.ts";
import { flashLamp } from "./flashLamp.ts";
import { hand } from "./hand.ts";
import { holder } from "./holder.ts";
import { lamp } from "./lamp.ts";
import { lens } from "./lens.ts";
import { meter } from "./meter.ts";
import { paperBox } from "./paperBox.ts";
import { recipe } from "./recipe.ts";
import type { Definition, RecordFrom } from "./record.ts";
import { run } from "./run.ts";
import { scene } from "./scene.ts";
import { sheet } from "./sheet.ts";
import { stock } from "./stock.ts";
import { test } from "./test.ts";

/** Every kind of record. All but the sheets are kept in memory. */
export const kinds = {
  camera,
  lens,
  meter,
  lamp,
  flashLamp,
  holder,
  paperBox,
  exposureIndex,
  recipe,
  stock,
  bath,
  hand,
  scene,
  test,
  run,
  sheet,
} as const;

export type Kind = keyof typeof kinds;
export type ShelfKind = Exclude<Kind, "sheet">;
export type RecordOf<K extends Kind> = RecordFrom<(typeof kinds)[K]>;
export type AnyRecord = { [K in Kind]: RecordOf<K> }[Kind];

const byName = new Map<string, Definition>(Object.entries(kinds));

/** The definition of a kind that came from outside, or undefined where there is no such kind. */
export function definitionOf(kind: string): Definition | undefined {
  return byName.get(kind);
}
