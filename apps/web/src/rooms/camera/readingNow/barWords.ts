import type { PlanOf } from "@captray/notebook/answers";
import { showTime } from "@captray/science/notation";

type Answer = Extract<PlanOf, { kind: "plan" }>["answer"];

/** A time parted for large figures: the figures, and the unit in small ones. */
export function figuresOf(timeS: number): { readonly figures: string; readonly unit: string } {
  const shown = showTime({ timeS });
  const seconds = /^(.+) s$/.exec(shown);
  if (seconds?.[1] !== undefined) return { figures: seconds[1], unit: "s" };
  if (/^1\/\d+$/.test(shown)) return { figures: shown, unit: "s" };
  return { figures: shown, unit: "" };
}

/** “10 to 61 s”: a range of times, its unit said once where both ends share it. */
export function rangeWords({ low, high }: { readonly low: number; readonly high: number }): string {
  const from = showTime({ timeS: low });
  const to = showTime({ timeS: high });
  if (from === to) return `about ${to}`;
  return from.endsWith(" s") && to.endsWith(" s") ? `${from.slice(0, -2)} to ${to}` : `${from} to ${to}`;
}

/** What the bar says under the range: what is still supposed, or what to do first. */
export function supposes(answer: Answer, extensionSaid: boolean): string | undefined {
  if (!extensionSaid && answer.optics.magnification === 0) return "if the subject is distant; closer asks for more";
  return undefined;
}
