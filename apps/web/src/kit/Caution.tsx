import type { ReactNode } from "react";
import "./Caution.css";

/** A caution, where the act is: first the stuff or the act, then the rule. It cannot be put away. */
export function Caution({ stuff, children }: { readonly stuff: string; readonly children: ReactNode }) {
  return (
    <p className="Kit-Caution small">
      <b>{stuff}</b> {children}
    </p>
  );
}
