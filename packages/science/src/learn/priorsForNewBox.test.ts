import { expect, test } from "vitest";
import peer from "../../fixtures/learn/fits.json" with { type: "json" };
import { curveNames } from "../tone/curve.ts";
import { fitPaper } from "./fitPaper.ts";
import type { FitPaperInput, FitPatch } from "./fitTypes.ts";
import { type LearningKind, learningWords } from "./learningWords.ts";
import { priorsForNewBox } from "./priorsForNewBox.ts";

const old = fitPaper(peer.cases.find(({ name }) => name === "control patches")?.in as unknown as FitPaperInput);

test("a new box keeps the paper a little less surely, and forgets the baths [by hand: 0.05 and 0.03 in quadrature]", () => {
  const priors = priorsForNewBox({ fit: old });
  const { x50, S, q, m1 } = old.parameters;
  expect(priors.x50).toEqual({ mean: x50.fitted.value, sd: expect.closeTo(Math.hypot(x50.fitted.sd, 0.05), 12) });
  expect(priors.S.sd).toBeCloseTo(Math.hypot(S.fitted.sd, 0.03), 12);
  expect(priors.q.sd).toBe(q.fitted.sd);
  expect(priors.m1).toEqual({ mean: expect.closeTo(Math.log(0.04 / 0.96), 12), sd: 0.8 });
  expect(m1.fitted.sd).toBeLessThan(0.8);
});

test("one check strip on the new box then knows the curve's place better than without the old one", () => {
  const patches = [0.4, 0.9, 1.4].map(
    (logExposure, index): FitPatch => ({
      sheet: "V1",
      logExposure,
      density: { value: [1.75, 1.15, 0.55][index] ?? 1, sd: 0.01 },
    }),
  );
  const alone = fitPaper({ sheets: [{ sheet: "V1" }], patches });
  const heir = fitPaper({ sheets: [{ sheet: "V1" }], patches, priors: priorsForNewBox({ fit: old }) });
  for (const name of ["x50", "width", "S"] as const) {
    expect(heir.parameters[name].fitted.sd).toBeLessThan(alone.parameters[name].fitted.sd);
  }
  for (const name of curveNames) expect(Number.isFinite(heir.parameters[name].value)).toBe(true);
});

test("every warning and every reason to stop has its sentence, with a name and without", () => {
  const kinds: LearningKind[] = [
    "sdAssumed",
    "duplicatePatch",
    "onePatch",
    "allSaturated",
    "sameExposures",
    "underBase",
    "aboveCap",
    "outlier",
    "sheetOff",
    "leverageHigh",
    "curveMisses",
    "contradictory",
    "reached",
    "notWorthThePaper",
    "limitReached",
  ];
  for (const kind of kinds) {
    for (const of of [undefined, "hull on W30"]) {
      const { message, hint } = learningWords({ kind, of });
      expect(message).toMatch(/^[A-Z].*\.$/);
      expect(hint).toMatch(/^[A-Z].*\.$/);
    }
  }
  expect(learningWords({ kind: "outlier", of: "hull on W30" }).message).toMatch(/^Hull on W30 lies beyond chance/);
});
