import { greyOf } from "@captray/drawings/shapes";
import { densityWords } from "./densityWords.ts";
import "./EyeStrip.css";

export interface EyeTone {
  readonly name: string;
  readonly density: number;
  /** Nine in ten. */
  readonly low: number;
  readonly high: number;
  /** What its contact print comes to, about. */
  readonly printed?: number | undefined;
}

export interface EyeStripProps {
  /** In order of light. */
  readonly tones: readonly EyeTone[];
  /** Over the second row: “its contact print, about, the hull at mid grey:”. */
  readonly printedHead?: string | undefined;
}

/** Greys as the eye sees the dry print, on the grey of bare paper; under those of a negative those of its contact print. */
export function EyeStrip({ tones, printedHead }: EyeStripProps) {
  const hasPrint = printedHead !== undefined && tones.some(({ printed }) => printed !== undefined);
  return (
    <div className="Kit-EyeStrip">
      <ul className="Kit-EyeStrip-tones">
        {tones.map(({ name, density, low, high }) => (
          <li key={name}>
            <b>{name}</b>
            <i style={{ background: greyOf({ density }) }} />
            <span>{densityWords({ density, low, high })}</span>
          </li>
        ))}
      </ul>
      {hasPrint && (
        <>
          <p className="Kit-EyeStrip-head">{printedHead}</p>
          <ul className="Kit-EyeStrip-tones">
            {tones.map(({ name, printed }) => (
              <li key={name}>
                <span className="unseen">{name}</span>
                {printed !== undefined && <i style={{ background: greyOf({ density: printed }) }} />}
                <span>{printed?.toFixed(2)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
