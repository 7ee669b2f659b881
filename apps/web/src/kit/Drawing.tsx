import { type Drawing as Picture, paintOf, type Shape } from "@captray/drawings/shapes";
import { memo } from "react";

/** A drawing of our own: its shapes, and the sentence that gives its numbers. `inMm`: 1 of it is 1 mm, where there is room. */
export function Drawing({ drawing, inMm = false }: { readonly drawing: Picture; readonly inMm?: boolean }) {
  const { width, height, shapes, says } = drawing;
  const unit = inMm ? "mm" : "";
  return (
    <svg
      className="Kit-Drawing"
      width={`${width}${unit}`}
      height={`${height}${unit}`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={says}
    >
      {shapes.map((shape, place) => (
        // A drawing has no names for all its shapes; they come in the same order each time.
        // biome-ignore lint/suspicious/noArrayIndexKey: the order is the identity
        <Mark key={place} shape={shape} />
      ))}
    </svg>
  );
}

// A shape that is the same object as before is not drawn anew.
const Mark = memo(function Mark({ shape }: { readonly shape: Shape }) {
  switch (shape.kind) {
    case "path":
      return (
        <path
          data-name={shape.name}
          d={shape.d}
          fill="none"
          stroke={paintOf({ paint: shape.stroke })}
          strokeWidth={shape.width}
          strokeDasharray={shape.dashes?.join(" ")}
          opacity={shape.opacity}
        />
      );
    case "rect":
      return (
        <rect
          data-name={shape.name}
          x={shape.x}
          y={shape.y}
          width={shape.width}
          height={shape.height}
          fill={shape.fill === undefined ? "none" : paintOf({ paint: shape.fill })}
          stroke={shape.stroke && paintOf({ paint: shape.stroke })}
          strokeWidth={shape.strokeWidth}
        />
      );
    case "circle":
      return (
        <circle
          data-name={shape.name}
          cx={shape.x}
          cy={shape.y}
          r={shape.radius}
          fill={paintOf({ paint: shape.fill })}
          stroke={paintOf({ paint: shape.stroke })}
          strokeWidth={shape.strokeWidth}
        />
      );
    case "polygon":
      return (
        <polygon
          data-name={shape.name}
          points={shape.points.map((point) => point.join(",")).join(" ")}
          fill={paintOf({ paint: shape.fill })}
        />
      );
    case "text":
      return (
        <text
          data-name={shape.name}
          x={shape.x}
          y={shape.y}
          transform={shape.turnDeg === undefined ? undefined : `rotate(${shape.turnDeg} ${shape.x} ${shape.y})`}
          textAnchor={shape.anchor}
          fontSize={shape.size}
          fontWeight={shape.isBold ? 600 : undefined}
          style={shape.isRead ? { fontFamily: "var(--read)" } : undefined}
          fill={paintOf({ paint: shape.ink })}
        >
          {shape.text}
        </text>
      );
  }
});
