import { describe, expect, it } from "vitest";
import { breakDown } from "#lib/breakdown/breakDown";
import { garmentsOf } from "#lib/casting/garments";
import { smallStaging } from "#lib/staging/fixtures";
import { LENGTH_PER_INCH } from "#lib/units/quantities";
import { garmentCautions, taskCautions } from "./cautions";
import { ticketsOf } from "./ticket";

const OTHER =
  "code,origin,title,garment,set,material,gates,skill,likely\nnote-1,alteration,Straps up half an inch,MG 001,,,,hand,30 min\nnote-2,alteration,Done already,MG 001,,,,hand,30 min";
const withOther = smallStaging({ "other_work.csv": OTHER });
const staging = {
  ...withOther,
  otherWork: withOther.otherWork.map((task) => (task.code === "note-2" ? { ...task, doneOn: withOther.production.starts } : task)),
};
const [garment] = garmentsOf(staging);
const [work] = breakDown(staging, garmentsOf(staging));
const unplanned = { staging, tasks: [], fittings: [] };

describe("a ticket", () => {
  it("lists every task and what is still asked for on the garment, and nothing that is done", () => {
    const [ticket] = ticketsOf(garment!, work!, unplanned);
    expect(ticket!.lines.map(({ name }) => name)).toEqual(["Gather", "Mount", "Straps up half an inch"]);
    expect(ticket).toMatchObject({ sheet: 1, sheets: 1, due: { name: "Dress" } });
  });

  it("is none when nothing is wanted of it", () => expect(ticketsOf(garment!, work!, unplanned, () => false)).toEqual([]));

  it("goes on to further sheets, each task on one of them", () => {
    const long = { ...work!, operations: Array.from({ length: 17 }, (_, at) => ({ ...work!.operations[0]!, code: `step ${at}` })) };
    const tickets = ticketsOf(garment!, long, unplanned);
    expect(tickets.map(({ sheet, sheets, lines }) => [sheet, sheets, lines.length])).toEqual([
      [1, 3, 6],
      [2, 3, 6],
      [3, 3, 6],
    ]);
  });

  it("shows what its construction goes by, and nothing of a body that was withheld", () => {
    const byWaist = staging.constructions.map((one) => ({ ...one, medianBody: { waist: "25 in" } }));
    const seen = ticketsOf(garment!, work!, { ...unplanned, staging: { ...staging, constructions: byWaist } });
    // Of the two sheets of Ines Falk the warm one is the newer: 24 1/2 in.
    expect(seen[0]!.body).toEqual([["waist", 24.5 * LENGTH_PER_INCH]]);
    const withheld = { ...staging, constructions: byWaist, measurements: [] };
    expect(ticketsOf(garment!, work!, { ...unplanned, staging: withheld })[0]!.body).toEqual([]);
  });
});

describe("cautions", () => {
  it("stand beside blades, steam, dye and long strain", () => {
    const of = (machine: string | null, skill: "net" | "dye" = "net") => taskCautions({ machine, skill, straining: null }).join();
    expect(of("cutting table")).toContain("blades");
    expect(of("steam iron")).toContain("steam");
    expect(of("dye vat")).toContain("gloves");
    expect(of(null, "dye")).toContain("gloves");
    expect(of(null)).toBe("");
    expect(taskCautions({ machine: null, skill: "net", straining: { run: 120, rest: 15 } })).toEqual([
      "rest 15 min after 120 min at a stretch",
    ]);
  });

  it("of the garment name flame for net, and ends for what is stiff", () => {
    expect(garmentCautions(new Set(["net"]), "build").join()).toContain("flame");
    expect(garmentCautions(new Set(["bone"]), "build").join()).toContain("Tip");
    expect(garmentCautions(new Set(["cloth"]), "build")).toEqual([]);
    expect(garmentCautions(new Set(), "hire").join()).toContain("goes back");
  });
});
