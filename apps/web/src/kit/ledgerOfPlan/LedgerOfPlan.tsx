import { type LedgerLineFacts, ledgerWords } from "@captray/science/errors";
import type { LedgerLineWithFacts } from "@captray/science/exposure";
import { formatStops, showTime } from "@captray/science/notation";
import { Ledger, LedgerLine, LedgerSum } from "../Ledger.tsx";
import { bracketScale } from "../ledgerBrackets.ts";
import { Word } from "../Word.tsx";
import { inTheIndex, shownLines, sourceWords } from "./ledgerLines.ts";

export interface LedgerOfPlanProps {
  readonly ledger: readonly LedgerLineWithFacts[];
  readonly timeS: number;
  readonly timeStops: { readonly value: number; readonly sd: number };
  readonly lengthUnit: "mm" | "inch";
  /** Where the colour of the light is chosen: "/camera/light/…". */
  readonly lightTo?: string;
  /** At a desk the first doubtful line stands open already. */
  readonly firstOpen?: boolean;
}

/** The ledger of a plan, line by line: what was done, what was known, stops with their doubt, and the reason on opening. */
export function LedgerOfPlan(props: LedgerOfPlanProps) {
  const { ledger, timeS, timeStops, lengthUnit, lightTo, firstOpen = false } = props;
  const lines = shownLines(ledger);
  const perStop = bracketScale({ sds: [...lines.map((line) => line.stops.sd), timeStops.sd] });
  const doubtful = lines.reduce<LedgerLineWithFacts | undefined>(
    (most, line) => (most === undefined || line.stops.sd > most.stops.sd ? line : most),
    undefined,
  );
  return (
    <Ledger caption={`Ledger: ten lines from the reading to a cap time of ${showTime({ timeS })}`}>
      {lines.map((line) => {
        const words = ledgerWords({ line: line.line, facts: line.facts, lengthUnit } as LedgerLineFacts & {
          lengthUnit: "mm" | "inch";
        });
        return (
          <LedgerLine
            key={line.line}
            name={words.name}
            source={words.known}
            stops={line.stops.value}
            sd={line.stops.sd}
            inTheEi={inTheIndex(line)}
            perStop={perStop}
            openAtFirst={firstOpen && line === doubtful}
          >
            <p>{words.ground}</p>
            <p className="Kit-Ledger-figures">{words.sum}</p>
            <p>{words.surer}</p>
            {line.line === "hand" && <Word to="/camera/practice">Practise with the cap</Word>}
            <p className="small soft">Source: {sourceWords(words.source)}</p>
            {line.line === "colourOfLight" && lightTo !== undefined && <Word to={lightTo}>Choose the light</Word>}
          </LedgerLine>
        );
      })}
      <LedgerSum
        name={`Cap time ${showTime({ timeS })}`}
        source={`2 to the power ${formatStops({ stops: timeStops.value, sd: 0.01 }).replace(/^[+]/, "")} is ${figures(timeS)}`}
        stops={timeStops.value}
        sd={timeStops.sd}
        perStop={perStop}
      />
    </Ledger>
  );
}

function figures(timeS: number): string {
  return timeS >= 100 ? `${Math.round(timeS)} s` : `${Number(timeS.toPrecision(3))} s`;
}
