import type { OpeningsDrawing } from "./openingsDrawing.ts";
import { drawingWidth } from "./openingsDrawing.ts";

/** The openings as dots about the wanted line, with brackets that hold nine in ten of the next ones. */
export function OpeningsDrawn({ drawing, says }: { readonly drawing: OpeningsDrawing; readonly says: string }) {
  const { height, wantedX, foot, marks, rows } = drawing;
  return (
    <svg
      className="Camera-Practice-drawing"
      viewBox={`0 0 ${drawingWidth} ${height}`}
      role="img"
      aria-label={says}
      fill="none"
      stroke="currentColor"
    >
      {marks.map(({ x, words }) => (
        <g key={words}>
          <text x={x} y="15" fontSize="15" textAnchor={anchorOf(x)} fill="currentColor" stroke="none">
            {words}
          </text>
          <path d={`M${x} 20V26`} strokeWidth="1" />
        </g>
      ))}
      <path d={`M${wantedX} 20V${foot}`} strokeWidth="2.4" />
      {rows.map(({ wantedS, y, dots, bracket }) => (
        <g key={wantedS}>
          <text x="0" y={y + 5} fontSize="15" fill="currentColor" stroke="none">
            {wantedS} s
          </text>
          <path
            d={`M${bracket.from} ${y + 10}H${bracket.to}M${bracket.from} ${y + 6}v8M${bracket.to} ${y + 6}v8M${bracket.middle} ${y + 7}v6`}
            strokeWidth="1.5"
          />
          {dots.map(({ key, x, struckOut }) =>
            struckOut ? (
              <path key={key} d={`M${x - 4} ${y - 8}l8 8m0-8l-8 8`} strokeWidth="1.5" />
            ) : (
              <circle key={key} cx={x} cy={y - 4} r="4" fill="currentColor" stroke="none" />
            ),
          )}
        </g>
      ))}
    </svg>
  );
}

function anchorOf(x: number): "start" | "middle" | "end" {
  return x > drawingWidth - 24 ? "end" : "middle";
}
