import { number, object } from "./fields.ts";

/** An interval of an answer: nine in ten unless said. */
export function intervalOf(description = "Nine in ten.") {
  return object({ low: number("", "From."), high: number("", "To.") }, { description });
}

/** A number of an answer with its standard deviation. */
export function uncertain(unit: string, description: string) {
  return object({ value: number(unit, "Value."), sd: number(unit, "One standard deviation.") }, { description });
}
