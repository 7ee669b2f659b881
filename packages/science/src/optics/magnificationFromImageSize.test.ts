import { describe, expect, it } from "vitest";
import { expectClose } from "../../fixtures/optics/checking.ts";
import examples from "../../fixtures/optics/worked-examples.json";
import { magnificationFromImageSize } from "./magnificationFromImageSize.ts";

describe("magnificationFromImageSize", () => {
  it("a jug of 180 mm drawn 45 mm high: m 0.25 [definition; by hand]", () => {
    expectClose(magnificationFromImageSize({ imageSizeMm: 45, subjectSizeMm: 180 }), 0.25);
  });

  it("a thing of 10 cm drawn 5 cm high: m 0.5 [closeup-textbook]", () => {
    const { imageMm, subjectMm, magnification } = examples.textbook;
    expectClose(magnificationFromImageSize({ imageSizeMm: imageMm, subjectSizeMm: subjectMm }), magnification);
  });

  it("swapping picture and subject gives the inverse [by hand]", () => {
    const there = magnificationFromImageSize({ imageSizeMm: 37, subjectSizeMm: 210 });
    const back = magnificationFromImageSize({ imageSizeMm: 210, subjectSizeMm: 37 });
    expect(there * back).toBeCloseTo(1, 12);
  });
});
