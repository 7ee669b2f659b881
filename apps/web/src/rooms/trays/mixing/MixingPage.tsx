import { saltName } from "../../../kit/baths/saltName.ts";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { Page } from "../../../kit/Page.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { MixingAnswer } from "./MixingAnswer.tsx";
import { readPercent, readSheets, readVolume } from "./mixingReaders.ts";
import type { MixingTexts, MixingView, StockView } from "./mixingState.ts";
import { labelAsks, labelHint, stockWords, wantWords } from "./mixingWords.ts";
import { useMixing } from "./useMixing.ts";
import "./Mixing.css";

interface PartProps {
  readonly view: MixingView;
  readonly texts: MixingTexts;
  readonly put: (texts: MixingTexts) => void;
}

/** What to weigh and pour for one bath, from the jars and bottles a person has. */
export default function MixingPage({ id }: { readonly id: string }) {
  const { view, texts, put, mixedNow } = useMixing(id);
  return (
    <Page title="Mix a bath" closeTo="/trays/baths">
      <div className="Trays-Mixing">
        <div className="Trays-Mixing-asks">
          <WhichBath view={view} texts={texts} put={put} />
          <HowMuch view={view} texts={texts} put={put} />
          <WhatYouHave view={view} texts={texts} put={put} />
        </div>
        <MixingAnswer view={view} put={put} onMixed={mixedNow} />
      </div>
    </Page>
  );
}

function WhichBath({ view, put }: PartProps) {
  return (
    <Section head="Which bath">
      {view.recipes.length > 7 ? (
        <ul className="Trays-Mixing-list">
          {view.recipes.map(({ value, name }) => (
            <li key={value}>
              <Word onPress={() => put({ recipe: value, role: "" })}>{name}</Word>
              {value === view.recipeId && <b> chosen</b>}
            </li>
          ))}
        </ul>
      ) : (
        <Choice
          label="Recipe"
          value={view.recipeId}
          onChoose={(recipe) => put({ recipe, role: "" })}
          options={view.recipes}
        />
      )}
      <Choice
        label="Bath"
        value={view.bath?.role as string | undefined}
        onChoose={(role) => put({ role, volume: "" })}
        options={view.roles.map(({ role, name }) => ({ value: role as string, name }))}
      />
    </Section>
  );
}

function HowMuch({ view, texts, put }: PartProps) {
  return (
    <Section head="How much" aside={`the tray asks for ${view.proposedMl} ml`}>
      <Choice label="Sheet" value={view.size} onChoose={(size) => put({ size })} options={view.sizes} />
      <Field
        label="Sheets this sitting"
        text={texts.sheets ?? String(view.sheets)}
        onText={(sheets) => put({ sheets })}
        read={readSheets}
        kind="number"
        signs={4}
      />
      <Field
        label="Bath"
        text={texts.volume ?? ""}
        onText={(volume) => put({ volume })}
        read={readVolume}
        kind="number"
        after="ml"
        hint={String(view.proposedMl)}
        signs={6}
        aside="10 mm deep, with 20 mm round the sheet"
      />
      {view.wants.map(({ what, text }) => (
        <Field
          key={what}
          label={wantWords(what)}
          text={text}
          onText={(next) => put({ [`want.${what}`]: next })}
          read={readPercent}
          kind="number"
          after="% w/v"
          signs={5}
          aside="grams in 100 ml of the bath"
        />
      ))}
      {view.isBleach && (
        <>
          <Choice
            label="Water"
            value={texts.water ?? "tap"}
            onChoose={(water) => put({ water })}
            options={[
              { value: "deionised", name: "deionised" },
              { value: "tap", name: "from the tap" },
            ]}
          />
          <Choice
            label="Paper"
            value={texts.base ?? "rc"}
            onChoose={(base) => put({ base })}
            options={[
              { value: "rc", name: "resin-coated" },
              { value: "fibre", name: "fibre" },
            ]}
          />
        </>
      )}
    </Section>
  );
}

function WhatYouHave({ view, texts, put }: PartProps) {
  return (
    <Section head="What you have">
      {view.stocks.map((stock) => (
        <Stock key={stock.what} stock={stock} texts={texts} put={put} />
      ))}
      <Choice
        label="In the same room"
        value={texts.room}
        onChoose={(room) => put({ room })}
        options={[
          { value: "none", name: "none of these" },
          { value: "hypochlorite", name: "chlorine bleach" },
          { value: "solvent", name: "acetone, spirit" },
          { value: "ammonia", name: "ammonia" },
        ]}
      />
    </Section>
  );
}

const salts: Readonly<Record<string, readonly { readonly value: string; readonly name: string }[]>> = {
  citric: [
    { value: "C6H8O7.H2O", name: saltName("C6H8O7.H2O") },
    { value: "C6H8O7", name: saltName("C6H8O7") },
  ],
  sulfite: [
    { value: "Na2SO3", name: saltName("Na2SO3") },
    { value: "Na2SO3.7H2O", name: saltName("Na2SO3.7H2O") },
  ],
};

interface StockProps extends Pick<PartProps, "texts" | "put"> {
  readonly stock: StockView;
}

function Stock({ stock, texts, put }: StockProps) {
  const { what, options, chosen, isNew, isPowder, asked } = stock;
  return (
    <fieldset className="Trays-Mixing-stock">
      <legend>{stockWords(what)}</legend>
      {options.length > 1 && (
        <Choice
          label="Which one"
          labelUnseen
          value={chosen}
          onChoose={(next) => put({ [`stock.${what}`]: next })}
          options={options.slice(-7)}
        />
      )}
      {isNew && (
        <>
          <PlainField
            label="What you call it"
            text={texts[`name.${what}`] ?? ""}
            onText={(next) => put({ [`name.${what}`]: next })}
            hint={asked.name}
            most={60}
          />
          {isPowder ? (
            <Choice
              label="In the jar"
              value={asked.formula}
              onChoose={(next) => put({ [`formula.${what}`]: next })}
              options={salts[what] ?? []}
            />
          ) : (
            <PlainField
              label={labelAsks(what)}
              text={texts[`label.${what}`] ?? ""}
              onText={(next) => put({ [`label.${what}`]: next })}
              hint={labelHint(what)}
              most={60}
            />
          )}
        </>
      )}
    </fieldset>
  );
}
