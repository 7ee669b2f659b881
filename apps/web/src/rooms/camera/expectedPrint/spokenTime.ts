import { showTime } from "@captray/science/notation";

/** A time as a voice says it: “13 seconds”, “1 minute 20”, “a 60th of a second”. */
export function spokenTime({ timeS }: { readonly timeS: number }): string {
  const shown = showTime({ timeS });
  const part = /^1\/(\d+)( s)?$/.exec(shown);
  if (part !== null) return `one ${part[1]}th of a second`;
  const minutes = /^(\d+)m0?(\d+)$/.exec(shown);
  if (minutes !== null) return `${counted(minutes[1], "minute")} ${minutes[2]}`;
  const hours = /^(\d+)h0?(\d+)$/.exec(shown);
  if (hours !== null) return `${counted(hours[1], "hour")} ${hours[2]}`;
  return shown
    .replace(/^(.+) s$/, (_, figures) => counted(figures, "second"))
    .replace(/^(.+) min$/, (_, figures) => counted(figures, "minute"))
    .replace(/^(.+) h$/, (_, figures) => counted(figures, "hour"));
}

function counted(figures: string | undefined, unit: string): string {
  return `${figures} ${unit}${figures === "1" ? "" : "s"}`;
}
