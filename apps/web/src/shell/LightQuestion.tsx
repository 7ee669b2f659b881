import { useEffect, useRef } from "react";
import { Button } from "../kit/Button.tsx";
import { Caution } from "../kit/Caution.tsx";
import { darkList } from "../kit/darkList.ts";
import { Word } from "../kit/Word.tsx";
import "./LightQuestion.css";

/** On the way into red light: it is red already, and this is what the page cannot do by itself. */
export function BeforeTheDark({ onGoOn, onBack }: { readonly onGoOn: () => void; readonly onBack: () => void }) {
  const head = useFocus();
  return (
    <main className="Shell-LightQuestion">
      <h1 ref={head} tabIndex={-1}>
        Before the lights go out
      </h1>
      <ul>
        {darkList.map(([what, why]) => (
          <li key={what}>
            <b>{what}</b>
            <span>{why}</span>
          </li>
        ))}
      </ul>
      <p className="say">
        Every point of this screen is red. Whether that fogs your paper, only a test of your own can say.
      </p>
      <Caution stuff="Mains and wet hands.">
        Lamp and leads out of reach of splashes; switch with a dry hand. The supplier’s safety sheet comes first.
      </Caution>
      <div className="Shell-LightQuestion-ways">
        <Button main wide big onPress={onGoOn}>
          Lights are out
        </Button>
        <Word onPress={onBack}>Not yet: back to daylight</Word>
      </div>
    </main>
  );
}

function useFocus() {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  return head;
}
