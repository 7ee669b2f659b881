import type { ShownCaution } from "@captray/science/chemistry";
import { Word } from "../Word.tsx";
import { cautionHead } from "./cautionHeads.ts";
import { markRead } from "./sitting.ts";
import "../Caution.css";
import "./Cautions.css";

export interface CautionsProps {
  readonly cautions: readonly ShownCaution[];
  /** Once the table is old: the day its limits were last looked at. */
  readonly checkedOn?: string | undefined;
  /** Stands at one step of an act whose other cautions follow: the last of them closes. */
  readonly isPart?: boolean;
  /** Put away with these: ids that stand at the steps before. */
  readonly alsoPuts?: readonly string[];
}

/**
 * The cautions of an act, in one frame where the act is. What may be put away is put away for this sitting by one press; the rest
 * stays, and the supplier's safety sheet has the last word.
 */
export function Cautions({ cautions, checkedOn, isPart = false, alsoPuts = [] }: CautionsProps) {
  if (cautions.length === 0) return null;
  const away = [...cautions.filter(({ dismissible }) => dismissible).map(({ id }) => id), ...alsoPuts];
  return (
    <div className="Kit-Caution Kit-Cautions small">
      <ul>
        {cautions.map(({ id, text }) => (
          <li key={id}>
            <b>{cautionHead(id)}</b> {text}
            {checkedOn !== undefined && <span className="Kit-Cautions-date"> As of {checkedOn}.</span>}
          </li>
        ))}
      </ul>
      {!isPart && <p>The supplier’s safety sheet and your local rules come first.</p>}
      {!isPart && away.length > 0 && (
        <Word onPress={() => markRead(away)} spoken="Cautions read, for this sitting">
          Read, for this sitting
        </Word>
      )}
    </div>
  );
}
