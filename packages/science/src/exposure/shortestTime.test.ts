import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/exposure/checking.ts";
import { bellowsStops } from "../optics/bellowsStops.ts";
import { shortestTime } from "./shortestTime.ts";
import { stopsFromDensity } from "./stopsFromDensity.ts";
import { timeLevers } from "./timeLevers.ts";
import { timingErrorStops } from "./timingErrorStops.ts";

describe("shortestTime", () => {
  it("0.3 s: 1.4541966 s for a third, 1.0242641 s for a half; 0.2 s for a quarter: 1.2570427 s [by hand]", () => {
    expectClose(shortestTime({ errorS: 0.3, toleranceStops: 1 / 3 }), 1.4541966);
    expectClose(shortestTime({ errorS: 0.3, toleranceStops: 0.5 }), 1.0242641);
    expectClose(shortestTime({ errorS: 0.2, toleranceStops: 0.25 }), 1.2570427);
  });

  it("there the error costs just the tolerance, on the short side [property]", () => {
    const positive = fc.double({ min: 0.01, max: 2, noNaN: true });
    fc.assert(
      fc.property(positive, positive, (errorS, toleranceStops) => {
        const timeS = shortestTime({ errorS, toleranceStops });
        expectClose(timingErrorStops({ timeS, errorS: -errorS }), -toleranceStops, 1e-9);
      }),
      seeded,
    );
  });

  it("refuses an error or a tolerance of nothing", () => {
    expectRefusal(() => shortestTime({ errorS: 0, toleranceStops: 0.5 }), "notPositive", "errorS");
    expectRefusal(() => shortestTime({ errorS: 0.3, toleranceStops: 0 }), "notPositive", "toleranceStops");
  });
});

describe("timeLevers", () => {
  it("0.4 s to 2 s at m 0.2: 2.3219281 stops, D 0.69897, m 1.6832816 [by hand]", () => {
    const levers = timeLevers({ timeS: 0.4, minimumTimeS: 2, magnification: 0.2 });
    expectClose(levers.stops, 2.3219281);
    expectClose(levers.neutralDensity, 0.69897, 1e-6);
    expectClose(levers.magnification, 1.6832816);
    expectClose(levers.lightFraction, 0.2);
    expectClose(levers.fNumberFactor, Math.sqrt(5));
    expectClose(levers.lampDistanceFactor, Math.sqrt(5));
  });

  it("each lever alone gives the stops asked for [greivenkamp-2004; property]", () => {
    const time = fc.double({ min: 0.01, max: 5, noNaN: true });
    fc.assert(
      fc.property(
        time,
        fc.constantFrom(0, 0.25, 1),
        fc.constantFrom(0.8, 1, 1.3),
        (timeS, magnification, pupilRatio) => {
          const levers = timeLevers({ timeS, minimumTimeS: 6, magnification, pupilRatio });
          const more = bellowsStops({ magnification: levers.magnification, pupilRatio });
          expectClose(more - bellowsStops({ magnification, pupilRatio }), levers.stops, 1e-9);
          expectClose(stopsFromDensity({ density: levers.neutralDensity }), levers.stops, 1e-9);
          expectClose(timeS * levers.fNumberFactor ** 2, 6, 1e-9);
          expectClose(timeS / levers.lightFraction, 6, 1e-9);
        },
      ),
      seeded,
    );
  });

  it("a time long enough changes nothing [by hand]", () => {
    const none = {
      stops: 0,
      neutralDensity: 0,
      lightFraction: 1,
      magnification: 0.3,
      fNumberFactor: 1,
      lampDistanceFactor: 1,
    };
    expect(timeLevers({ timeS: 2, minimumTimeS: 2, magnification: 0.3 })).toEqual(none);
    expect(timeLevers({ timeS: 20, minimumTimeS: 2, magnification: 0.3 })).toEqual(none);
  });

  it("refuses a time of nothing", () => {
    expectRefusal(() => timeLevers({ timeS: 0, minimumTimeS: 2 }), "notPositive", "timeS");
    expectRefusal(() => timeLevers({ timeS: 1, minimumTimeS: 2, magnification: -1 }), "negative", "magnification");
  });
});
