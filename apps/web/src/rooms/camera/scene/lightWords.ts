import type { Hours, LampMoved, LightFor } from "@captray/notebook/answers";
import type { Lamp } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { formatStops, showTime } from "@captray/science/notation";

export interface OfferedLight {
  readonly source: string;
  readonly name: string;
}

/** The lights offered whatever lies on the shelf, by day first. */
const usualLights: readonly OfferedLight[] = [
  { source: "daylight:5500", name: "daylight, sun and sky" },
  { source: "daylight:6500", name: "overcast sky" },
  { source: "daylight:10000", name: "open shade under a blue sky" },
  { source: "daylight:5000", name: "low winter sun" },
  { source: "filament:2700", name: "a filament bulb" },
  { source: "whiteLed:2700", name: "a warm white LED" },
  { source: "whiteLed:4000", name: "a white LED" },
  { source: "whiteLed:6500", name: "a cold white LED" },
];

/** Every light that can be chosen: the usual ones, and the lamps of the shelf by their names. */
export function offeredLights({ lamps }: { readonly lamps: readonly Lamp[] }): readonly (OfferedLight & {
  readonly lampId?: string;
})[] {
  const own = lamps.flatMap((lamp) => {
    const source = sourceOf(lamp);
    return source === undefined
      ? []
      : [{ source, name: lamp.name === "" ? "a lamp of the shelf" : lamp.name, lampId: lamp.id }];
  });
  return [...usualLights, ...own];
}

/** The light a lamp gives: as it says, else from its sort and temperature. */
function sourceOf({ source, sort, cctK }: Lamp): string | undefined {
  if (source !== undefined) return source;
  if (sort === undefined || sort === "other" || cctK === undefined) return undefined;
  return `${sort}:${Math.round(cctK.value)}`;
}

/** A light in the words of the page. */
export function lightName(source: string, offered: readonly OfferedLight[]): string {
  return (
    offered.find((one) => one.source === source)?.name ?? source.replace(":", ", ").concat(" K").replace("A K", "A")
  );
}

/** What a light costs against the meter: “+2.1 stops, ±0.3”. */
export function costWords(light: LightFor | undefined): string {
  if (light === undefined) return "";
  if (light.stops === undefined) return "this paper hardly sees it";
  const { value, sd } = light.stops;
  const plusMinus = (1.645 * sd).toFixed(2);
  return sd === 0 ? "already in the EI" : `${formatStops({ stops: value, sd })} ±${plusMinus}`;
}

/** What moving the lamp does, in a sentence. */
export function movedWords(moved: LampMoved, lengthUnit: "mm" | "inch"): string {
  if (moved.kind === "refused") {
    const { code, facts, key } = moved.fault;
    const { message, hint } = messageOf({ code, facts, key, lengthUnit });
    return `${message} ${hint}`;
  }
  const { value, sd } = moved.stops;
  const size = Math.abs(value);
  const figures = `${size.toFixed(2)} stop${size >= 1.005 || size === 0 ? "s" : ""}`;
  const change = size < 0.005 ? "No change" : `${figures} ${value > 0 ? "more" : "less"} time`;
  const doubt = `give or take ${(1.645 * sd).toFixed(2)} for a centimetre at each end`;
  if (moved.time === undefined) return `${change}, ${doubt}.`;
  const { timeS, lowS, highS } = moved.time;
  return `${change}, ${doubt}: ${showTime({ timeS })} instead, nine in ten ${showTime({ timeS: lowS })} to ${showTime({ timeS: highS })}.`;
}

/** The hour, in a head and a sentence. */
export interface HourWords {
  readonly head: string;
  readonly say: string;
}

/** When the cap time lies as wanted, or why it never does on that day. */
export function hourWords({
  hours,
  leastS,
  mostS,
}: {
  readonly hours: Hours;
  readonly leastS: number | undefined;
  readonly mostS: number | undefined;
}): HourWords {
  const { spans, moments, shortestS, longestS, noHour } = hours;
  const runs = `The time runs from ${showTime({ timeS: shortestS })} to ${showTime({ timeS: longestS })} that day`;
  const noon = moments.reduce((a, b) => (b.sunDeg > a.sunDeg ? b : a));
  const doubt = doubtWords(noon);
  const sun = `Sun from ${clock(hours.sunUpMin)} to ${clock(hours.sunDownMin)}, highest ${noon.sunDeg.toFixed(0)}° at ${clock(noon.minute)}.`;
  switch (noHour) {
    case "alwaysShorter":
      return {
        head: "No hour that day: there is always too much light",
        say: `${runs}, never as long as ${showTime({ timeS: leastS ?? longestS })}. Stop down, put a grey filter on, or go into the shade. ${doubt}`,
      };
    case "alwaysLonger":
      return {
        head: "No hour that day: there is never enough light",
        say: `${runs}, never as short as ${showTime({ timeS: mostS ?? shortestS })}. Open the lens, take a faster paper, or wait for a brighter day. ${doubt}`,
      };
    case "between":
      return {
        head: "No hour that day",
        say: `The two times lie too near each other: the light passes through both within minutes. ${doubt}`,
      };
    case undefined: {
      const held = spans.map(({ fromMin, toMin }) => `${clock(fromMin)} to ${clock(toMin)}`).join(" and ");
      const whole = leastS === undefined && mostS === undefined;
      return {
        head: whole ? runs : `From ${held}`,
        say: `${whole ? "" : `${runs}. `}${sun} ${doubt}`,
      };
    }
  }
}

function doubtWords({ timeS, lowS, highS }: Hours["moments"][number]): string {
  return `The sky of one moment is not the model's: at the highest sun ${showTime({ timeS })} may as well be ${showTime({ timeS: lowS })} or ${showTime({ timeS: highS })}, nine in ten. Read the light when you stand there.`;
}

/** Minutes from midnight as a clock says them. */
export function clock(minute: number): string {
  const whole = ((Math.round(minute) % 1440) + 1440) % 1440;
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

/** A latitude or a longitude as people write it: 52.4, −3.1, 52° 24′ N, 3.1 W. */
export function readDegrees(text: string, of: "latitude" | "longitude") {
  if (text.trim() === "") return { kind: "empty" } as const;
  const most = of === "latitude" ? 90 : 180;
  const [plus, minus] = of === "latitude" ? ["N", "S"] : ["E", "W"];
  const parts = /^\s*([+\-−])?\s*(\d{1,3}(?:[.,]\d+)?)\s*°?\s*(?:(\d{1,2}(?:[.,]\d+)?)\s*['′]?)?\s*([NSEW])?\s*$/i.exec(
    text,
  );
  const letter = parts?.[4]?.toUpperCase();
  const [degrees, minutes] = [parts?.[2], parts?.[3]].map((part) => Number(part?.replace(",", ".") ?? 0));
  const size = (degrees ?? 0) + (minutes ?? 0) / 60;
  const fits = letter === undefined || letter === plus || letter === minus;
  if (parts === null || !fits || size > most || (minutes ?? 0) >= 60) {
    const message = `Degrees: 52.4, or 52° 24′ ${plus}; ${minus === "S" ? "south" : "west"} with a minus. At most ${most}.`;
    return { kind: "unreadable", text, at: 0, message } as const;
  }
  const value = (parts[1] === undefined || parts[1] === "+" ? size : -size) * (letter === minus ? -1 : 1);
  return { kind: "read", value, understood: `${Math.abs(value).toFixed(2)}° ${value < 0 ? minus : plus}` } as const;
}
