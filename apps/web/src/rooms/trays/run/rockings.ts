/** How often it is rocked, from the words of the recipe ("every 15 s", "each half minute"); nothing where they name no interval. */
export function rockEveryS(agitation: string | undefined): number | undefined {
  const found = /\b(?:every|each)\s+(half|\d+(?:[.,]\d+)?)?\s*(s|sec|seconds?|min|minutes?)\b/i.exec(agitation ?? "");
  if (found === null) return undefined;
  const [, count = "1", unit = "s"] = found;
  const value = count.toLowerCase() === "half" ? 0.5 : Number(count.replace(",", "."));
  const seconds = value * (unit.toLowerCase().startsWith("m") ? 60 : 1);
  return seconds >= 3 && seconds <= 3600 ? seconds : undefined;
}

/** The seconds of a stay at which it is rocked: until it is lifted out. */
export function rockingsIn({
  everyS,
  untilS,
}: {
  readonly everyS: number | undefined;
  readonly untilS: number;
}): readonly number[] {
  if (everyS === undefined) return [];
  const count = Math.min(240, Math.floor((untilS - 0.5) / everyS));
  return Array.from({ length: Math.max(0, count) }, (_, place) => (place + 1) * everyS);
}

/** Which edge is raised at the how-manieth rocking: the near left corner first, then its opposite. */
export function edgeOf(place: number): "left" | "right" {
  return place % 2 === 0 ? "right" : "left";
}
