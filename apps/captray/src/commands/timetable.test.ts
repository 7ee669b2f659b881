import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { answerTimetable, timetable as command } from "./timetable.ts";

const steps = [
  { step: "first developer", timeS: 120 },
  { step: "stop", timeS: 30 },
  { step: "rinse", timeS: 60, sheets: 2 },
  { step: "bleach", timeS: 90 },
];

function answerOf(input: object) {
  const { document, exit } = answerTimetable(input);
  expect([exit, document.error]).toEqual([0, undefined]);
  expect(z.safeParse(command.published.output as z.ZodMiniType, document).error?.issues).toBeUndefined();
  return document;
}

describe("several sheets through one line of trays", () => {
  it("a recorded run: three sheets, developer to bleach, 128 s apart [by hand: every move written down]", () => {
    const visit = (sheet: number, step: string, inS: number, outS: number) => ({ sheet, step, inS, outS });
    expect(answerOf({ steps, sheets: 3 })).toEqual({
      intervalS: 128,
      oneSheetS: 300,
      even: { startsS: [0, 128, 256], endS: 556 },
      earliest: { startsS: [0, 128, 256], endS: 556 },
      chosen: "even",
      visits: [
        visit(1, "first developer", 0, 120),
        visit(1, "stop", 120, 150),
        visit(2, "first developer", 128, 248),
        visit(1, "rinse", 150, 210),
        visit(1, "bleach", 210, 300),
        visit(2, "stop", 248, 278),
        visit(3, "first developer", 256, 376),
        visit(2, "rinse", 278, 338),
        visit(2, "bleach", 338, 428),
        visit(3, "stop", 376, 406),
        visit(3, "rinse", 406, 466),
        visit(3, "bleach", 466, 556),
      ],
    });
  });

  it("one sheet goes straight through, with the defaults of a line; times may be written as photographers do", () => {
    const document = answerOf({ id: "W31", steps: [{ step: "develop", timeS: "1m30" }] });
    expect(Object.keys(document)).toEqual(["id", "intervalS", "oneSheetS", "even", "earliest", "chosen", "visits"]);
    expect(document).toMatchObject({ intervalS: 98, oneSheetS: 90, even: { startsS: [0], endS: 90 } });
  });

  it("a stop that may wait ends sooner, and is told beside the chosen one [by hand: 20, 8, 20 s, hands of 5 s]", () => {
    const line = [20, 8, 20].map((timeS, index) => ({ step: `tray ${index + 1}`, timeS }));
    const waits = line.map((step, index) => (index === 1 ? { ...step, mayWaitUpToS: 10 } : step));
    expect(answerOf({ steps: line, sheets: 2, handS: 5 }).waiting).toBeUndefined();
    const { waiting, even, visits } = answerOf({ steps: waits, sheets: 2, handS: 5 }) as {
      waiting: { endS: number; visits: object[] };
      even: object;
      visits: object[];
    };
    expect([waiting.endS, even]).toEqual([75, { startsS: [0, 33], endS: 81 }]);
    expect([waiting.visits.length, visits.length]).toEqual([6, 6]);
  });
});

describe("refusals", () => {
  it.each<[object, string, string]>([
    [{}, "missingKey", "/steps"],
    [{ steps: [] }, "tooFew", "/steps"],
    [{ steps: [{ timeS: 60 }] }, "missingKey", "/steps/0/step"],
    [{ steps: [{ step: "stop", timeS: 12.5 }] }, "wrongType", "/steps/0/timeS"],
    [{ steps: [{ step: "stop", timeS: "1/60" }] }, "wrongType", "/steps/0/timeS"],
    [{ steps: [{ step: "stop", timeS: "soon" }] }, "unreadable", "/steps/0/timeS"],
    [{ steps: [{ step: "stop", timeS: 0 }] }, "notPositive", "/steps/0/timeS"],
    [{ steps: [{ step: "stop", timeS: 30, sheets: 0 }] }, "notPositive", "/steps/0/sheets"],
    [{ steps: [{ step: "stop", timeS: 30, mayWaitUpToS: -1 }] }, "negative", "/steps/0/mayWaitUpToS"],
    [{ steps: [{ step: "stop", timeS: 30, drainS: 5 }] }, "unknownKey", "/steps/0/drainS"],
    [{ steps, sheets: 0 }, "notPositive", "/sheets"],
    [{ steps, sheets: 1.5 }, "wrongType", "/sheets"],
    [{ steps, handS: 601 }, "handTooSlow", "/handS"],
    [{ steps, handS: -1 }, "negative", "/handS"],
    [{ steps, handS: 7.5 }, "wrongType", "/handS"],
  ])("%j: %s at %s [docs/guide/terminal.md]", (input, code, path) => {
    const { document, exit } = answerTimetable(input);
    expect([exit, document.error]).toEqual([2, expect.objectContaining({ code, path })]);
  });
});
