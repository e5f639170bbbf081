import { describe, expect, it } from "vitest";
import { smallFiles, smallStaging } from "./fixtures";
import { readStaging } from "./readStaging";

const staging = smallStaging();

describe("readStaging", () => {
  it("reads lengths, money, days and times in the production's own units", () => {
    expect(staging.production).toMatchObject({ starts: "2027-01-11", budget: 4_200_000, zone: "Europe/London" });
    expect(staging.milestones[0]).toMatchObject({ date: "2027-03-09", at: 570 });
    expect(staging.materials[0]).toMatchObject({ width: 54 * 2032, cuttable: 53 * 2032, spare: 100, shrinkage: 0 });
    expect(staging.offers).toMatchObject([
      { pack: 25 * 36 * 2032, minimumPacks: 1, inspectionDays: 2 },
      { pack: 100, minimumPacks: 2, inspectionDays: 0 },
    ]);
    expect(staging.offers[0]?.prices).toEqual([
      { from: 1, price: 4800 },
      { from: 10, price: 4350 },
    ]);
    expect(staging.pieces[0]).toMatchObject({ parameters: { layers: "8", partnered: "yes" }, materials: { net: "net-54" }, weight: 2 });
  });

  it("reads a maker's week, paces by date in order, and half as much again for overtime, rounded up", () => {
    expect(staging.makers[0]).toMatchObject({
      skills: { net: 1000, hand: 800 },
      productive: 850,
      reservedMinutesPerWeek: 240,
      costPerHour: 1951,
      overtimeCostPerHour: 2927,
      paceFrom: [
        { date: "2027-01-11", pace: 500 },
        { date: "2027-01-18", pace: 1000 },
      ],
    });
    expect(staging.makers[0]?.hours).toHaveLength(10);
  });

  it("fills in what an empty cell means", () => {
    expect(staging.casting[0]?.sizeGroup).toBe("W10");
    expect(staging.absences[0]).toMatchObject({ maker: null, from: "2027-02-01", to: "2027-02-01", fromTime: null });
    expect(staging.performers[1]?.minor).toBe(false);
    expect(staging.pieces[1]).toMatchObject({ each: "role", weight: 1, price: null, parameters: {} });
  });

  it("reads bare measurements in the other system when the production is in centimetres", () => {
    const metric = smallStaging({
      "production.csv": smallFiles().get("production.csv")?.replace("uk,in", "uk,cm") ?? "",
      "measurements.csv": "performer;size_group;taken;body;waist\nines;;2027-01-14;warm;62,5",
      "materials.csv": "code,name,kind,measure,colour,width\nnet-54,Net,net,length,white,137\nhooks,Hooks,hook,count,,",
    });
    expect(metric.measurements[0]?.values).toEqual({ waist: 50_000 });
    expect(metric.materials[0]).toMatchObject({ width: 1370 * 80, cuttable: 1370 * 80 });
  });

  it("reads the same from folders, capitals and headings with spaces, and passes over other files", () => {
    const files = new Map([...smallFiles()].map(([name, text]) => [`swans/${name.toUpperCase()}`, text]));
    files.set("swans/README.md", "words");
    files.set("swans/ROLES.CSV", "Code,NAME, Kind ,Places\r\nsnow,Snow,Corps,2\r\nqueen,Queen,PRINCIPAL,1\r\n");
    const read = readStaging(files);
    expect(read.ok && read.value).toEqual(staging);
  });

  it("takes a table that is not there as one without rows", () => {
    expect(
      smallStaging({ "calls.csv": null, "absences.csv": null, "sets.csv": "code,name", "pieces.csv": "code,costume,name,source,due" })
        .calls,
    ).toEqual([]);
  });
});
