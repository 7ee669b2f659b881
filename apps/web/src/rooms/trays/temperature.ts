type Unit = "celsius" | "fahrenheit";

/** Beyond these no bath is worked in, and none is offered. */
const leastC = 5;
const mostC = 40;

/** A temperature as it is read from the thermometer: 20.5 °C, 69 °F. */
export function temperatureWords({ celsius, unit }: { readonly celsius: number; readonly unit: Unit }): string {
  if (unit === "celsius") return `${(Math.round(celsius * 2) / 2).toFixed(1)} °C`;
  return `${Math.round(celsius * 1.8 + 32)} °F`;
}

/** One mark of the thermometer up or down: half a degree Celsius, or one Fahrenheit. */
export function temperatureStep({
  celsius,
  by,
  unit,
}: {
  readonly celsius: number;
  readonly by: 1 | -1;
  readonly unit: Unit;
}): number {
  const next = unit === "celsius" ? Math.round(celsius * 2 + by) / 2 : (Math.round(celsius * 1.8 + 32) + by - 32) / 1.8;
  return Math.min(mostC, Math.max(leastC, next));
}
