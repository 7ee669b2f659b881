import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { Page } from "../../../kit/Page.tsx";
import { Word } from "../../../kit/Word.tsx";
import { StepAnswer } from "./StepAnswer.tsx";
import { StepPlan } from "./StepPlan.tsx";
import "./StepTest.css";

/** A step test: of a scene it is planned, of a test it is answered. */
export default function StepTestPage({ id }: { readonly id: string }) {
  const record = useRecord(id);
  if (record === "loading") return <p role="status">Opening</p>;
  if (record !== "absent" && record.kind === "scene") {
    return (
      <Page title="Step test" closeTo={`/camera/${record.id}`}>
        <StepPlan scene={record} />
      </Page>
    );
  }
  if (record !== "absent" && record.kind === "test" && record.question === "step") {
    return (
      <Page title="Step test" closeTo={record.sceneId === undefined ? "/camera" : `/camera/${record.sceneId}`}>
        <StepAnswer key={record.id} test={record} />
      </Page>
    );
  }
  return (
    <Page title="Step test" closeTo="/camera">
      <NothingYet way={<Word to="/camera">To the Camera</Word>}>
        A step test is planned from a scene whose light was read.
      </NothingYet>
    </Page>
  );
}
