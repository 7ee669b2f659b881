import type { Test } from "../records/index.ts";
import { type LightTestAnswer, lightTestAnswer } from "./lightTestAnswer.ts";

export interface LightVerdict {
  readonly test: Test;
  readonly answer: Exclude<LightTestAnswer, { readonly kind: "open" }>;
  /** It was made on another paper than the one asked for. */
  readonly otherPaper: boolean;
}

/** What is known of a light: its newest test with an answer, on this paper if there is one, else on any. */
export function lightVerdictOf({
  tests,
  light,
  paperBoxId,
}: {
  readonly tests: readonly Test[];
  readonly light: "safelight" | "screen";
  readonly paperBoxId?: string | undefined;
}): LightVerdict | undefined {
  const verdicts = tests
    .flatMap((test): LightVerdict[] => {
      if (test.question !== "lightSafe" || test.light !== light) return [];
      const answer = lightTestAnswer({ test });
      const otherPaper = paperBoxId !== undefined && test.paperBoxId !== paperBoxId;
      return answer.kind === "open" ? [] : [{ test, answer, otherPaper }];
    })
    .sort((one, other) => (one.test.doneAt?.at ?? 0) - (other.test.doneAt?.at ?? 0));
  return verdicts.findLast(({ otherPaper }) => !otherPaper) ?? verdicts.at(-1);
}
