import { type Numbers, requireWithin } from "../errors/require.ts";

/** Refuses the temperature of a bath in which no development is known to work as written. */
export function requireBath(bathC: Numbers): void {
  requireWithin(bathC, { least: 14, most: 28, code: "temperatureOutOfRange" });
}
