import type { Drawing as Picture } from "@captray/drawings/shapes";
import type { PaperName } from "@captray/drawings/trueScale";
import { createPortal } from "react-dom";
import { Drawing } from "./Drawing.tsx";
import "./TrueScale.css";

export interface TrueScaleProps {
  /** The whole page, in mm. */
  readonly page: Picture;
  readonly paper: PaperName;
}

/**
 * A page that prints true to size: on the screen its shape, on paper nothing but it.
 *
 * What is printed stands beside the app and not in it, so that no part of the app can move it or add a page.
 */
export function TrueScale({ page, paper }: TrueScaleProps) {
  return (
    <>
      <div className="Kit-TrueScale">
        <Drawing drawing={page} inMm />
      </div>
      {createPortal(
        <div className="Kit-TrueScale-print" data-paper={paper}>
          <Drawing drawing={page} inMm />
        </div>,
        document.body,
      )}
    </>
  );
}
