import { greyOf } from "./greyOf.ts";
import type { Paint } from "./shape.ts";

/** A paint in the words of SVG: the page's tokens where there is a page, else the colour of the text around. */
export function paintOf({ paint }: { readonly paint: Paint }): string {
  if (typeof paint === "object") return greyOf(paint);
  if (paint === "ink") return "currentColor";
  return { soft: "var(--soft, currentColor)", hand: "var(--hand, currentColor)", ...grounds }[paint];
}

const grounds = { rule: "var(--rule, #cccccc)", paper: "var(--paper, #ffffff)", mount: "var(--mount, #f0f0f0)" };
