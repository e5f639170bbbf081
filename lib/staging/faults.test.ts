import { describe, expect, it } from "vitest";
import { edited, faultsWith, smallFiles } from "./fixtures";
import { readStaging } from "./readStaging";

describe("faults of a staging", () => {
  it.each([
    [
      "pieces.csv",
      "Snow skirt,build",
      "Snow skirt,bild",
      'pieces.csv:2:source: "bild" is not one of the words for this. Did you mean "build"? Otherwise: write build, pull, alter, hire or buy.',
    ],
    [
      "pieces.csv",
      "layers=8",
      "layer=8",
      'pieces.csv:2:parameters: skirt has no parameter "layer". Did you mean "layers"? Otherwise: use one of layers, partnered.',
    ],
    ["pieces.csv", "layers=8", "layers=40", "pieces.csv:2:parameters: layers: 40 is outside 1 to 16. Write it like layers=6."],
    [
      "pieces.csv",
      "net=net-54",
      "nett=net-54",
      'pieces.csv:2:materials: skirt has no material role "nett". Did you mean "net"? Otherwise: use one of net.',
    ],
    [
      "pieces.csv",
      "net=net-54",
      "net=net-45",
      'pieces.csv:2:materials: "net-45" is not in materials.csv. Did you mean "net-54"? Otherwise: add a row for it there.',
    ],
    [
      "pieces.csv",
      "dress,2",
      "dres,2",
      'pieces.csv:2:due: "dres" is not in milestones.csv. Did you mean "dress"? Otherwise: add a row for it there.',
    ],
    [
      "pieces.csv",
      "buy,,",
      "build,,",
      "pieces.csv:4:construction: Nothing says how it is made. Name a construction, or choose another source.",
    ],
    [
      "pieces.csv",
      "alter,skirt",
      "alter,skrit",
      'pieces.csv:3:construction: "skrit" is not in constructions/. Did you mean "skirt"? Otherwise: add its file.',
    ],
    ["pieces.csv", "queen-skirt", "snow-skirt", "pieces.csv:3:code: Row 2 has the same code. Give one of them another."],
    [
      "sets.csv",
      "gather",
      "gahter",
      'sets.csv:2:free_until: "gahter" is no operation of its pieces. Did you mean "gather"? Otherwise: use one of gather, mount.',
    ],
    [
      "casting.csv",
      "first,snow,2,,W10",
      "first,snow,3,,W10",
      "casting.csv:3:place: The role snow has 2 places. Write a lower place, or give the role more in roles.csv.",
    ],
    [
      "casting.csv",
      "first,snow,2,,W10",
      "first,snow,2,,",
      "casting.csv:3:size_group: A place not yet cast has no size group. Write the size group it stands on.",
    ],
    [
      "casting.csv",
      "first,snow,2",
      "first,snow,1",
      "casting.csv:3:place: Row 2 casts this place already. Change the cast or the place, or make it a cover.",
    ],
    [
      "casting.csv",
      "first,queen,1,ines,,cover",
      "first,queen,1,,W10,cover",
      "casting.csv:8:performer: A cover has no name. Name the performer who covers, or take the row out.",
    ],
    [
      "casting.csv",
      "first,queen,1,ines,,cover",
      "third,queen,1,ines,,cover",
      "casting.csv:8:place: It covers a place that nobody is cast in. Add a row that casts the place in this cast.",
    ],
    [
      "roles.csv",
      "corps,2",
      "corps,3",
      "roles.csv:2:places: No cast has place 3 of snow. Add a row to casting.csv for each, with a size group if nobody is cast yet, or lower the places.",
    ],
    [
      "measurements.csv",
      "warm,24 1/2",
      "warm,24 1/2 stone",
      'measurements.csv:3:waist: "24 1/2 stone" is not a length. Write it like 15 1/4 in, 15 1/4", 38.7 cm, 5 ft 3 in, 1 yd 6 in or 2 m.',
    ],
    [
      "measurements.csv",
      "warm,24 1/2",
      "warm,62",
      'measurements.csv:3:waist: "62" is no body\'s: 15 3/4 in to 59 in are possible. Check the unit and the column.',
    ],
    [
      "measurements.csv",
      "ines,,2027",
      ",,2027",
      "measurements.csv:3:performer: The sheet is of nobody. Fill in performer or size_group, one of the two.",
    ],
    [
      "milestones.csv",
      "2027-03-09",
      "09/03/2027",
      'milestones.csv:2:date: "09/03/2027" may be one of two days. Write it like 2027-03-09 or 9 March 2027.',
    ],
    [
      "makers.csv",
      "hand=80%",
      "hand=80%; nett=50%",
      'makers.csv:2:skills: "nett" is not one of the words for this. Did you mean "net"? Otherwise: write net, pattern, boned, tailoring, stretch, hand, dye, millinery or fit.',
    ],
    [
      "makers.csv",
      "Mon 18:30-20:30",
      "Mon 17:30-20:30",
      "makers.csv:2:overtime: Overtime lies within the working hours. Write only the hours beyond them.",
    ],
    [
      "absences.csv",
      "14:00,18:00",
      "14:00,",
      "absences.csv:3:to_time: One of the two times is missing. Write both, or neither for whole days.",
    ],
    ["materials.csv", "54,53", "53,54", "materials.csv:2:cuttable: More can be cut than there is. Write at most the full width."],
    [
      "offers.csv",
      "25 yd",
      "25",
      "offers.csv:2:pack: The material is measured by length. Write a length with its unit, like 25 yd or 20 m.",
    ],
    [
      "offers.csv",
      "1=48.00",
      "2=48.00",
      "offers.csv:2:prices: Prices must begin at 1 and rise in packs. Write them like 1=48.00; 10=43.50.",
    ],
    ["lots.csv", "hooks,,40", "hooks,,40 in", "lots.csv:3:quantity: The material is counted. Write a whole number."],
    ["calls.csv", "11:15", "09:15", "calls.csv:3:to: It ends before it begins. Exchange the times."],
    [
      "production.csv",
      "Europe/London",
      "Europe/Lundon",
      'production.csv:2:zone: "Europe/Lundon" is not a time zone. Write its IANA name, like Europe/London.',
    ],
    [
      "scenes.csv",
      "act,starts",
      "act,start",
      'scenes.csv:1:start: "start" is not a column of scenes.csv. Did you mean "starts"? Otherwise: take the column out.',
    ],
  ])("%s: %s written %s", (file, from, to, expected) => {
    expect(faultsWith(edited(file, from, to))[0]).toBe(expected);
  });

  it("are given all at once, by file and row", () => {
    const faults = faultsWith({
      ...edited("pieces.csv", "Snow skirt,build", "Snow skirt,bild"),
      ...edited("makers.csv", "85%", "0.85"),
      ...edited("roles.csv", "corps", "choir"),
      "constructions/skirt.json": "{",
      "peices.csv": "code\n",
    });
    expect(faults.map((fault) => fault.split(":").slice(0, 3).join(":"))).toEqual([
      'peices.csv: It is not a file of a staging. Did you mean "pieces.csv"? Otherwise: take it out.',
      expect.stringMatching(/^constructions\/skirt.json: It is not JSON/),
      "roles.csv:2:kind",
      "pieces.csv:2:source",
      "makers.csv:2:productive",
    ]);
  });

  it("name the place of a missing column, a doubled heading and a missing production", () => {
    expect(faultsWith({ "scenes.csv": "code,name,act,starts\nfall,Fall,1,3\nend,End,1,9" })).toEqual([
      "scenes.csv:1:minutes: The column minutes is missing. Add it, for example with 7.",
    ]);
    expect(faultsWith({ "scenes.csv": "code,name,Name,act,starts,minutes\nfall,a,b,1,3,4" })).toEqual([
      'scenes.csv:1:Name: "Name" stands there twice. Keep one of the two columns.',
    ]);
    expect(faultsWith({ "production.csv": null })).toEqual([
      "production.csv: There is no production. Give production.csv one row below its headings.",
    ]);
  });

  it("do not multiply when a file others refer to cannot be read", () => {
    expect(faultsWith({ "roles.csv": 'code,name,kind,places\n"snow' })).toHaveLength(1);
    expect(faultsWith({ "casting.csv": "cats,role\nfirst,snow", "materials.csv": "" })).toEqual([
      'casting.csv:1:cats: "cats" is not a column of casting.csv. Did you mean "cast"? Otherwise: take the column out.',
      "casting.csv:1:cast: The column cast is missing. Add it, for example with first.",
      "materials.csv: The file is empty. Write the headings in the first row.",
    ]);
    expect(faultsWith({ "roles.csv": `code\n${"x\n".repeat(20_001)}` })).toEqual([
      "roles.csv: The file has more than 20,000 rows. Split it.",
    ]);
  });

  it("refuse two constructions of one code and version, and more than 10 MB in all", () => {
    const twice = new Map([...smallFiles(), ["constructions/other.json", smallFiles().get("constructions/skirt.json") ?? ""]]);
    expect(readStaging(twice)).toMatchObject({ ok: false, error: [{ file: "constructions/skirt.json", column: "version" }] });
    expect(faultsWith({ "constructions/a.json": "x".repeat(10_000_001) })).toEqual([
      "staging: The files together are larger than 10 MB. Take out what is not part of the staging.",
    ]);
  });
});
