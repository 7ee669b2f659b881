import { type ReactNode, useEffect } from "react";
import { openHouse } from "./house.ts";
import { NotebookContext } from "./notebookContext.ts";
import { useHouse } from "./useHouse.ts";

export interface NotebookProviderProps {
  readonly children: ReactNode;
  /** Shown until the notebook lies open: a moment. */
  readonly opening?: ReactNode;
  /** Shown where it cannot be opened: written by a newer version, or not readable at all. */
  readonly failed: (why: "newer" | "unreadable", message: string) => ReactNode;
}

/** Opens the notebook of the last time and hands it to everything below. */
export function NotebookProvider({ children, opening = null, failed }: NotebookProviderProps) {
  const house = useHouse();
  useEffect(() => void openHouse(), []);
  if (house.kind === "opening") return opening;
  if (house.kind === "failed") return failed(house.why, house.message);
  // What a screen remembers belongs to one notebook: another one starts afresh.
  return (
    <NotebookContext key={house.notebook.id} value={house.notebook}>
      {children}
    </NotebookContext>
  );
}
