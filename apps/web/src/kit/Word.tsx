import type { ReactNode } from "react";
import { Button as Press } from "react-aria-components";
import "./Word.css";

export type WordProps = {
  readonly children: ReactNode;
  /** What a screen reader says, where the words alone are not enough. */
  readonly spoken?: string;
  /** In a line of text: the touch area grows over the neighbouring lines, the line does not. */
  readonly inline?: boolean;
} & ({ readonly to: string; readonly onPress?: never } | { readonly to?: never; readonly onPress: () => void });

/** A word to follow: `to` a page of the app ("/shelf"), or what `onPress` does. */
export function Word({ children, spoken, inline, to, onPress }: WordProps) {
  const marks = { className: "Kit-Word", "data-inline": inline || undefined };
  const label = spoken === undefined ? {} : { "aria-label": spoken };
  if (to !== undefined) {
    return (
      <a {...marks} {...label} href={`#${to}`}>
        {children}
      </a>
    );
  }
  return (
    <Press type="button" {...marks} {...label} onPress={onPress}>
      {children}
    </Press>
  );
}
