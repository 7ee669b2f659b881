import * as z from "zod/mini";
import { changeSchema } from "../journal/change.ts";
import { kinds } from "../records/kinds.ts";
import { formatName, formatVersion } from "./formatVersion.ts";

/** A whole notebook as JSON: what is published of the format, made from the definitions of the records. */
export const notebookSchema = z.strictObject({
  schema: z.literal(`${formatName}${formatVersion}`),
  log: z.array(changeSchema),
  records: z.exactOptional(
    z.strictObject(
      Object.fromEntries(Object.entries(kinds).map(([kind, { nested }]) => [kind, z.exactOptional(z.array(nested))])),
    ),
  ),
});
