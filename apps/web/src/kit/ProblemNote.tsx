import type { ReactNode } from "react";
import "./ProblemNote.css";

export interface ProblemNoteProps {
  /** What will happen. */
  readonly head: string;
  /** Why, in numbers of the scene: one sentence. */
  readonly children: ReactNode;
  /** One or two ways out, as buttons. */
  readonly ways?: ReactNode;
}

/** A problem said in words, with its way out. */
export function ProblemNote({ head, children, ways }: ProblemNoteProps) {
  return (
    <div className="Kit-ProblemNote" role="status">
      <h3>{head}</h3>
      <div className="say">{children}</div>
      {ways !== undefined && <div className="Kit-ProblemNote-ways">{ways}</div>}
    </div>
  );
}
