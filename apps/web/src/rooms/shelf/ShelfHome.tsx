import { lensSection, sheetStrokes } from "@captray/drawings/shelf";
import { boxStockOf } from "@captray/notebook/answers";
import type { ExposureIndex, Lens, PaperBox, Recipe, RecordOf, ShelfKind } from "@captray/notebook/records";
import { type ReactNode, useId, useState, useSyncExternalStore } from "react";
import { Button } from "../../kit/Button.tsx";
import { Drawing } from "../../kit/Drawing.tsx";
import { goTo } from "../../kit/goTo.ts";
import { NothingYet } from "../../kit/NothingYet.tsx";
import { useNotebook } from "../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../kit/notebook/useSettings.ts";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Page } from "../../kit/Page.tsx";
import { Section } from "../../kit/Section.tsx";
import { useRoomFor } from "../../kit/useRoomFor.ts";
import { Word } from "../../kit/Word.tsx";
import { HoldersOnShelf } from "./holders/HoldersOnShelf.tsx";
import { RecipesOnShelf } from "./recipes/RecipesOnShelf.tsx";
import {
  boxHeadWords,
  boxWords,
  cameraWords,
  indexDoubt,
  indexSource,
  lampWords,
  lensDrawn,
  lensName,
  lensWords,
  meterWords,
  stockWords,
  stopWords,
} from "./shelfWords.ts";
import { sizeWords } from "./things/sizeForm.ts";
import "./Shelf.css";

/** Everything the cap time rests on: paper with its indexes, holders, lenses with their stops, cameras, meters, lamps. */
export default function ShelfHome() {
  return (
    <Page title="Shelf" aside={<Word to="/shelf/add">Put something on it</Word>}>
      <div className="Shelf-Home">
        <div>
          <Papers />
          <HoldersOnShelf />
          <RecipesOnShelf />
        </div>
        <div>
          <Lenses />
        </div>
        <div>
          <Cameras />
          <Meters />
          <Lamps />
          <Away />
        </div>
      </div>
    </Page>
  );
}

function Papers() {
  const boxes = useShelf("paperBox");
  return (
    <Section head="Paper" aside={boxes.length > 0 ? "one stroke, one sheet" : undefined}>
      {boxes.length === 0 && (
        <Empty put="Put a box of paper on the shelf" to="/shelf/box/new">
          A box of paper has one exposure index as a negative and another as a direct positive, far below any dial.
        </Empty>
      )}
      {boxes.map((box) => (
        <Box key={box.id} box={box} />
      ))}
    </Section>
  );
}

function Box({ box }: { readonly box: PaperBox }) {
  const notebook = useNotebook();
  const boxes = useShelf("paperBox");
  const indexes = useShelf("exposureIndex");
  const recipes = useShelf("recipe");
  const stock = boxStockOf({ box, boxes: [...boxes, ...notebook.putAway("paperBox")] });
  const [widthPx, , place] = useRoomFor();
  return (
    <div className="Shelf-Thing" ref={place}>
      <div className="Shelf-Thing-head">
        <span>
          <Word to={`/shelf/box/${box.id}`}>{box.name === "" ? "Box without a name" : box.name}</Word>
          {boxHeadWords(box) !== "" && <span>, {boxHeadWords(box)}</span>}
        </span>
        <span className="soft">{stockWords(stock)}</span>
      </div>
      <p className="small soft">{boxWords(box, stock)}</p>
      {stock.left !== undefined && stock.left > 0 && widthPx > 0 && (
        <Drawing
          drawing={sheetStrokes({
            widthPx,
            left: stock.left,
            ...(stock.full === undefined ? {} : { full: stock.full }),
          })}
        />
      )}
      {indexes
        .filter((index) => index.paperBoxId === box.id && index.value !== undefined)
        .map((index) => (
          <div key={index.id} className="Shelf-Index">
            <span>
              <IndexHead index={index} recipe={recipes.find(({ id }) => id === index.recipeId)} />
              <span className="small soft">{indexSource(index)}</span>
            </span>
            <span>
              <b>EI {Number((index.value?.value ?? 0).toPrecision(3))}</b>
              <span className="small soft">{indexDoubt(index)}</span>
            </span>
          </div>
        ))}
    </div>
  );
}

/** What an index is for: “positive, recipe 4”. */
function IndexHead({ index, recipe }: { readonly index: ExposureIndex; readonly recipe: Recipe | undefined }) {
  return (
    <b>
      {index.result ?? "positive"}
      {recipe !== undefined && recipe.name !== "" && (
        <>
          {", "}
          <Word inline to={`/shelf/recipe/${recipe.id}`}>
            {recipe.name}
          </Word>
        </>
      )}
    </b>
  );
}

function Lenses() {
  const lenses = useShelf("lens");
  return (
    <Section head="Lenses">
      {lenses.length === 0 && (
        <Empty put="Put a lens on the shelf" to="/shelf/lens/new">
          What is engraved on it is enough; what you measure later takes its place.
        </Empty>
      )}
      {lenses.map((lens) => (
        <LensThing key={lens.id} lens={lens} />
      ))}
    </Section>
  );
}

function LensThing({ lens }: { readonly lens: Lens }) {
  const { lengthUnit } = useSettings();
  const [widthPx, letterPx, place] = useRoomFor();
  const drawn = lensDrawn(lens, lengthUnit);
  return (
    <div className="Shelf-Thing" ref={place}>
      <div className="Shelf-Thing-head">
        <Word to={`/shelf/lens/${lens.id}`}>{lensName(lens, lengthUnit)}</Word>
        <span className="soft">{lens.stops.length > 1 ? `${lens.stops.length} stops` : ""}</span>
      </div>
      {lens.stops.map((stop) => (
        <p key={stop.id}>{stopWords({ lens, stop })}</p>
      ))}
      <p className="small soft">{lensWords(lens, lengthUnit)}</p>
      {drawn !== undefined && widthPx > 0 && (
        <Drawing drawing={lensSection({ widthPx: Math.min(widthPx, 480), letterPx, ...drawn })} />
      )}
      {lens.sort !== "pinhole" && (
        <div className="Shelf-Ways">
          <Word to={`/shelf/pupil/${lens.id}`} spoken={`Measure the pupil of ${lensName(lens, lengthUnit)}`}>
            Measure the pupil
          </Word>
          <Word to={`/shelf/focal/${lens.id}`} spoken={`Measure the focal length of ${lensName(lens, lengthUnit)}`}>
            Measure the focal length
          </Word>
          <Word to={`/shelf/stops/${lens.id}`} spoken={`Cut a card stop for ${lensName(lens, lengthUnit)}`}>
            Cut a card stop
          </Word>
        </div>
      )}
    </div>
  );
}

function Cameras() {
  const { lengthUnit } = useSettings();
  return (
    <Plain
      kind="camera"
      head="Cameras"
      path="/shelf/camera"
      put="Put a camera on the shelf"
      nameless="Camera"
      words={(camera) => cameraWords(camera, lengthUnit)}
      aside={(camera) => (camera.format ? sizeWords(camera.format) : "")}
    >
      How far the bellows go, and what they stood at last: the Camera then has one field less to ask.
    </Plain>
  );
}

function Meters() {
  return (
    <Plain
      kind="meter"
      head="Meters"
      path="/shelf/meter"
      put="Put a meter on the shelf"
      nameless="Meter"
      words={meterWords}
    >
      A meter comes by itself with the first reading. Its own error can be said here.
    </Plain>
  );
}

function Lamps() {
  return (
    <Plain kind="lamp" head="Lamps" path="/shelf/lamp" put="Put a lamp on the shelf" nameless="Lamp" words={lampWords}>
      Lamps that light the subject. Paper hardly sees a warm bulb, and the meter does not know.
    </Plain>
  );
}

type PlainKind = "camera" | "meter" | "lamp";

function Plain<K extends PlainKind>(props: {
  readonly kind: K;
  readonly head: string;
  readonly path: string;
  readonly put: string;
  readonly nameless: string;
  readonly words: (thing: RecordOf<K>) => string;
  readonly aside?: (thing: RecordOf<K>) => string;
  /** What teaches while there is none. */
  readonly children: ReactNode;
}) {
  const { kind, head, path, put, nameless, words, aside, children } = props;
  // Of a kind that is not settled yet the compiler does not see that its records have name and id.
  const things = useShelf(kind) as readonly (RecordOf<K> & { readonly id: string; readonly name: string })[];
  return (
    <Section head={head}>
      {things.length === 0 && (
        <Empty put={put} to={`${path}/new`}>
          {children}
        </Empty>
      )}
      {things.map((thing) => (
        <div key={thing.id} className="Shelf-Thing">
          <div className="Shelf-Thing-head">
            <Word to={`${path}/${thing.id}`}>{thing.name === "" ? nameless : thing.name}</Word>
            <span className="soft">{aside?.(thing) ?? ""}</span>
          </div>
          <p className="small soft">{words(thing)}</p>
        </div>
      ))}
    </Section>
  );
}

function Empty(props: { readonly put: string; readonly to: string; readonly children: ReactNode }) {
  return (
    <NothingYet way={<Button onPress={() => goTo({ path: props.to })}>{props.put}</Button>}>
      {props.children}
    </NothingYet>
  );
}

const awayKinds = {
  paperBox: "box",
  holder: "holder",
  lens: "lens",
  camera: "camera",
  meter: "meter",
  lamp: "lamp",
  recipe: "recipe",
} as const satisfies Partial<Record<ShelfKind, string>>;

/** What was put away, each with its way back; nothing while there is none. */
function Away() {
  const notebook = useNotebook();
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  // Each list keeps its identity until it changes, so their number and ids tell whether to draw anew.
  const kinds = Object.keys(awayKinds) as (keyof typeof awayKinds)[];
  useSyncExternalStore(notebook.subscribe, () =>
    kinds.flatMap((kind) => notebook.putAway(kind).map((thing) => thing.id)).join(" "),
  );
  const away = kinds.flatMap((kind) => notebook.putAway(kind).map((thing) => ({ kind, thing, word: awayKinds[kind] })));
  if (away.length === 0) return null;
  return (
    <section className="Kit-Section" aria-labelledby={id}>
      <h2>
        <button id={id} type="button" className="Shelf-Fold" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          <span>Put away</span>
          <span className="small soft">{away.length}</span>
        </button>
      </h2>
      {isOpen &&
        away.map(({ kind, thing, word }) => {
          const name = thing.name === "" ? `a ${word} without a name` : thing.name;
          const back = () =>
            notebook.change([{ id: thing.id, kind, set: { removedAt: null } }], `${name} back on the shelf`);
          return (
            <div key={thing.id} className="Shelf-Thing-head">
              <span>
                {name} <span className="small soft">{word}</span>
              </span>
              <Word spoken={`Bring ${name} back`} onPress={() => void back().kept.catch(() => undefined)}>
                Bring it back
              </Word>
            </div>
          );
        })}
    </section>
  );
}
