import { paintOf } from "./paintOf.ts";
import type { Drawing, Paint, Shape } from "./shape.ts";

/** A drawing as the text of an SVG picture that stands alone: numbers to three decimals, words as text. */
export function svgOf({ drawing }: { readonly drawing: Drawing }): string {
  const { width, height, shapes, says } = drawing;
  const size = `width="${digits(width)}" height="${digits(height)}" viewBox="0 0 ${digits(width)} ${digits(height)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-label="${escaped(says)}">`,
    ...shapes.map((shape) => `  ${elementOf(shape)}`),
    "</svg>",
    "",
  ].join("\n");
}

function elementOf(shape: Shape): string {
  switch (shape.kind) {
    case "path":
      return element("path", shape.name, {
        d: shape.d.replace(/-?\d+\.\d+/g, (number) => digits(Number(number))),
        fill: "none",
        stroke: paint(shape.stroke),
        "stroke-width": shape.width,
        "stroke-dasharray": shape.dashes?.join(" "),
        opacity: shape.opacity,
      });
    case "rect": {
      const { x, y, width, height, fill, stroke, strokeWidth } = shape;
      const looks = { fill: fill === undefined ? "none" : paint(fill), stroke: stroke && paint(stroke) };
      return element("rect", shape.name, { x, y, width, height, ...looks, "stroke-width": strokeWidth });
    }
    case "circle": {
      const { x, y, radius, fill, stroke, strokeWidth } = shape;
      const looks = { fill: paint(fill), stroke: paint(stroke), "stroke-width": strokeWidth };
      return element("circle", shape.name, { cx: x, cy: y, r: radius, ...looks });
    }
    case "polygon":
      return element("polygon", shape.name, {
        points: shape.points.map(([x, y]) => `${digits(x)},${digits(y)}`).join(" "),
        fill: paint(shape.fill),
      });
    case "text": {
      const { x, y, anchor, size, isBold, isRead, turnDeg, ink, text } = shape;
      const face = { "font-family": isRead ? "var(--read)" : undefined };
      const looks = { "font-size": size, "font-weight": isBold ? 600 : undefined, ...face, fill: paint(ink) };
      const turn = turnDeg === undefined ? undefined : `rotate(${digits(turnDeg)} ${digits(x)} ${digits(y)})`;
      const place = { x, y, transform: turn, "text-anchor": anchor === "start" ? undefined : anchor };
      return element("text", shape.name, { ...place, ...looks }, escaped(text));
    }
  }
}

function element(
  kind: string,
  name: string | undefined,
  attributes: Readonly<Record<string, string | number | undefined>>,
  inside?: string,
): string {
  const said = Object.entries({ "data-name": name && escaped(name), ...attributes })
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? digits(value) : value}"`)
    .join("");
  return inside === undefined ? `<${kind}${said}/>` : `<${kind}${said}>${inside}</${kind}>`;
}

function paint(of: Paint): string {
  return paintOf({ paint: of });
}

function digits(value: number): string {
  return String(Number(value.toFixed(3)));
}

function escaped(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}
