import { holdersOf, loadingDoubts, loadingSteps, planLoading, type SideOf } from "@captray/notebook/answers";
import type { Holder, PaperBox, RecordId, Result } from "@captray/notebook/records";
import { type ReactNode, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { beginning } from "../../../kit/beginning.ts";
import { Choice } from "../../../kit/Choice.tsx";
import { holderWords } from "../../../kit/holderWords.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { FilledSide } from "../../../kit/sides/FilledSide.tsx";
import { Sides } from "../../../kit/sides/Sides.tsx";
import { sideSaid } from "../../../kit/sides/sideSaid.ts";
import { Word } from "../../../kit/Word.tsx";
import { boxSaid, doubtWords, intoWords, sheetsSaid } from "./loadingWords.ts";
import { ReadingOut } from "./ReadingOut.tsx";
import "./Loading.css";

type Becomes = Result | "later";

/** A loading planned in the light: which sides, from which box, what they become; then it is read out in the dark. */
export default function LoadingPage() {
  const holders = useShelf("holder");
  const boxes = useShelf("paperBox");
  if (holders.length === 0 || boxes.length === 0) {
    const [missing, to] = holders.length === 0 ? ["holder", "/shelf/holder/new"] : ["box of paper", "/shelf/box/new"];
    return (
      <Page title="Load holders" closeTo="/shelf">
        <NothingYet way={<Word to={to}>Put a {missing} on the shelf</Word>}>
          A loading needs a holder and a box of paper. It is planned here in the light, and read out in the dark, side
          by side.
        </NothingYet>
      </Page>
    );
  }
  return (
    <Page title="Load holders" closeTo="/shelf">
      <Plan holders={holders} boxes={boxes} />
    </Page>
  );
}

function Plan({ holders, boxes }: { readonly holders: readonly Holder[]; readonly boxes: readonly PaperBox[] }) {
  const notebook = useNotebook();
  const cards = useCards();
  const recipes = useShelf("recipe");
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [full, setFull] = useState<string>();
  const [boxId, setBoxId] = useState<string>();
  const [becomes, setBecomes] = useState<Becomes>("later");
  const [recipeId, setRecipeId] = useState("");
  const [left, setLeft] = useState<readonly string[]>([]);

  const known = holdersOf({ holders, cards });
  const paperBox = boxes.find(({ id }) => id === boxId) ?? boxes.at(-1);
  const sideIds = known.flatMap(({ sides }) =>
    sides.flatMap(({ id, state }) => (state === "empty" && chosen.includes(id) ? [id as string] : [])),
  );
  const laidOut = cards.filter(
    ({ state, links, plannedS }) =>
      state === "blank" &&
      plannedS === undefined &&
      links.sideId === undefined &&
      (links.paperBoxId === undefined || links.paperBoxId === paperBox?.id),
  );
  const first = [...laidOut].reverse().filter(({ id }) => !left.includes(id));
  const result = becomes === "later" ? undefined : becomes;
  const fitting = recipes.filter((one) => result !== undefined && one.result === result);
  const wish = paperBox && {
    sideIds,
    paperBox,
    result,
    recipeId: fitting.find(({ id }) => id === recipeId)?.id,
    laidOut: first,
  };
  const plan =
    wish && planLoading({ holders, cards, wish, freshIds: sideIds.map(() => notebook.newId()), now: momentNow() });
  const steps = loadingSteps({ holders, cards });
  const press = (side: SideOf) => {
    if (side.state !== "empty") return setFull(full === side.id ? undefined : side.id);
    setFull(undefined);
    setChosen(chosen.includes(side.id) ? chosen.filter((id) => id !== side.id) : [...chosen, side.id]);
  };
  const empty = known.flatMap(({ sides }) => sides.flatMap(({ id, state }) => (state === "empty" ? [id] : [])));
  const layOut = () => {
    if (plan?.kind !== "planned") return;
    notebook.change(plan.sets, `${plan.codes.join(", ")} laid out for loading`).kept.catch(() => undefined);
    setChosen([]);
  };

  return (
    <div className="Shelf-Loading">
      <div>
        <Section
          head="Which sides"
          aside={
            empty.length > 0 ? (
              <Word inline onPress={() => setChosen(empty)}>
                all that are empty
              </Word>
            ) : undefined
          }
        >
          {known.map(({ holder, sides }) => {
            const inTheWay = sides.find(({ id, state }) => id === full && state !== "empty");
            return (
              <div key={holder.id} className="Shelf-Loading-holder">
                <b>{beginning(holderWords(holder))}</b>
                <Sides
                  label={`Sides of ${holderWords(holder)}`}
                  sides={sides.map((side) => {
                    const shown = sideSaid({ side, peek: (id) => notebook.peek(id) });
                    const picked = sideIds.includes(side.id);
                    const line = picked ? "to be loaded" : shown.line;
                    return { ...shown, line, chosen: picked, onPress: () => press(side) };
                  })}
                />
                {inTheWay && <FilledSide holder={holder} side={inTheWay} onDone={() => setFull(undefined)} />}
              </div>
            );
          })}
        </Section>
      </div>
      <div>
        <Section head="From which box" aside={sideIds.length > 0 ? sheetsSaid(sideIds.length) : undefined}>
          <Pick
            label="From which box"
            labelUnseen
            value={paperBox?.id ?? ""}
            onPick={setBoxId}
            options={boxes.map(({ id, name, sheetsLeft }) => ({
              value: id as string,
              name: name === "" ? "Box without a name" : name,
              detail: sheetsLeft === undefined ? "not counted" : `${sheetsLeft} left`,
            }))}
          />
          {paperBox &&
            sideIds.length > 0 &&
            loadingDoubts({ holders, sideIds, paperBox }).map((doubt) => (
              <ProblemNote key={doubt.kind} head={doubtWords(doubt).head}>
                {doubtWords(doubt).say}
              </ProblemNote>
            ))}
          <Choice
            label="What they are to become"
            value={becomes}
            onChoose={setBecomes}
            options={[
              { value: "later", name: "said later" },
              { value: "negative", name: "paper negatives" },
              { value: "positive", name: "direct positives" },
            ]}
          />
          {fitting.length > 0 && (
            <Pick
              label="By which recipe"
              value={recipeId}
              onPick={setRecipeId}
              options={[
                { value: "", name: "said later" },
                ...fitting.map(({ id, name }) => ({ value: id as string, name })),
              ]}
            />
          )}
          {laidOut.length > 0 && (
            <fieldset className="Shelf-Loading-laidOut">
              <legend>Laid out already; these go in first</legend>
              {[...laidOut].reverse().map(({ id, code }) => (
                <label key={id}>
                  <input
                    type="checkbox"
                    checked={!left.includes(id)}
                    onChange={() => setLeft(left.includes(id) ? left.filter((one) => one !== id) : [...left, id])}
                  />
                  <span>{code}</span>
                </label>
              ))}
            </fieldset>
          )}
          {plan?.kind === "planned" && (
            <p className="say">
              Codes for the soft pencil, on the back at an edge: <b>{plan.codes.join(", ")}</b>.
            </p>
          )}
          <Button
            main={steps.length === 0}
            onPress={layOut}
            waits={plan?.kind === "planned" ? undefined : "a side to load"}
          >
            Lay {sideIds.length === 0 ? "them" : sheetsSaid(sideIds.length)} out
          </Button>
        </Section>
      </div>
      <div>
        <Section head="Then, in the dark" aside={steps.length > 0 ? `${loads(steps)} to load` : undefined}>
          {steps.length === 0 ? (
            <p className="say soft">
              What is laid out stands here, and is read out side by side: one press as each slide is shut.
            </p>
          ) : (
            <ol className="Shelf-Loading-steps">
              {steps.map((step) => (
                <li key={`${step.kind} ${step.sheet.id}`}>
                  <span>
                    {step.kind === "flash" ? (
                      <>
                        {step.sheet.code}: flash it first, {step.flashS} s
                      </>
                    ) : (
                      <>
                        <b>{beginning(intoWords(step))}</b>
                        <span className="small soft">
                          from {boxSaid(boxName(notebook.peek(step.sheet.links.paperBoxId ?? "")))}
                        </span>
                      </>
                    )}
                  </span>
                  {step.kind === "load" && (
                    <Word
                      onPress={() => void takeOut(step.sheet.id, step.sheet.code)}
                      spoken={`${step.sheet.code}: not this one`}
                    >
                      not this one
                    </Word>
                  )}
                </li>
              ))}
            </ol>
          )}
          <ReadingOut waits={steps.length === 0 ? "sheets laid out" : undefined} />
        </Section>
      </div>
    </div>
  );

  /** A sheet that was made for this plan goes with it; one that has a purpose of its own stays laid out. */
  async function takeOut(id: RecordId, code: string): Promise<void> {
    const sheet = await notebook.load(id).catch(() => undefined);
    if (sheet?.kind !== "sheet") return;
    const own = sheet.sceneId ?? sheet.label ?? sheet.notes ?? sheet.testId ?? sheet.planned;
    const set = own === undefined ? { removedAt: { ...momentNow() } } : { holderSide: null };
    notebook.change([{ id, kind: "sheet", set }], `${code} out of the plan`).kept.catch(() => undefined);
  }
}

function loads(steps: ReturnType<typeof loadingSteps>): string {
  return sheetsSaid(steps.filter(({ kind }) => kind === "load").length);
}

function boxName(record: ReturnType<ReturnType<typeof useNotebook>["peek"]>): string | undefined {
  return record?.kind === "paperBox" ? record.name : undefined;
}

/** Up to seven stand side by side; more are a list of the newest seven, and the one chosen. */
function Pick(props: {
  readonly label: string;
  readonly labelUnseen?: boolean;
  readonly value: string;
  readonly onPick: (value: string) => void;
  readonly options: readonly { readonly value: string; readonly name: string; readonly detail?: ReactNode }[];
}) {
  const { label, labelUnseen = false, value, onPick, options } = props;
  const [all, setAll] = useState(false);
  const shown =
    all || options.length <= 7 ? options : options.filter((one, i) => i >= options.length - 7 || one.value === value);
  return (
    <>
      <Choice label={label} labelUnseen={labelUnseen} value={value} onChoose={onPick} options={shown} />
      {shown.length < options.length && <Word onPress={() => setAll(true)}>{options.length - shown.length} more</Word>}
    </>
  );
}
