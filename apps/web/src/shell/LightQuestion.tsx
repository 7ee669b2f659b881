import { useEffect, useRef } from "react";
import { Button } from "../kit/Button.tsx";
import { Caution } from "../kit/Caution.tsx";
import { Word } from "../kit/Word.tsx";
import "./LightQuestion.css";

const beforeTheDark: readonly (readonly [string, string])[] = [
  ["Screen at its least brightness", "by hand; the page cannot do it"],
  ["Do not disturb is on", "no call, no message lights up"],
  ["Rotation is locked", "a turn redraws the whole screen"],
  ["Warm tint and night colours off", "they mix the colours anew"],
  ["Charging light covered", "phone on its battery, no lead"],
  ["Screen faces away from the paper", "half a metre off"],
];

/** On the way into red light: it is red already, and this is what the page cannot do by itself. */
export function BeforeTheDark({ onGoOn, onBack }: { readonly onGoOn: () => void; readonly onBack: () => void }) {
  const head = useFocus();
  return (
    <main className="Shell-LightQuestion">
      <h1 ref={head} tabIndex={-1}>
        Before the lights go out
      </h1>
      <ul>
        {beforeTheDark.map(([what, why]) => (
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

/** On the way out of red light, which could fog what lies open. */
export function BeforeDaylight({ onGoOn, onBack }: { readonly onGoOn: () => void; readonly onBack: () => void }) {
  const head = useFocus();
  return (
    <main className="Shell-LightQuestion">
      <h1 ref={head} tabIndex={-1}>
        Boxes and holders shut, every sheet past the bleach?
      </h1>
      <p className="say">In a club: everybody’s. The screen turns to paper white at once.</p>
      <div className="Shell-LightQuestion-ways">
        <Button main wide big onPress={onBack}>
          Stay in red light
        </Button>
        <Button wide onPress={onGoOn}>
          All shut: daylight
        </Button>
      </div>
    </main>
  );
}

function useFocus() {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  return head;
}
