import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type GraphNode, taskGraph } from "./taskGraph";

const node = (code: string, part: string, waitsFor: readonly string[] = [], kind: GraphNode["kind"] = "task"): GraphNode => ({
  code,
  part,
  waitsFor,
  kind,
  name: code,
});

/** Any graph without circles: a node waits only for earlier ones. */
const graphs = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 3 }), fc.boolean(), fc.array(fc.nat({ max: 30 }), { maxLength: 3 })), {
    minLength: 1,
    maxLength: 25,
  })
  .map((many) =>
    many.map(([part, isFitting, waits], at) =>
      node(
        `n${at}`,
        `part ${part}`,
        at === 0 ? [] : [...new Set(waits.map((wait) => `n${wait % at}`))],
        isFitting && at > 0 && waits.length > 0 ? "fitting" : "task",
      ),
    ),
  );

describe("task graph", () => {
  it("everything stands right of what it waits for, and nothing lies on anything else", () => {
    fc.assert(
      fc.property(graphs, (nodes) => {
        const { boxes, boxHeight, width, height } = taskGraph(nodes);
        expect(boxes).toHaveLength(nodes.length);
        for (const box of boxes) {
          for (const code of box.waitsFor) {
            const before = boxes.find((one) => one.code === code)!;
            expect(before.x + before.width).toBeLessThan(box.x);
          }
          for (const other of boxes) if (other !== box && other.x === box.x) expect(Math.abs(other.y - box.y)).toBeGreaterThan(boxHeight);
          expect(box.x + box.width).toBeLessThanOrEqual(width);
          expect(box.y + boxHeight / 2).toBeLessThanOrEqual(height);
        }
      }),
    );
  });

  it("a thread for every wait, from the edge of one to the edge of the other", () => {
    const { edges, boxes } = taskGraph([
      node("cut", "skirt"),
      node("fit", "skirt", ["cut"], "fitting"),
      node("join", "bodice", ["fit", "gone"]),
    ]);
    const [cut, fit, join] = boxes;
    const y = cut!.y;
    const pin = fit!.x + 44;
    expect(edges).toEqual([
      { from: "cut", to: "fit", path: `M132 ${y}C${(132 + pin - 11) / 2} ${y} ${(132 + pin - 11) / 2} ${y} ${pin - 11} ${y}` },
      {
        from: "fit",
        to: "join",
        path: `M${pin + 11} ${y}C${(pin + 11 + join!.x) / 2} ${y} ${(pin + 11 + join!.x) / 2} ${join!.y} ${join!.x} ${join!.y}`,
      },
    ]);
  });

  it("lanes are parts in order, a fitting in the lane of what it waits for, a column of pins narrow", () => {
    const { lanes, boxes } = taskGraph([
      node("toile", "bodice"),
      node("cut", "skirt"),
      node("first", "", ["toile"], "fitting"),
      node("mount", "skirt", ["cut", "first"]),
    ]);
    expect(lanes.map((lane) => lane.part)).toEqual(["bodice", "skirt"]);
    expect(boxes.map((box) => [box.code, box.width, box.part])).toEqual([
      ["toile", 132, "bodice"],
      ["cut", 132, "skirt"],
      ["first", 88, "bodice"],
      ["mount", 132, "skirt"],
    ]);
  });

  it("is empty for a garment without work", () => {
    expect(taskGraph([])).toMatchObject({ boxes: [], edges: [], width: 0 });
  });
});
