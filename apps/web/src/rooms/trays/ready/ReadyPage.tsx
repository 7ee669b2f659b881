import { furtherMessageOf } from "@captray/science/errors";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Cautions } from "../../../kit/cautions/Cautions.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { LightVerdicts } from "../lightTest/LightVerdicts.tsx";
import { trayTime } from "../run/runWords.ts";
import { useReady } from "./useReady.ts";
import "./Ready.css";

type Ready = ReturnType<typeof useReady>;

/** What goes in, by which recipe, in which baths, how warm: said in the light, before the list of the dark. */
export default function ReadyPage() {
  const ready = useReady();
  const { view } = ready;
  const { recipe, goingOn } = view;
  return (
    <Page title="To the trays" closeTo="/trays">
      <div className="Trays-Ready">
        {goingOn !== undefined && (
          <ProblemNote
            head="A run goes on"
            ways={<Button onPress={() => goTo({ path: `/trays/run/${goingOn}` })}>To the run</Button>}
          >
            <p>One pair of hands, one run: the next can begin when its last sheet is out, or when it is left.</p>
          </ProblemNote>
        )}
        <Sheets ready={ready} />
        {view.candidates.length > 0 && <RecipeChoice ready={ready} />}
        {recipe !== undefined && (
          <>
            <Temperatures ready={ready} />
            <Baths ready={ready} />
            <Timetable ready={ready} />
            <Cautions cautions={ready.cautions.shown} checkedOn={ready.cautions.checkedOn} />
            <Section head="Is my light safe?">
              <LightVerdicts />
              <Word to="/trays/light">Test a light</Word>
            </Section>
            <Section head="If nobody presses">
              <Choice
                label="If nobody presses"
                labelUnseen
                value={ready.draft.waitForMe ? "waits" : "goesOn"}
                onChoose={(how) => ready.put({ ...ready.draft, waitForMe: how === "waits" })}
                options={[
                  { value: "goesOn", name: "it goes on", detail: "20 s after the end, marked “assumed”" },
                  { value: "waits", name: "it waits for me" },
                ]}
              />
            </Section>
          </>
        )}
        <Button main wide big waits={view.waits} onPress={() => goTo({ path: "/trays/dark" })}>
          Before the lights go out
        </Button>
      </div>
    </Page>
  );
}

function Sheets({ ready }: { readonly ready: Ready }) {
  const { view, turnSheet, draft, put } = ready;
  const { candidates, owing, elsewhere, lanes } = view;
  const chosen = candidates.filter(({ chosen: is }) => is);
  return (
    <Section head="Which sheets" aside={chosen.length === 0 ? undefined : chosen.map(({ code }) => code).join(", ")}>
      {candidates.length === 0 ? (
        <NothingYet way={<Word to="/camera/now">I have a reading now</Word>}>
          No exposed sheet waits. One does once the cap has been off for it; a piece of a cut sheet goes in by itself.
        </NothingYet>
      ) : (
        <ul className="Trays-Ready-sheets">
          {candidates.map(({ key, code, what, owesFlash, chosen: isChosen }) => (
            <li key={key}>
              <label className="Trays-Check">
                <input type="checkbox" checked={isChosen} onChange={() => turnSheet(key)} />
                <span>
                  <b>{code}</b> {what}
                  {owesFlash && <strong>flash owed</strong>}
                </span>
              </label>
            </li>
          ))}
        </ul>
      )}
      {elsewhere.length > 0 && <p className="small soft">In a run that goes on: {elsewhere.join(", ")}.</p>}
      {owing.map(({ code, sheetId }) => (
        <ProblemNote
          key={code}
          head={`${code} still owes its flash`}
          ways={<Button onPress={() => goTo({ path: `/camera/flash/give/${sheetId}` })}>Give the flash now</Button>}
        >
          <p>It comes before the first bath: once the paper is wet, it is too late for it.</p>
        </ProblemNote>
      ))}
      {chosen.length > 1 && (
        <Choice
          label="How they go"
          value={draft.goes}
          onChoose={(goes) => put({ ...draft, goes })}
          options={[
            { value: "apart", name: "one after another", detail: "one sheet a tray, each its own clock" },
            { value: "together", name: "as one", detail: "all in a tray, all moved at once" },
          ]}
        />
      )}
      {lanes.length > 1 && (
        <p className="small soft">They go in as they were chosen: {lanes.map(({ code }) => code).join(", ")}.</p>
      )}
    </Section>
  );
}

function RecipeChoice({ ready }: { readonly ready: Ready }) {
  const { view, draft, put } = ready;
  const { recipes, recipe, nonsense, doubtful } = view;
  return (
    <Section head="By which recipe">
      {recipes.length === 0 ? (
        <NothingYet way={<Word to="/shelf/recipes">Recipes</Word>}>
          No recipe with steps for it yet. Start from a frame, and put your own times into it.
        </NothingYet>
      ) : (
        <Choice
          label="Recipe"
          labelUnseen
          value={recipe?.id}
          onChoose={(recipeId) => put({ ...draft, recipeId, bathC: {} })}
          options={recipes.map(({ id, name, detail }) => ({ value: id as string, name, detail }))}
        />
      )}
      {nonsense.map(({ message, hint }) => (
        <ProblemNote
          key={message}
          head={message}
          ways={<Button onPress={() => goTo({ path: `/shelf/recipe/${recipe?.id ?? ""}` })}>To the recipe</Button>}
        >
          <p>{hint}</p>
        </ProblemNote>
      ))}
      {doubtful.map((words) => (
        <p key={words} className="small soft">
          {words}
        </p>
      ))}
    </Section>
  );
}

function Temperatures({ ready }: { readonly ready: Ready }) {
  const { view, temperature, stepTemperature, develops } = ready;
  if (view.temperatures.length === 0) return null;
  const follows =
    develops === undefined || Math.abs(develops.dueS - develops.writtenS) < 0.5
      ? undefined
      : `${trayTime(develops.dueS)} in place of the written ${trayTime(develops.writtenS)}`;
  return (
    <Section head="How warm" aside={follows}>
      {view.temperatures.map(({ role, name, bathC, writtenC }) => (
        <div key={role} className="Trays-Ready-warm">
          <span>
            <b>{name}</b> <span className="soft">written for {temperature(writtenC)}</span>
          </span>
          <Button big spoken={`${name}: colder`} onPress={() => stepTemperature(role, bathC, -1)}>
            −
          </Button>
          <output aria-label={`${name}, temperature`}>{temperature(bathC)}</output>
          <Button big spoken={`${name}: warmer`} onPress={() => stepTemperature(role, bathC, 1)}>
            +
          </Button>
        </div>
      ))}
    </Section>
  );
}

function Baths({ ready }: { readonly ready: Ready }) {
  const { view, draft, put } = ready;
  const offered = view.baths.filter(({ options }) => options.length > 0);
  const without = view.baths.filter(({ options }) => options.length === 0).map(({ name }) => name);
  return (
    <Section head="In which baths" aside={<Word to="/trays/baths">Baths</Word>}>
      {offered.map(({ role, name, options, chosenId }) => (
        <Choice
          key={role}
          label={name}
          value={chosenId}
          onChoose={(id) => put({ ...draft, baths: { ...draft.baths, [role]: id } })}
          options={[
            ...options.slice(0, 5).map(({ id, name: bath, detail }) => ({ value: id, name: bath, detail })),
            { value: "none", name: "not written down" },
          ]}
        />
      ))}
      {without.length > 0 && (
        <p className="small soft">
          Not on the shelf of baths: {without.join(", ")}. The run keeps its times all the same; how worn a bath was is
          then not known.
        </p>
      )}
    </Section>
  );
}

function Timetable({ ready }: { readonly ready: Ready }) {
  const { timetable } = ready.view;
  if (timetable === undefined) return null;
  if (timetable.kind === "refused") {
    const { message, hint } = furtherMessageOf({
      code: timetable.fault.code,
      facts: timetable.fault.facts,
      key: timetable.fault.key,
    });
    return (
      <ProblemNote head={message}>
        <p>{hint} The run goes without a timetable: each sheet when you press.</p>
      </ProblemNote>
    );
  }
  return (
    <Section head="The timetable" aside={`out at ${trayTime(timetable.endS)}`}>
      {timetable.says.map((words) => (
        <p key={words} className="say">
          {words}
        </p>
      ))}
    </Section>
  );
}
