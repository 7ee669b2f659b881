/** What a shape is drawn with: one of the page's own colours, or the grey of a density, which is data. */
export type Paint = "ink" | "soft" | "hand" | "rule" | "paper" | "mount" | { readonly density: number };

interface Named {
  /** What the shape stands for, so that it can be found in the drawing: "area hull". */
  readonly name?: string | undefined;
}

export interface PathShape extends Named {
  readonly kind: "path";
  /** The commands of an SVG path. */
  readonly d: string;
  readonly stroke: Paint;
  readonly width: number;
  /** Lengths of strokes and gaps; without them an unbroken line. */
  readonly dashes?: readonly number[] | undefined;
  readonly opacity?: number | undefined;
}

export interface RectShape extends Named {
  readonly kind: "rect";
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill?: Paint | undefined;
  readonly stroke?: Paint | undefined;
  readonly strokeWidth?: number | undefined;
}

export interface CircleShape extends Named {
  readonly kind: "circle";
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly fill: Paint;
  readonly stroke: Paint;
  readonly strokeWidth: number;
}

export interface PolygonShape extends Named {
  readonly kind: "polygon";
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly fill: Paint;
}

export interface TextShape extends Named {
  readonly kind: "text";
  readonly text: string;
  /** Of the anchor, on the base line. */
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "middle" | "end";
  readonly size: number;
  readonly isBold?: boolean | undefined;
  /** In the face of sentences, in place of that of figures. */
  readonly isRead?: boolean | undefined;
  /** Turned about its anchor, clockwise. */
  readonly turnDeg?: number | undefined;
  readonly ink: Paint;
}

export type Shape = PathShape | RectShape | CircleShape | PolygonShape | TextShape;

/** A picture as a list of shapes, the lowest first, in px of the page; a true-scale piece in mm. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** The numbers of the drawing in a sentence, for who does not see it. */
  readonly says: string;
}
