import { campaignKeys, campaignWays } from "../declare/campaignKeys.ts";
import { number, object, text } from "../declare/fields.ts";

/** The input of `causes`. */
export const causesInput = object(
  {
    ...campaignKeys,
    ask: object(
      {
        sheet: text("Code of one of the sheets; its settings are used."),
        logExposure: number("log10 lx·s", "Image light at the tone asked about."),
      },
      { description: "The tone asked about." },
    ),
  },
  { ways: campaignWays },
);
