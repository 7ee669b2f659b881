import type { LoadingStep } from "@captray/notebook/answers";
import { expect, test } from "vitest";
import { darkView, endSpoken, voiceWords } from "./darkView.ts";

const step = (kind: LoadingStep["kind"], sideName: string, code: string, more: object = {}): LoadingStep =>
  ({
    kind,
    holder: { name: "2" },
    side: { name: sideName },
    sheet: { id: code, code, dates: {}, links: { paperBoxId: "c" }, ...more },
    ...(kind === "flash" ? { flashS: 4 } : {}),
  }) as unknown as LoadingStep;
const boxNames = new Map([["c", "Box C"]]);
const view = (one: LoadingStep, next?: LoadingStep) => darkView({ step: one, next, boxNames });

test("side A, from box C; next [the words of the issue]", () => {
  expect(view(step("load", "A", "W36"), step("load", "B", "W37"))).toMatchObject({
    head: "Side A",
    under: "holder 2, from box C",
    press: "Press when the slide is shut",
    after: "then: holder 2, side B",
    spoken: "Holder 2, side A, from box C. Code W 36.",
  });
  expect(view(step("load", "A", "W36")).lines[0]).toBe("On the back, in soft pencil: W36");
  expect(view(step("load", "B", "W37")).after).toBe("then: shut the box");
});

test("flash before loading is read out with its seconds, then the same sheet goes in", () => {
  const flashed = { dates: { flashedAt: { at: 1, offsetMin: 0 } } };
  const [flash, load] = [step("flash", "A", "W36"), step("load", "A", "W36")];
  expect(view(flash, load)).toMatchObject({ head: "Flash W36", after: "then: into holder 2, side A" });
  expect(view(flash).spoken).toContain("4 seconds");
  expect(view(step("load", "A", "W36", flashed)).spoken).toContain("the flashed sheet");
});

test("how it ends, and by what it is read out, is said", () => {
  expect(endSpoken(4)).toBe("All loaded: 4 sheets. Shut the box.");
  expect(endSpoken(0)).toContain("Shut the box");
  expect(voiceWords("tones")).toContain("no voice");
});
