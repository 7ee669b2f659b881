import { type ReactNode, useId } from "react";
import "./Section.css";

export interface SectionProps {
  readonly head: string;
  /** Second words at the right of the head. */
  readonly aside?: ReactNode;
  /** Only where the order is the work. */
  readonly number?: number;
  readonly children: ReactNode;
}

/** A part of a page: a bar, a head, and what it holds. */
export function Section({ head, aside, number, children }: SectionProps) {
  const id = useId();
  return (
    <section className="Kit-Section" aria-labelledby={id}>
      <header>
        {number !== undefined && (
          <span className="Kit-Section-number" aria-hidden="true">
            {number}
          </span>
        )}
        <h2 id={id}>{head}</h2>
        {aside !== undefined && <span className="Kit-Section-aside small soft">{aside}</span>}
      </header>
      {children}
    </section>
  );
}
