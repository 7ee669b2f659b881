import type { Sheet } from "@captray/notebook/records";
import { momentNow } from "../../../devices/momentNow.ts";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { Page } from "../../../kit/Page.tsx";
import { Word } from "../../../kit/Word.tsx";
import { FlashAfter } from "./FlashAfter.tsx";
import { FlashCautions } from "./FlashCautions.tsx";
import { FlashTimer } from "./FlashTimer.tsx";
import { flashFromRecords, lampOf, sheetSets } from "./flashRecords.ts";
import { type FlashWhen, lampName, whenWords } from "./flashWords.ts";
import { useFlashNotebook } from "./useFlashNotebook.ts";

const then: Readonly<Record<FlashWhen, string>> = {
  beforeLoading: "Into the holder in the dark, slide in, its code with the pencil. The exposure comes next.",
  inCamera: "The diffuser away, nothing else moved. The picture follows on the same sheet.",
  afterExposure: "Straight into the first bath: nothing is owed any more.",
};

/** One sheet's flash, timed. */
export default function FlashGivePage({ id }: { readonly id: string }) {
  const sheet = useRecord(id);
  if (sheet === "loading") return <p role="status">Opening</p>;
  if (sheet === "absent" || sheet.kind !== "sheet" || sheet.flashPlanned === undefined) {
    return (
      <Page title="No flash is planned" closeTo="/camera/flash">
        <NothingYet
          way={<Word to={sheet === "absent" ? "/camera/flash" : `/camera/flash/for/${id}`}>Plan a flash</Word>}
        >
          The lamp needs seconds, and they come from a flash strip.
        </NothingYet>
      </Page>
    );
  }
  return <Give key={sheet.id} sheet={sheet} planned={sheet.flashPlanned} />;
}

function Give({ sheet, planned }: { readonly sheet: Sheet; readonly planned: NonNullable<Sheet["flashPlanned"]> }) {
  const { notebook, finds } = useFlashNotebook();
  const movesS = [planned.timeS];
  const code = sheet.code ?? "Sheet";
  const { flashedAt, flashGivenS } = sheet;
  return (
    <FlashTimer
      title={code}
      place={`${lampName(lampOf(finds, planned.flashLampId))}, ${whenWords(planned.when)}`}
      closeTo={`/camera/flash/for/${sheet.id}`}
      cautions={<FlashCautions />}
      by={planned.when === "inCamera" ? "cap" : "lamp"}
      recordId={sheet.id}
      movesS={movesS}
      fromRecords={(nowMs) => {
        const move =
          flashGivenS === undefined
            ? undefined
            : ({ atS: flashGivenS, by: flashGivenS === planned.timeS ? "asPlanned" : "press" } as const);
        return flashFromRecords({ movesS, given: [move], onAt: flashedAt, nowMs });
      }}
      keep={(state) => {
        const held = notebook.peek(sheet.id);
        if (held?.kind !== "sheet") return undefined;
        const sets = sheetSets({ state, sheet: held, now: momentNow() });
        return sets.length === 0 ? undefined : notebook.change(sets, `${code}: flash`).kept;
      }}
      after={(flash) => (
        <FlashAfter
          flash={flash}
          title={code}
          closeTo={`/logbook/${sheet.id}`}
          then={{
            word: `The page of ${code}`,
            say: then[planned.when],
            onPress: () => goTo({ path: `/logbook/${sheet.id}` }),
          }}
        />
      )}
    />
  );
}
