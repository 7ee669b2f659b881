import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { formatEv } from "./formatEv.ts";
import { formatFNumber } from "./formatFNumber.ts";
import { formatLength } from "./formatLength.ts";
import { formatStops } from "./formatStops.ts";
import { formatTime } from "./formatTime.ts";
import { markOfFNumber } from "./markOfFNumber.ts";
import { parseEv } from "./parseEv.ts";
import { parseLength } from "./parseLength.ts";
import { parseTime } from "./parseTime.ts";
import { showEv } from "./showEv.ts";
import { showFNumber } from "./showFNumber.ts";
import { showTime } from "./showTime.ts";

// Ten thousand runs take a second; a machine with other work must not fail for that.
vi.setConfig({ testTimeout: 60_000 });

const RUN = { numRuns: 10_000, seed: 20_261_125 };
const positive = fc.double({ min: 5e-324, max: 1e300, noNaN: true, noDefaultInfinity: true });
const timesS = fc.double({ min: -14, max: 20, noNaN: true }).map((stops) => 2 ** stops);

test("a time written is read back to the last digit [property]", () => {
  fc.assert(
    fc.property(
      fc.oneof(
        positive,
        timesS,
        fc.integer({ min: 1, max: 400_000 }),
        fc.integer({ min: 2 }).map((n) => 1 / n),
      ),
      (timeS) => {
        const text = formatTime({ timeS });
        return parseTime({ text }) === timeS && !/e/i.test(text.replace("sec", ""));
      },
    ),
    RUN,
  );
});

test("a time is written as photographers do [common practice]", () => {
  const written = (timeS: number) => formatTime({ timeS });
  expect(written(1 / 60)).toBe("1/60");
  expect(written(2.5)).toBe("2.5 s");
  expect(written(59)).toBe("59 s");
  expect(written(80)).toBe("1m20");
  expect(written(65)).toBe("1m05");
  expect(written(2400)).toBe("40 min");
  expect(written(3900)).toBe("1h05");
  expect(written(7200)).toBe("2 h");
  expect(written(3601)).toBe("1h00m01");
  expect(written(13.020833)).toBe("13.020833 s");
  expect(written(1e-7)).toBe("1/10000000");
});

test("a time shown reads back within 1/12 stop [property]", () => {
  fc.assert(
    fc.property(timesS, (timeS) => {
      const text = showTime({ timeS });
      return Math.abs(Math.log2(parseTime({ text }) / timeS)) <= 1 / 12;
    }),
    RUN,
  );
});

test("a time shown has two figures, from 100 s five-second steps [common practice]", () => {
  const shown = (timeS: number) => showTime({ timeS });
  expect(shown(13.020833)).toBe("13 s");
  expect(shown(54.6)).toBe("55 s");
  expect(shown(1.47)).toBe("1.5 s");
  expect(shown(9)).toBe("9 s");
  expect(shown(99.6)).toBe("1m40");
  expect(shown(161.3)).toBe("2m40");
  expect(shown(3598)).toBe("1 h");
  expect(shown(3900)).toBe("1h05");
  expect(shown(0.4)).toBe("0.4 s");
  expect(shown(0.01667)).toBe("1/60");
  expect(shown(1 / 125)).toBe("1/125");
  expect(shown(0.999)).toBe("1 s");
});

test("an f-number written is read back, marks as marks and measured ones as measured [property]", () => {
  const member = fc
    .tuple(fc.integer({ min: 0, max: 14 }), fc.constantFrom(0, 1 / 3, 1 / 2, 2 / 3))
    .map(([whole, part]) => 2 ** ((whole + part) / 2));
  const mark = fc.constantFrom(1.4, 2.8, 5.6, 11, 13, 22, 45, 90, 1.2, 6.3, 9.5);
  fc.assert(
    fc.property(fc.oneof(positive, member, mark), (fNumber) => {
      const read = markOfFNumber({ text: formatFNumber({ fNumber }) }).fNumber;
      return Math.abs(read / fNumber - 1) < 1e-8;
    }),
    RUN,
  );
  expect(formatFNumber({ fNumber: 2 ** (16 / 6) })).toBe("f/5.6⅓");
  expect(formatFNumber({ fNumber: 128 ** 0.5 })).toBe("f/11");
  expect(formatFNumber({ fNumber: 11 })).toBe("f/11 as cut");
  expect(formatFNumber({ fNumber: 8 })).toBe("f/8");
  expect(formatFNumber({ fNumber: 7.7 })).toBe("f/7.7");
});

test("an f-number shown: its mark, or three figures that are never taken for one [common practice]", () => {
  expect(showFNumber({ fNumber: 128 ** 0.5 })).toBe("f/11");
  expect(showFNumber({ fNumber: 11 })).toBe("f/11.0");
  expect(showFNumber({ fNumber: 14.142136 })).toBe("f/14.1");
  expect(showFNumber({ fNumber: 11.4129 })).toBe("f/11.4");
  expect(showFNumber({ fNumber: 317.38 })).toBe("f/317");
});

test("an exposure value written is read back to the last digit [property]", () => {
  const third = fc.integer({ min: -60, max: 100 }).map((thirds) => thirds / 3);
  fc.assert(
    fc.property(fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), third), (ev) => {
      return parseEv({ text: formatEv({ ev }) }) === ev + 0;
    }),
    RUN,
  );
  expect(formatEv({ ev: 12 + 1 / 3 })).toBe("EV 12⅓");
  expect(formatEv({ ev: -2.5 })).toBe("EV −2½");
  expect(formatEv({ ev: -0.5 })).toBe("EV −½");
  expect(showEv({ ev: 10.8333 })).toBe("EV 10.8");
  expect(showEv({ ev: -0.04 })).toBe("EV 0");
  expect(showEv({ ev: -1.26 })).toBe("EV −1.3");
});

test("stops bear a sign, and two decimals only where the ± is below 0.1 [common practice]", () => {
  expect(formatStops({ stops: 1.0237, sd: 0.02 })).toBe("+1.02");
  expect(formatStops({ stops: -4, sd: 0.18 })).toBe("−4.0");
  expect(formatStops({ stops: 0.643856 })).toBe("+0.64");
  expect(formatStops({ stops: 0, sd: 0.2 })).toBe("0.0");
  expect(formatStops({ stops: -0.004 })).toBe("0.00");
  // 0.1 / 1.6448536 = 0.0607957
  expect(formatStops({ stops: 1, sd: 0.0607 })).toBe("+1.00");
  expect(formatStops({ stops: 1, sd: 0.0609 })).toBe("+1.0");
  expect(() => formatStops({ stops: 1, sd: -1 })).toThrow(expect.objectContaining({ code: "negative" }));
});

test("lengths in mm and inches read back within what they show [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), (lengthMm) => {
      const mm = parseLength({ text: formatLength({ lengthMm, unit: "mm" }) });
      const inch = parseLength({ text: formatLength({ lengthMm, unit: "inch" }) });
      return Math.abs(mm - lengthMm) <= 0.0501 && Math.abs(inch - lengthMm) <= 0.1271;
    }),
    RUN,
  );
  expect(formatLength({ lengthMm: 215.9, unit: "inch" })).toBe("8 1/2 in");
  expect(formatLength({ lengthMm: 248, unit: "mm" })).toBe("248 mm");
  expect(formatLength({ lengthMm: 101.6, unit: "mm" })).toBe("101.6 mm");
  expect(formatLength({ lengthMm: 248, unit: "inch" })).toBe("9.76 in");
  expect(formatLength({ lengthMm: 0.63015871, unit: "mm" })).toBe("0.63 mm");
  expect(formatLength({ lengthMm: 0, unit: "inch" })).toBe("0 in");
});
