import { expect, test } from "vitest";
import { expectClose } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/tone/four-quadrants.json" with { type: "json" };
import { contactPrint } from "./contactPrint.ts";
import { drawPapers } from "./drawPapers.ts";
import { type ForwardSheet, forward } from "./forward.ts";
import { lightness } from "./lightness.ts";
import { printFromPapers } from "./printFromPapers.ts";

test.each(peer.positive)(
  "a scene on a direct positive, case %#: flare, curve, density, lightness [peer: scipy quad, numpy]",
  (one) => {
    const { density } = forward({
      curve: one.curve,
      sheets: [one.sheet as ForwardSheet],
      patches: one.logExposure.map((logExposure) => ({ sheet: 0, logExposure })),
    });
    for (const [index, value] of one.density.entries()) {
      expectClose(density[index] ?? null, value, 1e-9);
      expectClose(lightness({ density: density[index] ?? 0 }), one.lightness[index] ?? 0, 1e-8);
    }
  },
);

test.each(peer.positive)(
  "the same from drawn papers, whose flare is that of the areas' own mean, case %# [peer: scipy quad]",
  (one) => {
    const { flashS, rounds } = one.sheet;
    const papers = drawPapers({ curve: one.curve, rounds, draws: 2 });
    const { areas } = printFromPapers({ papers, logExposure: one.logExposure, flashS });
    for (const [index, value] of one.density.entries()) {
      expectClose(areas[index]?.density.value ?? null, value, 1e-9);
      expectClose(areas[index]?.lightness ?? null, one.lightness[index] ?? 0, 1e-8);
    }
  },
);

test.each(peer.negative)(
  "a scene on a paper negative and through it on a print, case %# [peer: scipy quad, numpy]",
  (one) => {
    const { curve, logExposure, clearLogExposure } = one;
    const ours = contactPrint({ negative: curve, paper: curve, logExposure, clearLogExposure });
    for (const key of ["negativeDensity", "printingDensity", "printDensity"] as const) {
      for (const [index, value] of one[key].entries()) expectClose(ours[key][index] ?? null, value, 1e-8);
    }
    for (const [index, value] of one.lightness.entries()) {
      expectClose(lightness({ density: ours.printDensity[index] ?? 0 }), value, 1e-7);
    }
    // Light in the scene is light on the print again.
    expect(one.printDensity).toEqual([...one.printDensity].sort((left, right) => right - left));
  },
);
