import type * as z from "zod/mini";
import { type ReadText, readInput } from "../declare/readInput.ts";
import { Refusal } from "./refusal.ts";

/** The input, checked and its notations read, without its `id`; refused where it is at fault. */
export function readChecked(
  declared: z.core.$ZodType,
  raw: unknown,
  readText?: ReadText,
): Readonly<Record<string, unknown>> {
  const result = readInput(declared, raw, readText);
  if ("fault" in result) throw new Refusal(result.fault);
  const { id: _, ...read } = result.value as Readonly<Record<string, unknown>>;
  return read;
}
