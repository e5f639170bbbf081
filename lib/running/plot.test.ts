import { describe, expect, it } from "vitest";
import { smallStaging } from "#lib/staging/fixtures";
import { costumePlot } from "./plot";

const plot = costumePlot(
  smallStaging({
    "scenes.csv": "code,name,act,starts,minutes\nend,Finale,2,60,9\nfall,Snowfall,1,30,7\nwalk,Walk,1,37,3",
    "costumes.csv": "code,name,role\nwhite,White,snow\nsilver,Silver,queen\nblack,Black,queen",
    "appearances.csv":
      "role,scene,costume\nsnow,fall,white\nsnow,end,white\nqueen,fall,silver\nqueen,walk,black\nqueen,end,black\nqueen,end,silver",
  }),
);
const row = (role: string) =>
  [...(plot.rows.find((one) => one.role === role)?.cells ?? [])].map(([scene, { costumes, change }]) => [
    scene,
    costumes.join("+"),
    change && `${change.minutes} ${change.where}`,
  ]);

describe("the costume plot", () => {
  it("has the scenes in the order of the evening, with the gaps between them", () => {
    expect(plot.columns.map((column) => (column.kind === "scene" ? column.scene.code : column.minutes))).toEqual([
      "fall",
      "walk",
      20,
      "end",
    ]);
    expect(plot.minutes).toBe(69);
  });

  it("says what each role wears, and how long it has to change", () => {
    expect(row("snow")).toEqual([
      ["fall", "white", null],
      ["end", "white", null],
    ]);
    expect(row("queen")).toEqual([
      ["fall", "silver", null],
      ["walk", "black", "0 wings"],
      ["end", "black+silver", "0 wings"],
    ]);
  });

  it("has a row for a role that is never on", () => {
    const none = costumePlot({ ...smallStaging(), appearances: [] });
    expect(none.rows.map(({ role, cells }) => [role, cells.size])).toEqual([
      ["snow", 0],
      ["queen", 0],
    ]);
  });
});
