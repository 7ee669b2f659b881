import type { Sheet, Test } from "@captray/notebook/records";
import { momentNow } from "../../../devices/momentNow.ts";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { Page } from "../../../kit/Page.tsx";
import { movesOf } from "../../../kit/timedLevels.ts";
import { Word } from "../../../kit/Word.tsx";
import { FlashAfter } from "./FlashAfter.tsx";
import { FlashCautions } from "./FlashCautions.tsx";
import { FlashTimer } from "./FlashTimer.tsx";
import { flashFromRecords, givenOf, lampOf, rateSets, stripSets, testWith } from "./flashRecords.ts";
import { lampName } from "./flashWords.ts";
import { useFlashNotebook } from "./useFlashNotebook.ts";

/** A flash strip at the lamp, timed. */
export default function FlashRunPage({ id }: { readonly id: string }) {
  const { strips } = useFlashNotebook();
  const strip = strips.find((one) => one.id === id);
  const sheet = useRecord(strip?.sheetIds?.at(-1) ?? "");
  if (strip === undefined || movesOf(strip).length === 0) {
    return (
      <Page title="Flash strip" closeTo="/camera/flash">
        <NothingYet way={<Word to="/camera/flash">All strips</Word>}>
          There is no strip of that address, or it has no steps yet.
        </NothingYet>
      </Page>
    );
  }
  if (sheet === "loading") return <p role="status">Opening</p>;
  return <Run key={strip.id} strip={strip} sheet={sheet !== "absent" && sheet.kind === "sheet" ? sheet : undefined} />;
}

function Run({ strip, sheet }: { readonly strip: Test; readonly sheet: Sheet | undefined }) {
  const { notebook, finds } = useFlashNotebook();
  const movesS = movesOf(strip);
  const name = strip.name === "" ? "Flash strip" : strip.name;
  const code = sheet?.code ?? name;
  const back = `/camera/flash/strip/${strip.id}`;
  return (
    <FlashTimer
      title={code}
      place={`${lampName(lampOf(finds, strip.flashLampId))}, bare step ${strip.firstEdge ?? "left"}`}
      closeTo={back}
      cautions={<FlashCautions />}
      recordId={strip.id}
      movesS={movesS}
      fromRecords={(nowMs) => flashFromRecords({ movesS, given: givenOf(strip), onAt: strip.doneAt, nowMs })}
      keep={(state) => {
        const [held, heldSheet] = [notebook.peek(strip.id), notebook.peek(sheet?.id ?? "")];
        if (held?.kind !== "test") return undefined;
        const now = momentNow();
        const sets = stripSets({
          state,
          test: held,
          sheet: heldSheet?.kind === "sheet" ? heldSheet : undefined,
          now,
        });
        if (sets.length === 0) return undefined;
        const ofTest = sets.find((one) => one.kind === "test");
        const said = held.leastSeen !== undefined || held.levels.some(({ density }) => density !== undefined);
        const rates = ofTest && said ? rateSets({ notebook, test: testWith(held, ofTest.set), now }) : [];
        return notebook.change([...sets, ...rates], `${code}: flash strip`).kept;
      }}
      after={(flash) => (
        <FlashAfter
          flash={flash}
          title={code}
          closeTo={back}
          then={{
            word: "To the strip",
            onPress: () => goTo({ path: back }),
            say: "Into the trays with it, in the baths it was planned for. Dry, in good light, the page of the strip asks which step shows.",
          }}
        />
      )}
    />
  );
}
