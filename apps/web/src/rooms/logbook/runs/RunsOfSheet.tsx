import { runsOfSheet } from "@captray/notebook/answers";
import type { Run, Sheet } from "@captray/notebook/records";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { RunDone } from "../../../kit/runDone/RunDone.tsx";
import { useRunDone } from "../../../kit/runDone/useRunDone.ts";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { dayWords, timeWords } from "../logbookWords.ts";

/** The runs a sheet went through, whole or in pieces, as planned and as done; nothing where none was kept. */
export function RunsOfSheet({ sheet }: { readonly sheet: Sheet }) {
  const runs = useShelf("run");
  const own = runsOfSheet({ runs, sheetId: sheet.id });
  return own.map(({ run, laneId, letter }) => (
    <OneRun
      key={`${run.id} ${laneId} ${letter ?? ""}`}
      run={run}
      laneId={laneId}
      code={`${sheet.code ?? ""}${letter ?? ""}`}
    />
  ));
}

function OneRun({ run, laneId, code }: { readonly run: Run; readonly laneId: string; readonly code: string }) {
  const { done } = useRunDone(run);
  const lane = done.kind === "done" ? done.lanes.find(({ id }) => id === laneId) : undefined;
  const { startedAt } = run;
  const when =
    startedAt && `${dayWords({ moment: startedAt, nowMs: Date.now() })}, ${timeWords({ moment: startedAt })}`;
  return (
    <Section head={`${code} in the trays`} aside={when}>
      {lane === undefined ? (
        <p className="say">What is kept of this run’s recipe cannot be read; what was pressed is kept.</p>
      ) : (
        <RunDone run={run} lane={lane} />
      )}
      <Word to={`/trays/after/${run.id}`} spoken={`The whole run of ${code}`}>
        The whole run
      </Word>
    </Section>
  );
}
