import { expect, test } from "vitest";
import { readDialTime } from "./readDialTime.ts";
import { readEv } from "./readEv.ts";
import { readExposureIndex } from "./readExposureIndex.ts";
import type { ReadAnswer } from "./readField.ts";
import { readFNumber } from "./readFNumber.ts";
import { readIso } from "./readIso.ts";
import { readLength } from "./readLength.ts";
import { readTime } from "./readTime.ts";

const understood = (answer: ReadAnswer) => (answer.kind === "read" ? answer.understood : answer.kind);
const likely = (answer: ReadAnswer) => (answer.kind === "unreadable" ? answer.likely : answer.kind);

test("beside a time stands how it was understood [common practice]", () => {
  const words = (text: string) => understood(readTime({ text }));
  expect(words("1m20")).toBe("one minute twenty, 80 s");
  expect(words("1:20")).toBe("one minute twenty, 80 s");
  expect(words("40 min")).toBe("forty minutes, 2400 s");
  expect(words("1h05")).toBe("one hour five minutes, 3900 s");
  expect(words("1h 1s")).toBe("one hour one second, 3601 s");
  expect(words("2m35")).toBe("two minutes thirty-five, 155 s");
  expect(words("1/60")).toBe("1/60 s, 0.0167 s");
  expect(words("0.5")).toBe("half a second, 0.5 s");
  expect(words("13")).toBe("13 s");
  expect(words(" ")).toBe("empty");
});

test("a dial's 1/15 is 1/16, and says so; the same text with the cap is 1/15 [iso-516 second hand]", () => {
  expect(readDialTime({ text: "1/15" })).toEqual({
    kind: "read",
    value: 1 / 16,
    marked: true,
    understood: "1/16 s exactly, as the dial means it",
  });
  expect(readTime({ text: "1/15" })).toMatchObject({ value: 1 / 15 });
  expect(understood(readDialTime({ text: "1/13" }))).toBe("0.0787 s, as the dial means it");
  expect(understood(readDialTime({ text: "1/8" }))).toBe("1/8 s, a mark of the dial");
  expect(readDialTime({ text: "7 s" })).toMatchObject({ value: 7, marked: false });
});

test("beside an f-number stands its exact member [iso-517 second hand]", () => {
  const words = (text: string) => understood(readFNumber({ text }));
  expect(words("f/5.6⅓")).toBe("f/6.35, a third past f/5.6");
  expect(words("f/8+1/2")).toBe("f/9.51, a half past f/8");
  expect(words("11")).toBe("f/11.3, which the ring calls 11");
  expect(words("8")).toBe("f/8, as marked");
  expect(words("f/7.7")).toBe("f/7.7, as it stands: measured, no mark");
  expect(readFNumber({ text: "11 as cut" })).toMatchObject({ value: 11, marked: false });
});

test("beside the other fields stands the value in its unit [common practice]", () => {
  expect(understood(readLength({ text: "8 1/2 in" }))).toBe("215.9 mm, 8 1/2 in");
  expect(understood(readLength({ text: "24,5 cm" }))).toBe("245 mm");
  expect(understood(readEv({ text: "-2⅓" }))).toBe("EV −2.333");
  expect(understood(readIso({ text: "100/21°" }))).toBe("ISO 100");
  expect(understood(readExposureIndex({ text: "0,7" }))).toBe("EI 0.7");
});

test("what cannot be read keeps its text and offers the likely meaning [common practice]", () => {
  expect(readTime({ text: "1/6o" })).toEqual({
    kind: "unreadable",
    text: "1/6o",
    at: 3,
    message: '"1/6o" is not a time: sign 4 is a letter o.',
    likely: { text: "1/60", understood: "1/60 s, 0.0167 s" },
  });
  expect(likely(readTime({ text: "O.5" }))).toMatchObject({ text: "0.5" });
  expect(likely(readTime({ text: "l/60" }))).toMatchObject({ text: "1/60" });
  expect(likely(readTime({ text: "1:75" }))).toEqual({ text: "1m75", understood: "two minutes fifteen, 135 s" });
  expect(likely(readTime({ text: "1 20" }))).toMatchObject({ text: "1m20" });
  expect(likely(readTime({ text: "12 bananas" }))).toEqual({ text: "12 s", understood: "12 s" });
  expect(likely(readTime({ text: "1 minute and 20 seconds" }))).toMatchObject({
    understood: "one minute twenty, 80 s",
  });
  expect(likely(readTime({ text: "about 9 s" }))).toMatchObject({ text: "9 s" });
  expect(likely(readTime({ text: "1..5" }))).toMatchObject({ text: "1.5" });
  expect(likely(readFNumber({ text: "1:5.6" }))).toMatchObject({ text: "f/5.6" });
  expect(likely(readFNumber({ text: "f:8" }))).toMatchObject({ text: "f/8" });
  expect(likely(readLength({ text: "8-1/2 in" }))).toMatchObject({ understood: "215.9 mm, 8 1/2 in" });
  expect(likely(readLength({ text: "24 centimetres" }))).toMatchObject({ understood: "240 mm" });
  expect(likely(readEv({ text: "12 EV" }))).toMatchObject({ understood: "EV 12" });
});

test("where nothing is likely nothing is offered [edges]", () => {
  for (const text of ["1/0", "-3", "0", "soon", "20s 1m 3"]) {
    expect(likely(readTime({ text }))).toBe(undefined);
  }
  expect(readTime({ text: "0 s" })).toMatchObject({ message: '"0 s" is not a time: it comes to nothing.' });
  expect(readTime({ text: "1/" })).toMatchObject({ message: '"1/" is not a time: something is missing at the end.' });
});
