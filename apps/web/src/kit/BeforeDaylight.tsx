import { useEffect, useRef } from "react";
import { Button } from "./Button.tsx";
import "./BeforeDaylight.css";

export interface BeforeDaylightProps {
  /** What lies open in the trays and would be fogged, in words: "W32 is not past its bleach." */
  readonly fogs?: string | undefined;
  readonly onGoOn: () => void;
  readonly onBack: () => void;
}

/** On the way out of red light, which could fog what lies open. */
export function BeforeDaylight({ fogs, onGoOn, onBack }: BeforeDaylightProps) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  return (
    <main className="Kit-BeforeDaylight">
      <h1 ref={head} tabIndex={-1}>
        Boxes and holders shut, every sheet past the bleach?
      </h1>
      {fogs !== undefined && <p className="Kit-BeforeDaylight-fogs">{fogs}</p>}
      <p className="say">In a club: everybody’s. The screen turns to paper white at once.</p>
      <div className="Kit-BeforeDaylight-ways">
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
