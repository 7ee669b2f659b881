import fc from "fast-check";
import { expect, test } from "vitest";
import { effectiveFNumber } from "../optics/effectiveFNumber.ts";
import { imageExposure } from "./imageExposure.ts";
import { luminanceFromReading } from "./luminanceFromReading.ts";
import { meteredExposure } from "./meteredExposure.ts";

const fixed = { seed: 20261125 };
const subject = { luminanceCdM2: 200, fNumber: 8, timeS: 4, magnification: 0.25, transmission: 0.7, vignetting: 1 };

test("4000 cd/m², f/8, 1/250 s, flare 0.0015: 0.16439 lx·s [iso-12232 2006, worked example in colour-hdri]", () => {
  const exposure = imageExposure({ luminanceCdM2: 4000, fNumber: 8, timeS: 1 / 250, flareLxS: 0.0015 });
  // The example prints 0.1643937…
  expect(exposure).toBeCloseTo(0.1643937, 7);
});

test("close up at a quarter of life size [iso-12232, greivenkamp-2004; by hand]", () => {
  expect(imageExposure({ ...subject, offAxisDeg: 0 })).toBeCloseTo(4.3982297, 7);
  const standard = { luminanceCdM2: 200, fNumber: 8, timeS: 4, magnification: 0.25 };
  expect(imageExposure({ ...standard, offAxisDeg: 25 })).toBeCloseTo(3.7389641, 7);
});

test("flare and flash add to the picture, also where there is none [by hand]", () => {
  const plain = imageExposure({ ...subject });
  expect(imageExposure({ ...subject, flareLxS: 0.3, flashLxS: 0.2 })).toBeCloseTo(plain + 0.5, 12);
  expect(imageExposure({ ...subject, luminanceCdM2: 0, flareLxS: 0.3, flashLxS: 0.2 })).toBeCloseTo(0.5, 12);
});

test("the extension counts once: N with m is N_e without, which is a pinhole's v / d [property]", () => {
  const positive = fc.double({ min: 0.1, max: 3, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 0, max: 2, noNaN: true }), positive, (magnification, pupilRatio) => {
      const racked = imageExposure({ luminanceCdM2: 50, fNumber: 8, timeS: 2, magnification, pupilRatio });
      const fNumber = effectiveFNumber({ fNumber: 8, magnification, pupilRatio });
      expect(imageExposure({ luminanceCdM2: 50, fNumber, timeS: 2 }) / racked).toBeCloseTo(1, 9);
    }),
    fixed,
  );
});

test("a tone exposed as metered gets q K / EI, whatever meter and light [property]", () => {
  const number = fc.double({ min: 0.05, max: 100, noNaN: true });
  fc.assert(
    fc.property(number, number, number, (fNumber, timeS, exposureIndex) => {
      const luminanceCdM2 = luminanceFromReading({ fNumber, timeS, iso: exposureIndex });
      const glass = { transmission: 0.65 / (Math.PI / 4), vignetting: 1, offAxisDeg: 0 };
      const exposure = imageExposure({ luminanceCdM2, fNumber, timeS, ...glass });
      expect(exposure / meteredExposure({ exposureIndex })).toBeCloseTo(1, 9);
    }),
    fixed,
  );
});

test("what cannot be is refused at its key, the first in the order of the input", () => {
  const refused = (more: object, code: string, key: string) =>
    expect(() => imageExposure({ ...subject, ...more })).toThrow(expect.objectContaining({ code, key }));
  refused({ luminanceCdM2: -1 }, "negative", "luminanceCdM2");
  refused({ fNumber: 0 }, "notPositive", "fNumber");
  refused({ timeS: 0 }, "notPositive", "timeS");
  refused({ magnification: -0.1 }, "negative", "magnification");
  refused({ pupilRatio: 0 }, "notPositive", "pupilRatio");
  refused({ transmission: 1.1 }, "transmissionOutOfRange", "transmission");
  refused({ offAxisDeg: 90 }, "offAxisAngle", "offAxisDeg");
  refused({ flareLxS: -1 }, "negative", "flareLxS");
  refused({ flashLxS: -1 }, "negative", "flashLxS");
  refused({ luminanceCdM2: -1, timeS: 0 }, "negative", "luminanceCdM2");
});
