import type { FlashLamp, Scene } from "@captray/notebook/records";
import type { ScaleTick } from "../../../kit/Scale.tsx";

type When = NonNullable<Scene["flash"]>["when"];

/** When the flash is given, in the order of the work. */
export const whenOptions: readonly { readonly value: When; readonly name: string; readonly detail: string }[] = [
  { value: "beforeLoading", name: "before loading", detail: "in the dark" },
  { value: "inCamera", name: "in the camera", detail: "through the lens" },
  { value: "afterExposure", name: "after", detail: "before the first bath" },
];

/** “desk lamp, 2 m, three tissues; strip of 30 Nov”. */
export function flashAside(lamp: FlashLamp | undefined): string {
  if (lamp === undefined) return "";
  const { name, distanceMm, diffuser, dimming, rate } = lamp;
  const distance =
    distanceMm === undefined ? undefined : (distanceMm.text ?? `${Number((distanceMm.value / 1000).toFixed(2))} m`);
  // A name that says where the lamp stands needs no second word of it.
  const more = [distance, diffuser, dimming].filter(
    (word) => word !== undefined && word !== "" && !name.includes(word),
  );
  const setUp = [name, ...more].join(", ");
  return rate?.foundAt === undefined ? setUp : `${setUp}; strip of ${dayWords(rate.foundAt)}`;
}

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** “30 Nov”, on the day it was where it was. */
function dayWords({ at, offsetMin }: { readonly at: number; readonly offsetMin: number }): string {
  const there = new Date(at + offsetMin * 60_000);
  return `${there.getUTCDate()} ${months[there.getUTCMonth()]}`;
}

/** A mark each second, with figures as room allows. */
export function flashTicks({
  most,
  widthPx,
  letterPx,
}: {
  readonly most: number;
  readonly widthPx: number;
  readonly letterPx: number;
}): readonly ScaleTick[] {
  const perSecond = widthPx / most;
  const step = perSecond >= 6 ? 1 : 5;
  let every = step;
  while (every * perSecond < letterPx * 3.2) every *= 2;
  return Array.from({ length: Math.floor(most / step) + 1 }, (_, place) => {
    const at = place * step;
    return at % every === 0 ? { at, words: `${at} s` } : { at };
  });
}
