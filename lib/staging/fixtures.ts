import { faultText } from "#lib/exchange/fault";
import { readStaging } from "./readStaging";
import type { Staging } from "./staging";

/** A small invented staging as a person might write it, for tests. */

const SKIRT = {
  code: "skirt",
  version: 1,
  name: "Skirt",
  source: "Invented for tests.",
  parameters: [
    { code: "layers", label: "Layers", kind: "count", value: 6, min: 1, max: 16 },
    { code: "partnered", label: "Partnered", kind: "yes-no", value: false },
  ],
  drivers: [{ code: "layerCount", label: "layers", unit: "count", formula: "layers" }],
  operations: [
    {
      code: "gather",
      name: "Gather",
      part: "skirt",
      skill: "net",
      setupMinutes: [1, 2, 3],
      rates: [{ driver: "layerCount", seconds: [60, 120, 240] }],
    },
    { code: "mount", name: "Mount", part: "skirt", skill: "net", setupMinutes: [30, 60, 90], waitsFor: ["gather"] },
  ],
  needs: [
    { role: "net", label: "Net", kind: "net", measure: "length", material: "net-54", formula: "10 in * layers", operation: "gather" },
  ],
};

const FILES: Readonly<Record<string, string>> = {
  "production.csv":
    'code,title,subtitle,workroom,starts,budget,currency,zone,words,lengths,prefix\nmg,The Midwinter Garden,,Main,11 January 2027,"42,000.00",GBP,Europe/London,uk,in,MG',
  "milestones.csv": "code,kind,name,date,at\ndress,dress rehearsal,Dress,2027-03-09,09:30\nopen,opening,Opening,2027-03-12,19:00",
  "sizes.csv": "code,name\nW10,Women medium\nM40,Men medium",
  "performers.csv": "code,name,size group,minor\nines,Ines Falk,W10,no\nruth,Ruth Amsel,W10,\nbo,Bo Hallam,M40,yes",
  "measurements.csv":
    'performer,size_group,taken,body,waist,hip,nape to waist\n,W10,2026-06-01,not noted,25,36,15 1/4\nines,,2027-01-14,warm,24 1/2,"91,5 cm",\nines,,2026-01-10,cold,24,,15',
  "roles.csv": "code,name,kind,places\nsnow,Snow,corps,2\nqueen,Queen,principal,1",
  "casting.csv":
    "cast,role,place,performer,size_group,standing\nfirst,snow,1,ines,,\nfirst,snow,2,,W10,\nsecond,snow,1,ruth,,\nsecond,snow,2,,W10,\nfirst,queen,1,ruth,,\nsecond,queen,1,ines,,\nfirst,queen,1,ines,,cover",
  "scenes.csv": "code,name,act,starts,minutes\nfall,Snowfall,1,30,7\nend,Finale,2,80,9",
  "appearances.csv": "role,scene,costume\nsnow,fall,white\nqueen,fall,silver",
  "costumes.csv": "code,name,role\nwhite,White,snow\nsilver,Silver,queen",
  "sets.csv": "code,name,one_dye_lot,prototype,free_until,approval_days,approved_on\nskirts,Snow skirts,yes,yes,gather,2,",
  "pieces.csv":
    "code,costume,name,source,construction,set,each,parameters,materials,due,weight,price,stock\nsnow-skirt,white,Snow skirt,build,skirt,skirts,place,layers=8; partnered=yes,net=net-54,dress,2,,\nqueen-skirt,silver,Queen skirt,alter,skirt,,role,,,dress,,,ST 3\nshoes,white,Shoes,buy,,,performer,,,open,,18.50,",
  "makers.csv":
    "code,name,trade,employment,skills,hours,overtime,productive,reserved_minutes_per_week,pace_from,cost_per_hour,overtime_cost_per_hour,starts,ends\norla,Orla Venn,tutu maker,staff,net=100%; hand=80%,Mon-Fri 09:00-13:00 14:00-18:00,Mon 18:30-20:30,85%,4 h,2027-01-18=100%; 2027-01-11=50%,19.51,,,",
  "absences.csv": "maker,from,to,from_time,to_time,reason\n,2027-02-01,,,,holiday\norla,2027-02-08,2027-02-10,14:00,18:00,leave",
  "machines.csv": "code,name,kind,count\nroom,Fitting room,fitting room,1",
  "materials.csv":
    "code,name,kind,measure,colour,width,cuttable,shrinkage,spare\nnet-54,Net,net,length,white,54,53,,10%\nhooks,Hooks,hook,count,,,,,",
  "offers.csv":
    "material,supplier,pack,minimum_packs,prices,lead_days,inspection_days\nnet-54,Harbour Nets,25 yd,,1=48.00; 10=43.50,21,2\nhooks,Harbour Nets,100,2,1=6,7,",
  "lots.csv": "code,material,dye_lot,quantity,location,arrives\nL1,net-54,7741,12 yd,shelf 4,\nL2,hooks,,40,,2027-01-25",
  "stock.csv": "number,name,construction,location,condition,note\nST 3,Old skirt,skirt,rail 2,worn,=two rows of bars",
  "calls.csv": "performer,date,from,to,kind\n,2027-02-02,10:00,18:30,span\nines,2027-02-02,10:00,11:15,class",
  "constructions/skirt.json": JSON.stringify(SKIRT),
};

/** The files, with some of them replaced (or left out, by null). */
export const smallFiles = (changes: Readonly<Record<string, string | null>> = {}): ReadonlyMap<string, string> =>
  new Map(Object.entries({ ...FILES, ...changes }).flatMap(([name, text]) => (text === null ? [] : [[name, text] as const])));

/** Faults of the files with a change, as one line each. */
export const faultsWith = (changes: Readonly<Record<string, string | null>>): readonly string[] => {
  const read = readStaging(smallFiles(changes));
  return read.ok ? [] : read.error.map(faultText);
};

/** One of the files with a text in it replaced. */
export const edited = (file: string, from: string, to: string): Readonly<Record<string, string>> => {
  const text = FILES[file] ?? "";
  if (!text.includes(from)) throw new Error(`${file} has no ${from}`);
  return { [file]: text.replace(from, to) };
};

export const smallStaging = (changes: Readonly<Record<string, string | null>> = {}): Staging => {
  const read = readStaging(smallFiles(changes));
  if (!read.ok) throw new Error(read.error.map(faultText).join("\n"));
  return read.value;
};
