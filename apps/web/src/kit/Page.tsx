import { type ReactNode, useEffect, useRef } from "react";
import { Word } from "./Word.tsx";
import "./Page.css";

let opened = 0;

export interface PageProps {
  /** The finding, or the sheet in hand; also the title of the browser's tab. */
  readonly title: string;
  /** Words at the right of the title: a way to close, or to put something down. */
  readonly aside?: ReactNode;
  /** Where “Close” leads; without it there is none. */
  readonly closeTo?: string;
  readonly children: ReactNode;
}

/** A page of a room: its title over a bar, and what stands under it. */
export function Page({ title, aside, closeTo, children }: PageProps) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (opened++ > 0) head.current?.focus({ preventScroll: true }); // the keyboard and the ear follow to the new page
  }, []);
  useEffect(() => {
    document.title = `${title}. Cap & Tray`;
  }, [title]);
  return (
    <div className="Kit-Page">
      <header className="Kit-Page-head">
        <h1 ref={head} tabIndex={-1}>
          {title}
        </h1>
        {aside}
        {closeTo !== undefined && <Word to={closeTo}>Close</Word>}
      </header>
      {children}
    </div>
  );
}
