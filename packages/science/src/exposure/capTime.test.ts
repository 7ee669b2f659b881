import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/exposure/checking.ts";
import peer from "../../fixtures/exposure/ledgers.json";
import published from "../../fixtures/exposure/published.json";
import { capTime } from "./capTime.ts";

describe("capTime", () => {
  it("12 in lens at 27 in, meter 7 s: 35.4 s [army-ss0511 p. 73]", () => {
    const { focalLengthIn, extensionIn, meteredS, neededS, toleranceS } = published.copying;
    const magnification = extensionIn / focalLengthIn - 1;
    const given = capTime({ readingTimeS: meteredS, exposureIndex: 100, fNumber: 22, magnification });
    expectClose(given, neededS, 0, toleranceS);
  });

  it("pinhole of f/280, meter read at f/128: 4.785 times as long [pinhole-post]", () => {
    const { fNumber, readingFNumber, factor, tolerance } = published.pinhole;
    expectClose(capTime({ readingTimeS: 1, exposureIndex: 4, fNumber, readingFNumber }), factor, 0, tolerance);
  });

  it("magnification 0.5: ½ s times 2¼ [closeup-textbook]", () => {
    const { magnification, meteredS, factor } = published.closeUp;
    expectClose(capTime({ readingTimeS: meteredS, exposureIndex: 3, fNumber: 16, magnification }), meteredS * factor);
  });

  it("forty invented ledgers [peer: runners/exposure.py, factors multiplied]", () => {
    for (const row of peer.rows) expectClose(capTime(row.in), row.timeS, 1e-12);
  });

  it("2 s at f/8, dial 6, EI 3, f/11, m 0.5, ND 0.3, filter 1, place −1, p 0.9: 53.466348 s [by hand]", () => {
    const asked = {
      readingTimeS: 2,
      readingFNumber: 8,
      dialIso: 6,
      exposureIndex: 3,
      fNumber: 11.313708,
      magnification: 0.5,
      neutralDensity: 0.3,
      filterStops: 1,
      placeStops: -1,
      reciprocityExponent: 0.9,
    };
    expectClose(capTime(asked), 53.466348);
  });

  it("a meter supposes 90 % of the light to come through: glass of 0.9 changes nothing [iso-12232]", () => {
    const asked = { readingTimeS: 2, exposureIndex: 3, fNumber: 8 };
    expect(capTime({ ...asked, transmission: 0.9 })).toBe(2);
    expectClose(capTime({ ...asked, transmission: 0.45 }), 4);
  });

  it("f/22 marked is 22.627, squared 512, not 484 [iso-517; by hand]", () => {
    const asked = { readingTimeS: 1, exposureIndex: 3, readingFNumber: 8 };
    expectClose(capTime({ ...asked, fNumber: 22.627417 }), 8);
    expectClose(Math.log2(8 / capTime({ ...asked, fNumber: 22 })), 0.081136763, 1e-6);
  });

  it("density before the long exposure: the rule acts on the whole [by hand]", () => {
    const asked = {
      readingTimeS: 8,
      exposureIndex: 3,
      fNumber: 8,
      neutralDensity: Math.log10(4),
      reciprocityExponent: 0.8,
    };
    expectClose(capTime(asked), 32 ** 1.25, 1e-12);
  });

  it("trading ISO against time leaves the time, and a paper twice as fast halves it [property]", () => {
    fc.assert(
      fc.property(
        some.timeS,
        some.iso,
        some.exposureIndex,
        some.fNumber,
        (readingTimeS, dialIso, exposureIndex, fNumber) => {
          const given = capTime({ readingTimeS, dialIso, exposureIndex, fNumber });
          expectClose(
            capTime({ readingTimeS: readingTimeS / 2, dialIso: dialIso * 2, exposureIndex, fNumber }),
            given,
            1e-12,
          );
          expectClose(capTime({ readingTimeS, dialIso, exposureIndex: exposureIndex * 2, fNumber }), given / 2, 1e-12);
        },
      ),
      seeded,
    );
  });

  it("refuses glass that lets through more than there is, and the other impossible values", () => {
    const asked = { readingTimeS: 2, exposureIndex: 3, fNumber: 8 };
    expectRefusal(() => capTime({ ...asked, transmission: 1.1 }), "transmissionOutOfRange", "transmission");
    expectRefusal(() => capTime({ ...asked, transmission: 0 }), "notPositive", "transmission");
    expectRefusal(() => capTime({ ...asked, reciprocityExponent: 0.5 }), "exponentOutOfRange", "reciprocityExponent");
    expectRefusal(() => capTime({ ...asked, fNumber: 0 }), "notPositive", "fNumber");
    expectRefusal(() => capTime({ ...asked, magnification: -0.1 }), "negative", "magnification");
    expectRefusal(() => capTime({ ...asked, placeStops: Number.NaN }), "notFinite", "placeStops");
  });
});
