import type { Sheet } from "@captray/notebook/records";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Page } from "../../../kit/Page.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { machineWords } from "./capView.ts";
import type { CapInHand } from "./useCapPage.ts";

/** How an exposure is given on this device; reached from the cap page before anything is given. */
export function CapSettingsPage({
  sheet,
  cap,
  onDone,
}: {
  readonly sheet: Sheet;
  readonly cap: CapInHand;
  readonly onDone: () => void;
}) {
  const { settings, set, sounds, setSounds } = cap;
  return (
    <Page title="How it is given" aside={<Word onPress={onDone}>Done</Word>}>
      <div className="Camera-CapSettings">
        <Section head="What the hand goes by">
          <Choice
            label="What the hand goes by"
            labelUnseen
            value={settings.way}
            onChoose={(way) => set({ ...settings, way })}
            options={[
              { value: "ticks", name: "to the ticks", detail: "heard, felt and seen" },
              { value: "counted", name: "counted in your head", detail: "silent once the cap is off" },
            ]}
          />
          <p className="say soft">The two are kept apart: each has a bias and an evenness of its own.</p>
        </Section>
        <Section head="The beginning">
          <Choice
            label="The beginning"
            labelUnseen
            value={settings.countIn ? "countIn" : "press"}
            onChoose={(begins) => set({ ...settings, countIn: begins === "countIn" })}
            options={[
              { value: "countIn", name: "counted in", detail: "three, two, one, cap off" },
              { value: "press", name: "at a press", detail: "as the cap comes off" },
            ]}
          />
        </Section>
        <Section head="Sound">
          <Choice
            label="Sound"
            labelUnseen
            value={sounds ? "on" : "off"}
            onChoose={(sound) => setSounds(sound === "on")}
            options={[
              { value: "on", name: "with sound" },
              { value: "off", name: "without", detail: "the figure and the phone’s shake remain" },
            ]}
          />
          <ul className="Camera-CapSettings-machine">
            {machineWords(cap).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Section>
        <Button main wide big onPress={onDone}>
          Back to the cap: {sheet.code ?? "the sheet"}
        </Button>
      </div>
    </Page>
  );
}
