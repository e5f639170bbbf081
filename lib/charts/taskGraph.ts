import { wrapWords } from "./textFit";

/** A task or a fitting of one garment, as its picture is told of it. */
export interface GraphNode {
  readonly code: string;
  readonly kind: "task" | "fitting";
  /** Lane it belongs to; a fitting takes the lane of what it waits for. */
  readonly part: string;
  readonly name: string;
  readonly waitsFor: readonly string[];
}

export interface GraphBox extends GraphNode {
  readonly x: number;
  /** Middle of its height. */
  readonly y: number;
  readonly width: number;
  readonly lines: readonly string[];
}

export interface GraphEdge {
  readonly from: string;
  readonly to: string;
  readonly path: string;
}

export interface TaskGraph {
  readonly width: number;
  readonly height: number;
  readonly boxHeight: number;
  readonly boxes: readonly GraphBox[];
  readonly edges: readonly GraphEdge[];
  readonly lanes: readonly { readonly part: string; readonly y: number }[];
}

const BOX = 132;
const PIN = 88;
const COLUMN_GAP = 24;
const LANE_GAP = 24;
const PAD = 24;
const LETTERS = 13;
const LINE = 16;
/** Two lines of small letters under the name: who, and how long. */
const SMALL_LINES = 2 * 17 + 14;

/** Longest way from a start to each node, in steps: everything waits to the left of what waits for it. Needs a graph without circles. */
const columnsOf = (nodes: readonly GraphNode[]): ReadonlyMap<string, number> => {
  const byCode = new Map(nodes.map((node) => [node.code, node]));
  const columns = new Map<string, number>();
  const columnOf = (node: GraphNode): number => {
    const known = columns.get(node.code);
    if (known !== undefined) return known;
    const before = node.waitsFor.flatMap((code) => byCode.get(code) ?? []);
    const column = Math.max(-1, ...before.map(columnOf)) + 1;
    columns.set(node.code, column);
    return column;
  };
  nodes.forEach(columnOf);
  return columns;
};

/** The row of each node: parts in order of appearance, and within a part as many rows as stand in one column. */
const rowsOf = (nodes: readonly GraphNode[], columns: ReadonlyMap<string, number>) => {
  const parts = [...new Set(nodes.map((node) => node.part))];
  const rows = new Map<string, number>();
  const lanes: { part: string; row: number }[] = [];
  let top = 0;
  for (const part of parts) {
    const taken = new Map<number, number>();
    for (const node of nodes.filter((one) => one.part === part)) {
      const column = columns.get(node.code)!;
      const place = taken.get(column) ?? 0;
      taken.set(column, place + 1);
      rows.set(node.code, top + place);
    }
    lanes.push({ part, row: top });
    top += Math.max(...taken.values());
  }
  return { rows, lanes, count: top };
};

/** Lanes by part, columns by what waits for what: boxes for tasks, pins for fittings, and a thread for every wait. */
export const taskGraph = (given: readonly GraphNode[]): TaskGraph => {
  const columns = columnsOf(given);
  const nodes = given.map((node) => ({ ...node, part: laneOf(node, given) }));
  const { rows, lanes, count } = rowsOf(nodes, columns);
  const columnCount = Math.max(0, ...[...columns.values()].map((column) => column + 1));
  const widths = Array.from({ length: columnCount }, (_, column) =>
    nodes.some((node) => columns.get(node.code) === column && node.kind === "task") ? BOX : PIN,
  );
  const xs = widths.map((_, column) => widths.slice(0, column).reduce((sum, width) => sum + width + COLUMN_GAP, 0));
  const wrapped = new Map(nodes.map((node) => [node.code, wrapWords(node.name, node.kind === "task" ? BOX - PAD : PIN, LETTERS)]));
  const boxHeight = Math.max(1, ...[...wrapped.values()].map((lines) => lines.length)) * LINE + SMALL_LINES;
  const yOf = (row: number) => row * (boxHeight + LANE_GAP) + boxHeight / 2 + 2;
  const boxes = nodes.map((node): GraphBox => {
    const column = columns.get(node.code)!;
    return { ...node, x: xs[column]!, y: yOf(rows.get(node.code)!), width: widths[column]!, lines: wrapped.get(node.code)! };
  });
  return {
    width: (xs.at(-1) ?? 0) + (widths.at(-1) ?? 0),
    height: count * (boxHeight + LANE_GAP) - (count > 0 ? LANE_GAP : 0) + 4,
    boxHeight,
    boxes,
    edges: edgesOf(boxes),
    lanes: lanes.map(({ part, row }) => ({ part, y: yOf(row) })),
  };
};

const laneOf = (node: GraphNode, nodes: readonly GraphNode[]): string => {
  const before = node.kind === "fitting" ? nodes.find((one) => one.code === node.waitsFor[0]) : undefined;
  return before ? laneOf(before, nodes) : node.part;
};

const PIN_RADIUS = 11;

const edgesOf = (boxes: readonly GraphBox[]): readonly GraphEdge[] => {
  const byCode = new Map(boxes.map((box) => [box.code, box]));
  const middle = (box: GraphBox) => box.x + box.width / 2;
  return boxes.flatMap((to) =>
    to.waitsFor.flatMap((code): GraphEdge[] => {
      const from = byCode.get(code);
      if (!from) return [];
      const x1 = from.kind === "fitting" ? middle(from) + PIN_RADIUS : from.x + from.width;
      const x2 = to.kind === "fitting" ? middle(to) - PIN_RADIUS : to.x;
      const bend = (x1 + x2) / 2;
      return [{ from: code, to: to.code, path: `M${x1} ${from.y}C${bend} ${from.y} ${bend} ${to.y} ${x2} ${to.y}` }];
    }),
  );
};
