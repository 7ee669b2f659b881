import { OutOfDomain } from "../errors/outOfDomain.ts";
import { type Numbers, requireFinite } from "../errors/require.ts";

/** 0 °C in kelvin. */
export const zeroC = 273.15;

/** Refuses a temperature at or below absolute zero. */
export function requireKelvin(temperature: Numbers): void {
  requireFinite(temperature);
  for (const [key, value] of Object.entries(temperature)) {
    if (value <= -zeroC) throw new OutOfDomain("temperatureOutOfRange", { bathC: value }, key);
  }
}
