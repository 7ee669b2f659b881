/** A span of distances that may not be, both ends included. */
export type Span = readonly [first: number, last: number];

/** `to` comes at least `least` after `from`; less than 0 says how much before it may come at most. */
export interface Edge {
  readonly from: number;
  readonly to: number;
  readonly least: number;
}

/** Two moments whose distance, `to` less `from`, may not clash. */
export interface Pair {
  readonly from: number;
  readonly to: number;
}

export interface ApartProblem {
  /** How many moments; number 0 is at 0, and none is before it. */
  readonly count: number;
  readonly edges: readonly Edge[];
  readonly pairs: readonly Pair[];
  /** The span that holds the distance of a pair, if any does. */
  readonly clash: (distance: number) => Span | undefined;
  /** Of each two, one must hold. */
  readonly either: readonly (readonly [Edge, Edge])[];
  /** The moment that is to come as early as can be. */
  readonly end: number;
  /** Only what ends before this is wanted. */
  readonly before: number;
  /** After so many branches the search gives up. */
  readonly branches: number;
}

export interface ApartAnswer {
  /** The best times found; nothing where none ends before what is known. */
  readonly times: Float64Array | undefined;
  /** Whether nothing can end earlier. */
  readonly proven: boolean;
  /** How many branches were looked at. */
  readonly looked: number;
}

interface Branch {
  readonly times: Float64Array;
  readonly endS: number;
  /** The earliest clash, and when. */
  readonly clash: { readonly either: readonly [Edge, Edge]; readonly atS: number };
  readonly added: Added | undefined;
}

interface Added extends Edge {
  readonly before: Added | undefined;
}

/**
 * The earliest end of moments that must keep their distances, some of which may be kept in either order.
 *
 * Given an order, the earliest times are longest paths and all are reached at once. So: take the earliest times, look for
 * two moments that clash, and branch into "the other way round" and "later"; the branch with the earliest end first. What
 * remains when no branch ends sooner is the best there is. Inner helper with positions, for it runs in a loop.
 */
export function apartSearch(problem: ApartProblem): ApartAnswer {
  const { count, edges, pairs, clash, either, end, before, branches } = problem;
  const out: Edge[][] = Array.from({ length: count }, () => []);
  for (const edge of edges) out[edge.from]?.push(edge);
  const tail = tailsOf(count, edges, end);
  const queue = new Int32Array(count);
  const queued = new Uint8Array(count);
  const visits = new Uint16Array(count);
  const first = new Int32Array(count);
  const after: number[] = [];
  const extra: Edge[] = [];
  const open: Branch[] = [];
  let wantedBefore = before;
  let best: Float64Array | undefined;

  const consider = (times: Float64Array, from: number, added: Added | undefined) => {
    if (!settle(times, from, added)) return;
    const endS = times[end] ?? 0;
    const clashing = firstClash(times);
    if (clashing !== undefined) return push(open, { times, endS, clash: clashing, added });
    best = times;
    wantedBefore = endS;
  };

  /** Moves what must come later; false if that comes to no end, or to one that is not wanted. */
  function settle(times: Float64Array, from: number, added: Added | undefined): boolean {
    queued.fill(0);
    visits.fill(0);
    // What was added on the way to this branch, by where it starts.
    first.fill(-1);
    extra.length = 0;
    for (let edge = added; edge !== undefined; edge = edge.before) {
      after[extra.length] = first[edge.from] ?? -1;
      first[edge.from] = extra.length;
      extra.push(edge);
    }
    queue[0] = from;
    for (let [head, foot, length] = [0, 1, 1]; length > 0; ) {
      const at = queue[head] ?? 0;
      head = head + 1 === count ? 0 : head + 1;
      length -= 1;
      queued[at] = 0;
      const atS = times[at] ?? 0;
      const fixed = out[at] ?? none;
      let next = first[at] ?? -1;
      for (let own = 0; own < fixed.length || next >= 0; ) {
        let edge: Edge;
        if (own < fixed.length) {
          edge = fixed[own] ?? nowhere;
          own += 1;
        } else {
          edge = extra[next] ?? nowhere;
          next = after[next] ?? -1;
        }
        const dueS = atS + edge.least;
        const { to } = edge;
        if ((times[to] ?? 0) >= dueS) continue;
        if (dueS + (tail[to] ?? 0) >= wantedBefore) return false;
        times[to] = dueS;
        if (queued[to] === 1) continue;
        // A moment is moved so often only on a way that leads back to itself, later each time.
        if ((visits[to] ?? 0) > count) return false;
        visits[to] = (visits[to] ?? 0) + 1;
        queued[to] = 1;
        queue[foot] = to;
        foot = foot + 1 === count ? 0 : foot + 1;
        length += 1;
      }
    }
    return (times[end] ?? 0) < wantedBefore;
  }

  function firstClash(times: Float64Array): Branch["clash"] | undefined {
    let firstS = Infinity;
    let pairOf: Pair | undefined;
    let spanOf: Span | undefined;
    for (const pair of pairs) {
      const fromS = times[pair.from] ?? 0;
      const toS = times[pair.to] ?? 0;
      const atS = Math.max(fromS, toS);
      if (atS >= firstS) continue;
      const span = clash(toS - fromS);
      if (span !== undefined) [firstS, pairOf, spanOf] = [atS, pair, span];
    }
    let torn: readonly [Edge, Edge] | undefined;
    for (const choice of either) {
      const [one, other] = choice;
      if (holds(times, one) || holds(times, other)) continue;
      const atS = Math.max(times[one.to] ?? 0, times[other.to] ?? 0);
      if (atS < firstS) [firstS, torn] = [atS, choice];
    }
    if (torn === undefined && pairOf !== undefined && spanOf !== undefined) {
      const { from, to } = pairOf;
      const [low, high] = spanOf;
      torn = [
        { from, to, least: high + 1 },
        { from: to, to: from, least: 1 - low },
      ];
    }
    return torn && { either: torn, atS: firstS };
  }

  const times = new Float64Array(count);
  // From every moment once: what the later ones ask for comes on top of what the earlier ones asked for.
  for (let from = 0; from < count; from += 1)
    if (!settle(times, from, undefined)) return { times: best, proven: true, looked: 0 };
  consider(times, 0, undefined);
  let looked = 0;
  for (let branch = pop(open); branch !== undefined; branch = pop(open)) {
    if (branch.endS >= wantedBefore) break;
    if (looked >= branches) return { times: best, proven: false, looked };
    looked += 1;
    const [one, other] = branch.clash.either;
    consider(branch.times.slice(), one.from, { ...one, before: branch.added });
    consider(branch.times, other.from, { ...other, before: branch.added });
  }
  return { times: best, proven: true, looked };
}

/** How much later than each moment the end must be at least; 0 where it need not be later. */
function tailsOf(count: number, edges: readonly Edge[], end: number): Float64Array {
  const tail = new Float64Array(count).fill(-Infinity);
  tail[end] = 0;
  let moved = true;
  for (let round = 0; moved && round < count; round += 1) {
    moved = false;
    for (const { from, to, least } of edges) {
      const needed = (tail[to] ?? 0) + least;
      if (needed <= (tail[from] ?? 0)) continue;
      tail[from] = needed;
      moved = true;
    }
  }
  return tail.map((each) => Math.max(0, each));
}

function holds(times: Float64Array, { from, to, least }: Edge): boolean {
  return (times[to] ?? 0) >= (times[from] ?? 0) + least;
}

const none: readonly Edge[] = [];
const nowhere: Edge = { from: 0, to: 0, least: -Infinity };

/** Which of two branches is looked at first: the earlier end, then the one whose clash comes later. */
function sooner(one: Branch, other: Branch): boolean {
  return one.endS < other.endS || (one.endS === other.endS && one.clash.atS > other.clash.atS);
}

function push(heap: Branch[], branch: Branch): void {
  let at = heap.length;
  while (at > 0) {
    const above = (at - 1) >> 1;
    const parent = heap[above];
    if (parent === undefined || !sooner(branch, parent)) break;
    heap[at] = parent;
    at = above;
  }
  heap[at] = branch;
}

function pop(heap: Branch[]): Branch | undefined {
  const top = heap[0];
  const last = heap.pop();
  if (top === undefined || last === undefined || heap.length === 0) return top;
  let at = 0;
  while (true) {
    let below = 2 * at + 1;
    const [left, right] = [heap[below], heap[below + 1]];
    if (left === undefined) break;
    if (right !== undefined && sooner(right, left)) below += 1;
    const child = heap[below] ?? left;
    if (!sooner(child, last)) break;
    heap[at] = child;
    at = below;
  }
  heap[at] = last;
  return top;
}
