import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal } from "../../fixtures/optics/checking.ts";
import { lensTransmission } from "./lensTransmission.ts";
import { surfaceReflectance } from "./surfaceReflectance.ts";

describe("lensTransmission", () => {
  it("n 1.55 uncoated: four surfaces pass 0.82650468, eight 0.68310998 [by hand]", () => {
    const reflectance = surfaceReflectance({ refractiveIndex: 1.55 });
    const four = lensTransmission({ surfaces: 4, surfaceReflectance: reflectance });
    const eight = lensTransmission({ surfaces: 8, surfaceReflectance: reflectance });
    expectClose(four, 0.82650468);
    expectClose(-Math.log2(four), 0.27490511);
    expectClose(eight, 0.68310998);
    expectClose(-Math.log2(eight), 0.54981023);
  });

  it("crown 1.523, two surfaces: 8.6 per cent, less what the second cannot get any more [surface-reflection]", () => {
    // The dictionary adds the two surfaces up; ± 0.0005, it prints one decimal of a per cent.
    const reflectance = surfaceReflectance({ refractiveIndex: 1.523 });
    const lost = 1 - lensTransmission({ surfaces: 2, surfaceReflectance: reflectance });
    expect(Math.abs(lost + reflectance ** 2 - 0.086)).toBeLessThan(0.0005);
  });

  it("the glass itself counts once [by hand]", () => {
    expectClose(lensTransmission({ surfaces: 2, surfaceReflectance: 0.1, internal: 0.5 }), 0.405);
  });

  it("no surfaces, or surfaces that throw nothing back, lose nothing [by hand]", () => {
    expect(lensTransmission({ surfaces: 0, surfaceReflectance: 0.05 })).toBe(1);
    expect(lensTransmission({ surfaces: 8, surfaceReflectance: 0 })).toBe(1);
  });

  it("refuses half a surface, a mirror, and glass that makes light [by hand]", () => {
    const lens = { surfaces: 4, surfaceReflectance: 0.05 };
    expectRefusal(() => lensTransmission({ ...lens, surfaces: 2.5 }), "wrongType", "surfaces");
    expectRefusal(() => lensTransmission({ ...lens, surfaces: -1 }), "negative", "surfaces");
    for (const share of [1, -0.001]) {
      const wrong = { ...lens, surfaceReflectance: share };
      expectRefusal(() => lensTransmission(wrong), "transmissionOutOfRange", "surfaceReflectance");
    }
    expectRefusal(() => lensTransmission({ ...lens, internal: 1.001 }), "transmissionOutOfRange", "internal");
    expectRefusal(() => lensTransmission({ ...lens, internal: 0 }), "notPositive", "internal");
  });
});
