import * as notation from "@captray/science/notation";
import { number, object, text, time } from "../declare/fields.ts";
import { type Formula, formula } from "./formula.ts";

/** The functions of the notation folder that answer a number. */
export const notationFormulas: readonly Formula[] = [
  formula({
    name: "parseTime",
    does: "Reads a time as photographers write it.",
    input: object({ text: text('Such as "1/60", "1m20", "0,5 s", "1:20".') }),
    output: number("s", "The time that was written."),
    source: "none",
    codes: ["unreadable"],
    example: { text: "1m20" },
    call: notation.parseTime,
  }),
  formula({
    name: "parseFNumber",
    does: "Reads an f-number; a mark means the exact member of its series.",
    input: object({ text: text('Such as "f/11", "5.6", "f/5.6⅓", "f/8+1/2".') }),
    output: number("", "F-number."),
    source: "nominal-and-exact, iso-517, none",
    codes: ["unreadable"],
    example: { text: "f/5.6⅓" },
    call: notation.parseFNumber,
  }),
  formula({
    name: "parseEv",
    does: "Reads an exposure value.",
    input: object({ text: text('Such as "12", "12⅓", "EV 12.3".') }),
    output: number("EV", "Exposure value."),
    source: "none",
    codes: ["unreadable"],
    example: { text: "12⅓" },
    call: notation.parseEv,
  }),
  formula({
    name: "exactDialTime",
    does: "The exact time that a mark of the dial stands for.",
    input: object({ timeS: time("A dial mark of full, third or half stops; 15 stands for 16.") }),
    output: number("s", "The exact member of the series."),
    source: "nominal-and-exact, iso-516, shutter-marks, none",
    codes: ["unknownWord"],
    example: { timeS: "1/15" },
    call: notation.exactDialTime,
  }),
];
