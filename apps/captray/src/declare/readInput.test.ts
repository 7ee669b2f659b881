import { describe, expect, it } from "vitest";
import {
  exposureValue,
  fNumber,
  kinds,
  lightSource,
  list,
  notNegative,
  number,
  object,
  optional,
  orNull,
  pair,
  positive,
  preset,
  text,
  time,
  truth,
  whole,
  word,
} from "./fields.ts";
import { notationOf } from "./notation.ts";
import { readInput } from "./readInput.ts";

const declared = object({
  timeS: time("Time."),
  fNumbers: optional(list(fNumber("F-number."), "F-numbers.")),
  ev: optional(exposureValue("EV.")),
  count: optional(whole("", "A count.", { least: 1 })),
  offset: optional(notNegative("", "An offset.")),
  share: optional(number("", "A share.", { least: 0.5, below: 1, codeAbove: "shareTooLarge" })),
  travelMm: optional(number("mm", "Travel.", { least: 0, code: "travelNegative" })),
  power: optional(number("", "A power.", { notZero: true })),
  kind: optional(word(["red", "green"], "A word.")),
  on: optional(truth("Whether.")),
  note: optional(text("A note.")),
  light: optional(lightSource("A light:")),
  rows: optional(list(pair(positive("s", "One."), positive("s", "Two."), "Both."), "Rows.", { leastItems: 2 })),
  few: optional(list(positive("", "One."), "Some.", { leastItems: 1, codeFew: "noReadings" })),
  limit: preset(null, orNull(positive("mm", "A limit."))),
  box: optional(
    object(
      { a: optional(positive("", "A.")), b: optional(positive("", "B.")), c: optional(positive("", "C, with b.")) },
      { ways: { choices: [{ lead: "a" }, { lead: "b", needs: ["c"] }] } },
    ),
  ),
  lens: optional(
    kinds("kind", [
      object({ kind: preset("lens", word(["lens"], "A lens.")), focalLengthMm: positive("mm", "Focal length.") }),
      object({ kind: word(["pinhole"], "A hole."), holeMm: positive("mm", "Hole.") }),
    ]),
  ),
});

function faultOf(input: unknown): string {
  const result = readInput(declared, input);
  return "fault" in result ? `${result.fault.code} ${result.fault.pointer}` : "none";
}

function read(input: unknown): unknown {
  const result = readInput(declared, input);
  return "value" in result ? result.value : result.fault;
}

const timeS = 1;

describe("faults", () => {
  it.each<[string, unknown, string]>([
    ["a number is no document", 5, "wrongType "],
    ["a list is no document", [], "wrongType "],
    ["null is no document", null, "wrongType "],
    ["a required key is missing", {}, "missingKey /timeS"],
    ["a key is not listed", { timeS, bogus: 1 }, "unknownKey /bogus"],
    ["a key that every object inherits is not listed", { timeS, constructor: 1 }, "unknownKey /constructor"],
    ["a key is escaped in its pointer (RFC 6901)", { timeS, "a/b~c": 1 }, "unknownKey /a~1b~0c"],
    ["a key is not listed inside", { timeS, box: { a: 1, x: 1 } }, "unknownKey /box/x"],
    ["truth for a time", { timeS: true }, "wrongType /timeS"],
    ["null where nothing says so", { timeS: null }, "wrongType /timeS"],
    ["text for a plain number", { timeS, offset: "1" }, "wrongType /offset"],
    ["a broken whole number", { timeS, count: 2.5 }, "wrongType /count"],
    ["a number for a text", { timeS, note: 1 }, "wrongType /note"],
    ["a number for a word", { timeS, kind: 1 }, "wrongType /kind"],
    ["a text for truth", { timeS, on: "yes" }, "wrongType /on"],
    ["an object for a list", { timeS, fNumbers: {} }, "wrongType /fNumbers"],
    [
      "a row of three",
      {
        timeS,
        rows: [
          [1, 2, 3],
          [1, 2],
        ],
      },
      "wrongType /rows/0",
    ],
    [
      "a text in a row of numbers",
      {
        timeS,
        rows: [
          [1, "2"],
          [1, 2],
        ],
      },
      "wrongType /rows/0/1",
    ],
    ["a word that is not one of the choices", { timeS, kind: "blue" }, "unknownWord /kind"],
    ["a light that is none", { timeS, light: "moonlight" }, "unknownWord /light"],
    ["a kind of object that is none", { timeS, lens: { kind: "mirror" } }, "unknownWord /lens/kind"],
    ["a time that cannot be read", { timeS: "12 bananas" }, "unreadable /timeS"],
    ["a time divided by nothing", { timeS: "1/0" }, "unreadable /timeS"],
    ["an empty time", { timeS: "" }, "unreadable /timeS"],
    ["an f-number in a list that cannot be read", { timeS, fNumbers: [8, "f/"] }, "unreadable /fNumbers/1"],
    ["an EV that cannot be read", { timeS, ev: "x" }, "unreadable /ev"],
    ["1e400", JSON.parse('{"timeS":1e400}'), "notFinite /timeS"],
    ["−1e400 where whole", JSON.parse('{"timeS":1,"count":-1e400}'), "notFinite /count"],
    ["1e400 where null may stand", JSON.parse('{"timeS":1,"limit":1e400}'), "notFinite /limit"],
    ["0 where more is needed", { timeS: 0 }, "notPositive /timeS"],
    ["−8 in a list", { timeS, fNumbers: [-8] }, "notPositive /fNumbers/0"],
    ["0 where at least 1 is needed", { timeS, count: 0 }, "notPositive /count"],
    ["below 0 where 0 is the least", { timeS, offset: -1 }, "negative /offset"],
    ["below a limit that is above 0", { timeS, share: 0.4 }, "outOfRange /share"],
    ["above a limit with a code of its own", { timeS, share: 1 }, "shareTooLarge /share"],
    ["a limit with a code of its own", { timeS, travelMm: -1 }, "travelNegative /travelMm"],
    ["0 where anything else may stand", { timeS, power: 0 }, "outOfRange /power"],
    ["too few rows", { timeS, rows: [[1, 2]] }, "tooFew /rows"],
    ["too few with a code of its own", { timeS, few: [] }, "noReadings /few"],
    ["no way begun: the first named", { timeS, box: {} }, "missingKey /box/a"],
    ["a way that lacks a part", { timeS, box: { b: 1 } }, "missingKey /box/c"],
    ["two ways: the second given", { timeS, box: { b: 1, a: 1 } }, "twoOfOne /box/b"],
    ["a part of the way not taken", { timeS, box: { a: 1, c: 1 } }, "twoOfOne /box/c"],
    ["a key of the other kind", { timeS, lens: { focalLengthMm: 1, holeMm: 1 } }, "unknownKey /lens/holeMm"],
    ["a key of a kind is missing", { timeS, lens: { kind: "pinhole" } }, "missingKey /lens/holeMm"],
  ])("%s [docs/guide/terminal.md]", (_, input, fault) => {
    expect(faultOf(input)).toBe(fault);
  });
});

describe("order of faults [docs/guide/terminal.md]", () => {
  it("keys come before types, also where the type stands first in the table", () => {
    expect(faultOf({ timeS: true, bogus: 1 })).toBe("unknownKey /bogus");
    expect(faultOf({ timeS: true, box: {} })).toBe("missingKey /box/a");
  });

  it("types come before values", () => {
    expect(faultOf({ timeS: 0, note: 1 })).toBe("wrongType /note");
    expect(faultOf({ timeS: -1, ev: "x" })).toBe("unreadable /ev");
    expect(faultOf({ timeS: -1, kind: "blue" })).toBe("unknownWord /kind");
  });

  it("within a class the order of the table decides, not that of the input", () => {
    expect(faultOf({ offset: -1, timeS: 0 })).toBe("notPositive /timeS");
    expect(faultOf({ note: 1, kind: 1, timeS })).toBe("wrongType /kind");
    expect(faultOf({ lens: {}, box: {}, timeS })).toBe("missingKey /box/a");
  });
});

describe("reading", () => {
  it("what was left out stays left out", () => {
    expect(read({ timeS: 2 })).toEqual({ timeS: 2 });
  });

  it("a number stands as it is, a text is read; a mark of an aperture means its exact member [iso-517, common practice]", () => {
    expect(read({ timeS: 15, fNumbers: [11, "f/11", "f/7.7"], ev: "12⅓" })).toEqual({
      timeS: 15,
      fNumbers: [11, expect.closeTo(2 ** 3.5, 12), 7.7],
      ev: expect.closeTo(12 + 1 / 3, 12),
    });
  });

  it("a time is what was written, never snapped to a dial mark", () => {
    expect(read({ timeS: "15 s" })).toEqual({ timeS: 15 });
    expect(read({ timeS: "1m20" })).toEqual({ timeS: 80 });
  });

  it("null stays where null may stand", () => {
    expect(read({ timeS, limit: null })).toEqual({ timeS, limit: null });
  });
});

describe("which keys are notation", () => {
  it.each([
    ["timeS", "time"],
    ["readingTimeS", "time"],
    ["timesS", "time"],
    ["saidTimeS", "time"],
    ["fNumber", "fNumber"],
    ["markedFNumber", "fNumber"],
    ["fNumbers", "fNumber"],
    ["ev", "exposureValue"],
    ["ev100", "exposureValue"],
    ["evs", "exposureValue"],
    ["timeStops", undefined],
    ["sometimeS", undefined],
    ["level", undefined],
    ["motorSdS", undefined],
    ["fNumberFactor", undefined],
  ])("%s: %s [docs/guide/terminal.md]", (key, notation) => {
    expect(notationOf(key)).toBe(notation);
  });
});
