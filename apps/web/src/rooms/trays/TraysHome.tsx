import { Button } from "../../kit/Button.tsx";
import { goTo } from "../../kit/goTo.ts";
import { NothingYet } from "../../kit/NothingYet.tsx";
import { Page } from "../../kit/Page.tsx";
import { Section } from "../../kit/Section.tsx";
import { Word } from "../../kit/Word.tsx";
import { BathsPart } from "./home/BathsPart.tsx";
import type { WaitingLine } from "./home/traysView.ts";
import { useTrays } from "./home/useTrays.ts";
import { LightVerdicts } from "./lightTest/LightVerdicts.tsx";
import "./TraysHome.css";

/** The Trays room's door: the sheets that wait, and what goes on. */
export default function TraysHome() {
  const { waiting, inProcess, drying, dry, goingOn } = useTrays();
  return (
    <Page title="Trays">
      <div className="Trays-Home">
        {goingOn !== undefined ? (
          <Button main wide big aside={goingOn.codes} onPress={() => goTo({ path: `/trays/run/${goingOn.id}` })}>
            A run goes on: back to it
          </Button>
        ) : (
          waiting.length > 0 && (
            <Button main wide aside="recipe, baths, timetable" onPress={() => goTo({ path: "/trays/ready" })}>
              To the trays
            </Button>
          )
        )}
        <Section head="Waiting for the trays" aside={waiting.length === 0 ? undefined : sheets(waiting.length)}>
          {waiting.length === 0 ? (
            <NothingYet way={<Word to="/camera/now">I have a reading now</Word>}>
              A sheet stands here once the cap has been off for it. From here it goes through the trays in red light:
              one big press as it goes into the next bath, and the run writes itself down.
            </NothingYet>
          ) : (
            <ul className="Trays-Home-sheets">
              {waiting.map((line) => (
                <Line key={line.id} line={line} />
              ))}
            </ul>
          )}
        </Section>
        {inProcess.length > 0 && (
          <Section head="In the trays">
            <ul className="Trays-Home-sheets">
              {inProcess.map((line) => (
                <Line key={line.id} line={line} />
              ))}
            </ul>
          </Section>
        )}
        <BathsPart />
        {drying + dry > 0 && (
          <Section head="Drying" aside={dryingWords(drying, dry)}>
            <Word to="/trays/drying">What hangs where</Word>
          </Section>
        )}
        <Section head="Is my light safe?">
          <LightVerdicts />
          <Word to="/trays/light">Test a light</Word>
        </Section>
      </div>
    </Page>
  );
}

function Line({ line }: { readonly line: WaitingLine }) {
  return (
    <li>
      <button type="button" onClick={() => goTo({ path: `/logbook/${line.id}` })}>
        <b>{line.code}</b>
        <span>{line.what}</span>
        {line.owesFlash && <span className="Trays-Home-owed">flash owed, before the first bath</span>}
      </button>
    </li>
  );
}

function sheets(count: number): string {
  return count === 1 ? "1 sheet" : `${count} sheets`;
}

function dryingWords(drying: number, dry: number): string {
  return [drying > 0 && `${sheets(drying)} drying`, dry > 0 && `${dry} dry`].filter(Boolean).join(", ");
}
