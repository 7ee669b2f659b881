import type * as z from "zod/mini";
import { about, idKey, kinds, object } from "./fields.ts";
import { isKinds, shapeOf } from "./shapeOf.ts";

type Schema = z.core.$ZodType;

/** A declared input or answer with the `id` that every one may carry, as its first key. */
export function withId(schema: Schema): Schema {
  if (isKinds(schema)) {
    const { discriminator, options } = schema._zod.def;
    return kinds(discriminator, options.map(objectWithId) as unknown as Parameters<typeof kinds>[1]);
  }
  return objectWithId(schema);
}

function objectWithId(schema: Schema): Schema {
  return object({ id: idKey(), ...shapeOf(schema) }, about.get(schema));
}
