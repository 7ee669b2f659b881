import { expectedPrintOf, papersAskedOf, planOf } from "@captray/notebook/answers";
import { drawPapers } from "@captray/science/tone";
import { createRoot } from "react-dom/client";
import { expect, test, vi } from "vitest";
import { someKit } from "../../../../../packages/notebook/src/answers/testing.ts";
import { type ExpectedPrintNow, useExpectedPrint } from "./useExpectedPrint.ts";

const kit = someKit({});
const plan = planOf(kit);

const seen: ExpectedPrintNow[] = [];

function Probe({ timeS }: { readonly timeS?: number }) {
  seen.push(useExpectedPrint({ kit, plan, choice: { timeS } }));
  return null;
}

test("the worker's papers give the same print as those drawn here, and a slid time is followed at once [same seed]", async () => {
  const place = document.createElement("div");
  const root = createRoot(place);
  root.render(<Probe />);
  await vi.waitFor(() => expect(seen.at(-1)?.print?.kind).toBe("print"), 10_000);
  expect(seen[0]).toEqual({ print: undefined, isWaiting: true });
  if (plan.kind !== "plan") throw new Error("no plan");
  const papers = drawPapers(papersAskedOf({ kit, plan }).input);
  expect(seen.at(-1)).toEqual({ print: expectedPrintOf({ kit, plan, papers }), isWaiting: false });
  root.render(<Probe timeS={30} />);
  await vi.waitFor(() =>
    expect(seen.at(-1)?.print).toEqual(expectedPrintOf({ kit, plan, papers, choice: { timeS: 30 } })),
  );
  // No frame without a print in between.
  expect(seen.slice(1).filter(({ print }, index) => print === undefined && index > 1)).toEqual([]);
  root.unmount();
});
