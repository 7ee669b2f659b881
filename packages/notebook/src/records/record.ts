import * as z from "zod/mini";
import { assumed, longText, moment } from "./fields.ts";
import { isPlainJson, type Json } from "./plainJson.ts";
import { isRecordId, type RecordId, recordId } from "./recordId.ts";

export type Shape = Readonly<Record<string, z.ZodMiniType>>;
interface ListOf {
  readonly fields: Shape;
  readonly start?: Readonly<Record<string, unknown>>;
  /** The most items it may have; `mostItems` unless said. */
  readonly most?: number;
}
export type Lists = Readonly<Record<string, ListOf>>;

type Deep<T> = T extends string | number | boolean | null | undefined
  ? T
  : T extends readonly (infer I)[]
    ? readonly Deep<I>[]
    : { readonly [P in keyof T]: Deep<T[P]> };
type Flat<T> = { [P in keyof T]: T[P] };
type Fields<F extends Shape, Started extends PropertyKey> = {
  readonly [P in keyof F & Started]: Deep<z.output<F[P]>>;
} & { readonly [P in Exclude<keyof F, Started>]?: Deep<z.output<F[P]>> };
type StartedOf<T> = T extends { readonly start: infer S } ? keyof S : never;
type Items<L extends Lists> = {
  readonly [P in keyof L]: readonly Flat<{ readonly id: RecordId } & Fields<L[P]["fields"], StartedOf<L[P]>>>[];
};
type Whole<K extends string, F extends Shape, S extends PropertyKey, L extends Lists> = Flat<
  { readonly id: RecordId; readonly kind: K } & Fields<F, S> & Fields<Common, never> & Items<L>
>;

/** Every kind has these beside its own. */
const common = { notes: longText, assumed, createdAt: moment, removedAt: moment } satisfies Shape;
type Common = typeof common;
const ofItems = { order: z.string().check(z.maxLength(60)), removedAt: moment } satisfies Shape;

export const mostItems = 200;

/** What is set under a flat path: `rating`, or `areas.<item id>.name`; null clears it. */
export type FieldSet = Readonly<Record<string, Json>>;
/** Brings what an older form set to the next form; pure, and the same for every replica. */
export type Upgrade = (was: { readonly id: string; readonly set: FieldSet }) => FieldSet;

export interface Definition<K extends string = string, R = unknown> {
  readonly kind: K;
  /** The schema of a field by its path, or undefined where the record has no such field. */
  fieldAt(path: string): z.ZodMiniType | undefined;
  /** Builds the record from what its fields hold; values that fail their schema are left out. */
  assemble(id: string, fields: ReadonlyMap<string, Json>): R;
  /** The whole record as one object: what exports and JSON Schema speak of. */
  readonly nested: z.ZodMiniType;
  /** From the form of the key to the next one. */
  readonly upgrades: Readonly<Record<number, Upgrade>>;
  readonly start: Readonly<Record<string, unknown>>;
  readonly lists: readonly string[];
  /** The most items a list may have. */
  mostOf(list: string): number;
}

/**
 * One definition a kind gives everything: the check of a path, the start values, the nested schema and the type.
 *
 * `start` values stand wherever a field has not been set, or has been cleared; other fields are then left out.
 */
export function record<
  const K extends string,
  F extends Shape,
  S extends keyof F = never,
  L extends Lists = Record<never, never>,
>(
  kind: K,
  {
    fields,
    start,
    lists,
    upgrades = {},
  }: {
    readonly fields: F;
    readonly start?: { readonly [P in S]: z.output<F[P]> };
    readonly lists?: L;
    readonly upgrades?: Readonly<Record<number, Upgrade>>;
  },
): Definition<K, Whole<K, F, S, L>> {
  type R = Whole<K, F, S, L>;
  const own = new Map<string, z.ZodMiniType>(Object.entries<z.ZodMiniType>({ ...common, ...fields }));
  const started: Record<string, unknown> = { ...start };
  const listed = new Map(
    Object.entries<ListOf>({ ...lists }).map(([name, list]) => [
      name,
      {
        fields: new Map<string, z.ZodMiniType>(Object.entries<z.ZodMiniType>({ ...ofItems, ...list.fields })),
        start: list.start ?? {},
        shape: list.fields,
        most: list.most ?? mostItems,
      },
    ]),
  );

  function mostOf(list: string): number {
    return listed.get(list)?.most ?? mostItems;
  }

  function fieldAt(path: string): z.ZodMiniType | undefined {
    const [first = "", item, last, ...more] = path.split(".");
    if (item === undefined) return own.get(first);
    if (last === undefined || more.length > 0 || !isRecordId(item)) return undefined;
    return listed.get(first)?.fields.get(last);
  }

  function assemble(id: string, held: ReadonlyMap<string, Json>): R {
    const whole: Record<string, unknown> = { id, kind, ...started };
    const items = new Map<string, Map<string, Record<string, unknown>>>();
    for (const [path, value] of held) {
      if (value === null) continue;
      const dot = path.indexOf(".");
      if (dot < 0) {
        whole[path] = value;
        continue;
      }
      const list = path.slice(0, dot);
      const item = path.slice(dot + 1, dot + 27);
      const byId = items.get(list) ?? new Map<string, Record<string, unknown>>();
      items.set(list, byId);
      const one = byId.get(item) ?? { id: item, ...listed.get(list)?.start };
      byId.set(item, one);
      one[path.slice(dot + 28)] = value;
    }
    for (const name of listed.keys()) {
      whole[name] = [...(items.get(name)?.values() ?? [])]
        .filter((item) => item.removedAt === undefined)
        .sort((a, b) => (sortKey(a) < sortKey(b) ? -1 : 1))
        .slice(0, mostOf(name))
        .map(({ order: _, ...item }) => item);
    }
    return whole as R;
  }

  const nested = z.strictObject({
    id: recordId,
    kind: z.literal(kind),
    ...nestedFields(own, started),
    ...Object.fromEntries(
      [...listed].map(([name, list]) => [
        name,
        z
          .array(z.strictObject({ id: recordId, ...nestedFields(new Map(Object.entries(list.shape)), list.start) }))
          .check(z.maxLength(list.most)),
      ]),
    ),
  });

  return { kind, fieldAt, assemble, nested, upgrades, start: started, lists: [...listed.keys()], mostOf };
}

function nestedFields(fields: ReadonlyMap<string, z.ZodMiniType>, start: Readonly<Record<string, unknown>>): Shape {
  return Object.fromEntries([...fields].map(([name, type]) => [name, name in start ? type : z.exactOptional(type)]));
}

/** Items stand in the order they were made in, unless one was given a key that lies between its neighbours. */
function sortKey(item: Readonly<Record<string, unknown>>): string {
  const id = String(item.id);
  return `${typeof item.order === "string" ? item.order : id} ${id}`;
}

/** The record a definition gives. */
export type RecordFrom<D> = D extends Definition<string, infer R> ? R : never;

/** Whether a field set is plain, of this kind, and small enough; null clears a field. */
export function checkSet(definition: Definition, set: unknown): set is FieldSet {
  if (!isPlainJson(set) || set === null || typeof set !== "object" || Array.isArray(set)) return false;
  return Object.entries(set).every(([path, value]) => {
    const type = definition.fieldAt(path);
    return type !== undefined && (value === null || type.safeParse(value).success);
  });
}
