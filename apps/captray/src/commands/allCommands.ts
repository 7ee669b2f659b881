import { causes } from "./causes.ts";
import type { Command } from "./command.ts";
import { effects } from "./effects.ts";
import { expect } from "./expect.ts";
import { fit } from "./fit.ts";
import { formula } from "./formula.ts";
import { measure } from "./measure.ts";
import { mix } from "./mix.ts";
import { next } from "./next.ts";
import { plan } from "./plan.ts";
import { run } from "./run.ts";
import { schemaCommand } from "./schema.ts";
import { timetable } from "./timetable.ts";

/** Every command, in the order of the help. A new one is a file of its own and a place in this list. */
export const allCommands: readonly Command[] = [
  plan,
  expect,
  fit,
  causes,
  next,
  effects,
  measure,
  mix,
  timetable,
  run,
  formula,
  schemaCommand(() => allCommands),
];
