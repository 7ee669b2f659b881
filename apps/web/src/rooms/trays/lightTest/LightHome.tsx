import { lightTestAnswer } from "@captray/notebook/answers";
import type { Test } from "@captray/notebook/records";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { Page } from "../../../kit/Page.tsx";
import { Section } from "../../../kit/Section.tsx";
import { levelSets } from "../../../kit/timedLevels.ts";
import { Word } from "../../../kit/Word.tsx";
import { LightVerdicts } from "./LightVerdicts.tsx";
import { lightPlans } from "./lightRecords.ts";
import { answerWords, dayOf, lightName } from "./lightWords.ts";
import { useLightTests } from "./useLightTests.ts";
import "./Light.css";

/** Is my light safe? What is known, the tests, and a new one. */
export default function LightHome() {
  const { notebook, boxes, tests, paperOf, change } = useLightTests();
  const begin = (light: "safelight" | "screen") => {
    const last = tests.findLast((one) => one.light === light);
    const id = notebook.newId();
    change(
      [
        {
          id,
          kind: "test",
          set: {
            question: "lightSafe",
            light,
            name: light === "screen" ? "Light test: this screen" : "Light test: safelight",
            factor: "minutes of light",
            result: "negative",
            ...(last?.lightName !== undefined && { lightName: last.lightName }),
            ...(last?.distanceMm !== undefined && { distanceMm: { ...last.distanceMm } }),
            ...(last === undefined && light === "screen" && { distanceMm: { value: 500, text: "50 cm" } }),
            ...((last?.paperBoxId ?? boxes.at(-1)?.id) !== undefined && {
              paperBoxId: last?.paperBoxId ?? (boxes.at(-1)?.id as string),
            }),
            ...levelSets(lightPlans[0]?.timesS ?? [], notebook.newId),
            plannedAt: { ...momentNow() },
            createdAt: { ...momentNow() },
          },
        },
      ],
      "Light test planned",
    );
    goTo({ path: `/trays/light/${id}` });
  };
  return (
    <Page title="Is my light safe?" closeTo="/trays">
      <div className="Trays-Light">
        <p className="say">
          Paper that has its picture is quicker to take harm than bare paper: a coin laid on bare paper shows only fog,
          and can mislead. So a sheet gets a light grey first, then light in steps both before and after it. One sheet a
          light, twenty minutes.
        </p>
        <Section head="What is known">
          <LightVerdicts />
        </Section>
        <div className="Trays-Light-acts">
          <Button main onPress={() => begin("safelight")}>
            Test the safelight
          </Button>
          <Button onPress={() => begin("screen")}>Test this screen</Button>
        </div>
        {tests.length > 0 && (
          <Section head="Tests">
            <ul className="Trays-Light-list">
              {tests.toReversed().map((test) => (
                <li key={test.id}>
                  <Word to={`/trays/light/${test.id}`}>{lightName(test)}</Word>
                  <span className="small soft">{[paperOf(test), stateWords(test)].filter(Boolean).join(", ")}</span>
                </li>
              ))}
            </ul>
          </Section>
        )}
      </div>
    </Page>
  );
}

function stateWords(test: Test): string {
  if (test.doneAt === undefined) return "planned, not given yet";
  const answer = lightTestAnswer({ test });
  const day = dayOf(test.doneAt);
  return answer.kind === "open" ? `given ${day}; not looked at yet` : `${answerWords(test, answer).head}, ${day}`;
}
