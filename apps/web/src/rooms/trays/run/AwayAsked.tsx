import { useEffect, useRef, useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { saidTime, trayTime } from "./runWords.ts";
import type { RunAtHand } from "./useRun.ts";

const stepS = (awayS: number) => (awayS < 60 ? 10 : awayS < 600 ? 30 : 300);

/** Where the machine's clock was set while the page was gone: only the person knows how long that was. Nothing is lost meanwhile. */
export function AwayAsked({ at }: { readonly at: RunAtHand }) {
  const [awayS, setAwayS] = useState(0);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  return (
    <div className="Trays-Menu">
      <header className="Trays-Run-top">
        <h1 ref={head} tabIndex={-1}>
          How long was the page gone?
        </h1>
      </header>
      <p className="say">{at.askedWords} Everything pressed before is kept. By a watch, or as near as you can tell:</p>
      <div className="Trays-Step">
        <Button big spoken="less" onPress={() => setAwayS((now) => Math.max(0, now - stepS(now - 1)))}>
          −
        </Button>
        <b>{trayTime(awayS)}</b>
        <Button big spoken="more" onPress={() => setAwayS((now) => now + stepS(now))}>
          +
        </Button>
      </div>
      <div className="Trays-Menu-words">
        <Button big wide main onPress={() => at.wasAway(awayS)}>
          {awayS === 0 ? "Hardly at all: go on" : `Go on, ${saidTime(awayS)} later`}
        </Button>
      </div>
    </div>
  );
}
