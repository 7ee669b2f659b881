/** Where on a sheet a point lies, in words: “upper left”, “left edge”, “middle”; shares of the sheet from its upper left corner. */
export function placeWords({ x, y }: { readonly x: number; readonly y: number }): string {
  const edges = [x < 0.07 && "left", x > 0.93 && "right", y < 0.07 && "upper", y > 0.93 && "lower"].filter(
    (edge) => edge !== false,
  );
  const across = x < 1 / 3 ? "left" : x > 2 / 3 ? "right" : "";
  const down = y < 1 / 3 ? "upper" : y > 2 / 3 ? "lower" : "";
  if (edges.length > 1) return `${down} ${across} corner`;
  const [edge] = edges;
  if (edge === "left" || edge === "right") return [down, edge, "edge"].filter(Boolean).join(" ");
  if (edge !== undefined) return `${edge} edge${across === "" ? "" : `, ${across}`}`;
  return [down, across].filter(Boolean).join(" ") || "middle";
}
