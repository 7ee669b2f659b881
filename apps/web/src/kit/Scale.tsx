import { type CSSProperties, type KeyboardEvent, memo, type ReactNode, useId } from "react";
import { keyMove } from "./scaleKeys.ts";
import "./Scale.css";

export interface ScaleTick {
  /** On the scale of the value. */
  readonly at: number;
  /** Figured ticks are longer. */
  readonly words?: string | undefined;
}

export interface ScaleProps {
  readonly label: string;
  /** Second words at the right of the label: “slide: longer is lighter”. */
  readonly aside?: ReactNode;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** The finest step of a finger. */
  readonly step: number;
  /** What an arrow key moves, and a page key. */
  readonly arrow: number;
  readonly page: number;
  /** Where Home leads: the advice. */
  readonly home: number;
  readonly onSlide: (value: number) => void;
  /** `now`: the finger was lifted, or the scale was left; `soon`: a key was let go, and another may follow. */
  readonly onSettle?: (when: "now" | "soon") => void;
  readonly ticks: readonly ScaleTick[];
  /** Where least and most stand, px from the left edge; so a scale lies true under a drawing. */
  readonly leastPx: number;
  readonly mostPx: number;
  /** A lens cap seen from the side, or a plain plate. */
  readonly thumb: "cap" | "plate";
  /** On the thumb: “13 s”. */
  readonly thumbWords: string;
  /** For the ear: “13 seconds, 9 to 17”. */
  readonly valueWords: string;
}

/** A value that drives a computed screen: a native range with looks of our own. */
export function Scale(props: ScaleProps) {
  const { label, aside, value, least, most, leastPx, mostPx, onSlide, onSettle } = props;
  const id = useId();
  const place = placer(props);
  const within = Math.min(most, Math.max(least, value));
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const next = keyMove({ ...props, value: within, key: event.key });
    if (next === undefined) return;
    event.preventDefault();
    onSlide(next);
  };
  const body = { "--least": `${leastPx}px`, "--most": `${mostPx}px` } as CSSProperties;
  return (
    <div className="Kit-Scale">
      <div className="Kit-Scale-head">
        <label htmlFor={id}>{label}</label>
        {aside !== undefined && <span className="small soft">{aside}</span>}
      </div>
      <div className="Kit-Scale-body" style={body}>
        <Track ticks={props.ticks} least={least} most={most} leastPx={leastPx} mostPx={mostPx} />
        <input
          id={id}
          type="range"
          min={least}
          max={most}
          step={props.step}
          value={within}
          aria-valuetext={props.valueWords}
          onChange={(event) => onSlide(Number(event.currentTarget.value))}
          onPointerUp={() => onSettle?.("now")}
          onKeyUp={() => onSettle?.("soon")}
          onBlur={() => onSettle?.("now")}
          onKeyDown={onKeyDown}
        />
        <span
          className="Kit-Scale-thumb"
          data-look={props.thumb}
          aria-hidden="true"
          style={{ transform: `translateX(calc(${place(within)}px - 50%))` }}
        >
          {props.thumbWords}
        </span>
      </div>
    </div>
  );
}

type Ends = Pick<ScaleProps, "least" | "most" | "leastPx" | "mostPx">;

// The marks stay while the thumb glides over them.
const Track = memo(function Track({ ticks, ...ends }: Ends & Pick<ScaleProps, "ticks">) {
  const place = placer(ends);
  return (
    <span className="Kit-Scale-track" aria-hidden="true">
      {ticks.map(({ at, words }) => (
        <i key={at} data-long={words !== undefined || undefined} style={{ insetInlineStart: `${place(at)}px` }}>
          {words !== undefined && <span>{words}</span>}
        </i>
      ))}
    </span>
  );
});

function placer({ least, most, leastPx, mostPx }: Ends): (at: number) => number {
  return (at) => leastPx + ((at - least) / (most - least)) * (mostPx - leastPx);
}
