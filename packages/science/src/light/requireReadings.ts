import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";

/** Refuses a list without readings and names the reading that is not a number. Inner helper. */
export function requireReadings(lists: Readonly<Record<string, readonly number[]>>): void {
  for (const [key, list] of Object.entries(lists)) {
    if (list.length === 0) throw new OutOfDomain("noReadings", { [key]: list });
    for (const [index, value] of list.entries()) requireFinite({ [`${key}/${index}`]: value });
  }
}
