export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The corners of a rim in the order of time: near left, far left, far right, near right, and back. */
function corners({ x, y, width, height }: Box): readonly (readonly [number, number])[] {
  return [
    [x, y + height],
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

/** A point of a rim, at a share of the way from the near left corner up, round, and back along the near edge. */
export function rimPoint({ box, share }: { readonly box: Box; readonly share: number }): {
  readonly x: number;
  readonly y: number;
  /** Which side it lies on. */
  readonly side: "left" | "far" | "right" | "near";
} {
  const sides = ["left", "far", "right", "near"] as const;
  const points = corners(box);
  let rest = Math.min(1, Math.max(0, share)) * 2 * (box.width + box.height);
  for (const [place, side] of sides.entries()) {
    const [fromX, fromY] = points[place] ?? [0, 0];
    const [toX, toY] = points[place + 1] ?? [0, 0];
    const long = Math.abs(toX - fromX) + Math.abs(toY - fromY);
    if (rest <= long || side === "near") {
      const part = long === 0 ? 0 : Math.min(1, rest / long);
      return { x: fromX + (toX - fromX) * part, y: fromY + (toY - fromY) * part, side };
    }
    rest -= long;
  }
  return { x: box.x, y: box.y + box.height, side: "near" };
}

/** The rim from one share of the way to another, as a path. */
export function rimPath({ box, from, to }: { readonly box: Box; readonly from: number; readonly to: number }): string {
  const round = 2 * (box.width + box.height);
  const begin = rimPoint({ box, share: from });
  const end = rimPoint({ box, share: to });
  const between = corners(box)
    .slice(1, 4)
    .filter((_, place) => {
      const share = (box.height + (place > 0 ? box.width : 0) + (place > 1 ? box.height : 0)) / round;
      return share > from && share < to;
    });
  const rest = [...between, [end.x, end.y] as const].map(([x, y]) => `L${at(x)} ${at(y)}`).join("");
  return `M${at(begin.x)} ${at(begin.y)}${rest}`;
}

function at(px: number): string {
  return px.toFixed(2);
}
