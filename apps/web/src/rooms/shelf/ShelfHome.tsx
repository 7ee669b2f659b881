import { Button } from "../../kit/Button.tsx";
import { goTo } from "../../kit/goTo.ts";
import { NothingYet } from "../../kit/NothingYet.tsx";
import { useSettings } from "../../kit/notebook/useSettings.ts";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Page } from "../../kit/Page.tsx";
import { Section } from "../../kit/Section.tsx";
import { Word } from "../../kit/Word.tsx";
import { HoldersOnShelf } from "./holders/HoldersOnShelf.tsx";
import { boxWords, indexDoubt, indexSource, lensName, lensWords, meterWords, stopWords } from "./shelfWords.ts";
import "./Shelf.css";

/** Everything the cap time rests on: boxes of paper with their indexes, lenses with their stops, meters. */
export default function ShelfHome() {
  return (
    <Page title="Shelf">
      <div className="Shelf-Home">
        <Papers />
        <HoldersOnShelf />
        <Lenses />
        <Meters />
      </div>
    </Page>
  );
}

function Papers() {
  const boxes = useShelf("paperBox");
  const indexes = useShelf("exposureIndex");
  return (
    <Section head="Paper" aside={boxes.length > 0 ? "one stroke, one sheet" : undefined}>
      {boxes.length === 0 && (
        <NothingYet>
          A box of paper has one exposure index as a negative and another as a direct positive, far below any dial.
        </NothingYet>
      )}
      {boxes.map((box) => (
        <div key={box.id} className="Shelf-Thing">
          <div className="Shelf-Thing-head">
            <Word to={`/shelf/box/${box.id}`}>{box.name === "" ? "Box without a name" : box.name}</Word>
            <span className="soft">{box.sheetsLeft === undefined ? "" : `${box.sheetsLeft} left`}</span>
          </div>
          <p className="small soft">{boxWords(box)}</p>
          {box.sheetsLeft !== undefined && box.sheetsLeft > 0 && <Strokes count={box.sheetsLeft} />}
          {indexes
            .filter((index) => index.paperBoxId === box.id && index.value !== undefined)
            .map((index) => (
              <div key={index.id} className="Shelf-Index">
                <span>
                  <b>{index.result === "negative" ? "negative" : "positive"}</b>
                  <span className="small soft">{indexSource(index)}</span>
                </span>
                <span>
                  <b>EI {Number((index.value?.value ?? 0).toPrecision(3))}</b>
                  <span className="small soft">{indexDoubt(index)}</span>
                </span>
              </div>
            ))}
        </div>
      ))}
      <Button onPress={() => goTo({ path: "/shelf/box/new" })}>Put a box of paper on the shelf</Button>
    </Section>
  );
}

function Strokes({ count }: { readonly count: number }) {
  const shown = Math.min(count, 100);
  const width = shown * 14;
  return (
    <svg
      className="Shelf-Strokes"
      viewBox={`0 0 ${width} 28`}
      width={width}
      height="28"
      role="img"
      aria-label={`${count} sheets`}
    >
      <path
        d={Array.from({ length: shown }, (_, i) => `M${i * 14 + 3} 2V26`).join("")}
        stroke="currentColor"
        strokeWidth="4"
      />
    </svg>
  );
}

function Lenses() {
  const lenses = useShelf("lens");
  const { lengthUnit } = useSettings();
  return (
    <Section head="Lenses">
      {lenses.length === 0 && (
        <NothingYet>What is engraved on it is enough; what you measure later takes its place.</NothingYet>
      )}
      {lenses.map((lens) => (
        <div key={lens.id} className="Shelf-Thing">
          <div className="Shelf-Thing-head">
            <Word to={`/shelf/lens/${lens.id}`}>{lensName(lens, lengthUnit)}</Word>
            <span className="soft">{lens.stops.length > 1 ? `${lens.stops.length} stops` : ""}</span>
          </div>
          {lens.stops.map((stop) => (
            <p key={stop.id}>{stopWords(stop)}</p>
          ))}
          <p className="small soft">{lensWords(lens, lengthUnit)}</p>
        </div>
      ))}
      <Button onPress={() => goTo({ path: "/shelf/lens/new" })}>Put a lens on the shelf</Button>
    </Section>
  );
}

function Meters() {
  const meters = useShelf("meter");
  return (
    <Section head="Meters">
      {meters.length === 0 && (
        <NothingYet>A meter comes by itself with the first reading. Its own error can be said here.</NothingYet>
      )}
      {meters.map((meter) => (
        <div key={meter.id} className="Shelf-Thing">
          <div className="Shelf-Thing-head">
            <Word to={`/shelf/meter/${meter.id}`}>{meter.name === "" ? "Meter" : meter.name}</Word>
          </div>
          <p className="small soft">{meterWords(meter)}</p>
        </div>
      ))}
      <Button onPress={() => goTo({ path: "/shelf/meter/new" })}>Put a meter on the shelf</Button>
    </Section>
  );
}
