import type { ReactNode } from "react";
import { Button as Press } from "react-aria-components";
import "./Button.css";

export interface ButtonProps {
  /** The words name the act: “To the cap”. */
  readonly children: ReactNode;
  readonly onPress: () => void;
  /** The one main press of a screen. */
  readonly main?: boolean;
  /** Why it cannot be pressed yet; it stays in the key order, and the words stand beside it. */
  readonly waits?: string | undefined;
  /** Second words at the far end: “seven fields, a time”. */
  readonly aside?: string;
  /** For the cap and the trays: at least 96 high. */
  readonly big?: boolean;
  /** Takes the whole row. */
  readonly wide?: boolean;
  /** What a screen reader says, where the words alone are not enough. */
  readonly spoken?: string;
}

/** A press: framed in the colour of the hand, at least 56 px high. */
export function Button({ children, onPress, main, waits, aside, big, wide, spoken }: ButtonProps) {
  const marks = {
    className: "Kit-Button",
    "data-main": main || undefined,
    "data-big": big || undefined,
    "data-wide": wide || undefined,
    "data-aside": aside !== undefined || undefined,
  };
  const words = (
    <>
      <span>{children}</span>
      {aside !== undefined && <span className="Kit-Button-aside">{aside}</span>}
    </>
  );
  if (waits !== undefined) {
    return (
      <span className="Kit-Button-waiting">
        <button type="button" {...marks} data-waits aria-disabled="true" aria-label={spoken}>
          {words}
        </button>
        <span className="small soft">waits: {waits}</span>
      </span>
    );
  }
  return (
    <Press type="button" {...marks} onPress={onPress} {...(spoken === undefined ? {} : { "aria-label": spoken })}>
      {words}
    </Press>
  );
}
