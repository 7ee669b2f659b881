import { flashStripAnswer } from "@captray/notebook/answers";
import { Button } from "../../../kit/Button.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { Page } from "../../../kit/Page.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { lampOf } from "./flashRecords.ts";
import { lampName, lampWords, rateWords, stripWords } from "./flashWords.ts";
import { useFlashNotebook } from "./useFlashNotebook.ts";
import "./Flash.css";

/** Flash: the set-ups, the strips that tell their seconds, and the sheets that still owe one. */
export default function FlashHome() {
  const { finds, lamps, strips } = useFlashNotebook();
  const owed = useCards().filter(({ state }) => state === "flashOwed");
  return (
    <Page title="Flash" closeTo="/camera">
      <div className="Camera-Flash-home">
        {owed.length > 0 && (
          <Section head="Flash owed" aside="exposed, not yet in the first bath">
            <ul className="Camera-Flash-list">
              {owed.map(({ id, code }) => (
                <li key={id}>
                  <Word to={`/camera/flash/for/${id}`}>Give {code} its flash</Word>
                </li>
              ))}
            </ul>
          </Section>
        )}
        <Section head="Set-ups">
          <NothingYet>
            A weak light over the whole sheet lightens the blacks of a direct positive and fills the thin end of a
            negative. How many seconds, only a flash strip tells, and only for the lamp as it stood: moved or dimmed it
            is another set-up.
          </NothingYet>
          <ul className="Camera-Flash-list">
            {lamps.map((lamp) => (
              <li key={lamp.id}>
                <Word to={`/camera/flash/${lamp.id}`}>{lampName(lamp)}</Word>
                <span className="small soft">{lampWords(lamp)}</span>
                <span>{rateWords(lamp)}</span>
              </li>
            ))}
          </ul>
          <Button main={lamps.length === 0} onPress={() => goTo({ path: "/camera/flash/new" })}>
            {lamps.length === 0 ? "Set up a lamp for flash" : "Another set-up"}
          </Button>
        </Section>
        <Section head="Flash strips">
          {strips.length === 0 && (
            <NothingYet>
              A strip is flash alone in steps, beside one that had none. It is planned, timed and kept from the page of
              its set-up.
            </NothingYet>
          )}
          <ul className="Camera-Flash-list">
            {strips.toReversed().map((strip) => (
              <li key={strip.id}>
                <Word to={`/camera/flash/strip/${strip.id}`}>
                  {strip.name === "" ? lampName(lampOf(finds, strip.flashLampId)) : strip.name}
                </Word>
                <span className="small soft">
                  {stripWords(strip, flashStripAnswer({ notebook: finds, test: strip }))}
                </span>
              </li>
            ))}
          </ul>
        </Section>
      </div>
    </Page>
  );
}
