import type { ReactNode } from "react";

/** An empty place: what will be here, and what to do for it. `way` is the word or button that does it. */
export function NothingYet({ children, way }: { readonly children: ReactNode; readonly way?: ReactNode }) {
  return (
    <div className="Kit-NothingYet">
      <p className="say">{children}</p>
      {way}
    </div>
  );
}
