import { layStrokes, strokesWidth, strokeWidth } from "./capStrokes.ts";

/** One stroke a tick, in fives, and the lens cap over the one at which it goes on. */
export function CapStrokes({ ticks, done }: { readonly ticks: number; readonly done: number }) {
  const { strokes, strokeHeight, numbers, cap, height, minute, minutes } = layStrokes({ ticks, done });
  return (
    <svg className="Camera-CapStrokes" viewBox={`0 0 ${strokesWidth} ${height}`} aria-hidden="true" fill="currentColor">
      {minutes > 1 && (
        <text x="0" y="20" fontSize="17">
          minute {minute} of {minutes}
        </text>
      )}
      {strokes.map(({ x, y, filled }) => (
        <g key={`${x} ${y}`}>
          {filled < 1 && (
            <rect
              x={x + 1}
              y={y + 1}
              width={strokeWidth - 2}
              height={strokeHeight - 2}
              fill="none"
              stroke="currentColor"
              strokeWidth="2"
            />
          )}
          {filled > 0 && (
            <rect x={x} y={y + strokeHeight * (1 - filled)} width={strokeWidth} height={strokeHeight * filled} />
          )}
        </g>
      ))}
      {numbers.map(({ x, y, n }) => (
        <text key={n} x={x} y={y} fontSize="17" textAnchor="middle">
          {n}
        </text>
      ))}
      {cap !== null && (
        <g transform={`translate(${cap.x} ${cap.y})`}>
          <path d="M-15-22h30v12a3 3 0 0 1-3 3h-24a3 3 0 0 1-3-3z" />
          <path d="M-18-27h36v6h-36z" />
        </g>
      )}
    </svg>
  );
}
