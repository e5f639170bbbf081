import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import type { PlanNote } from "./stagingPlan";

const MEND: Readonly<Record<GarmentWork["notes"][number]["kind"], string>> = {
  measurement: "Measure the performer and add it to measurements.csv.",
  parameter: "Give the piece a value its construction allows.",
  material: "Name a material for it in pieces.csv, or add it to materials.csv.",
  caution: "",
};

/** What can be known before there is a plan: what the breakdown had to assume, fittings without a performer, minors, missing calls, dangers. */
export const earlyNotes = (staging: Staging, garments: readonly Garment[], works: readonly GarmentWork[]): PlanNote[] => [
  ...works.flatMap(({ notes }) => notes.map(({ garment, kind, text }): PlanNote => ({ kind, about: garment, text, mend: MEND[kind] }))),
  ...unnamed(garments, works),
  ...called(staging, garments, works),
  ...cautions(staging, works),
];

/** The cautions of every construction that is made, once. */
const cautions = ({ constructions }: Staging, works: readonly GarmentWork[]): PlanNote[] => {
  const used = new Set(works.map(({ construction }) => construction && `${construction.code}@${construction.version}`));
  const notes = constructions
    .filter(({ code, version }) => used.has(`${code}@${version}`))
    .flatMap(({ code, cautions: all }) => all.map((text): PlanNote => ({ kind: "caution", about: code, text, mend: "" })));
  // Versions of one construction mostly caution of the same.
  return [...new Map(notes.map((note) => [JSON.stringify([note.about, note.text]), note])).values()];
};

const unnamed = (garments: readonly Garment[], works: readonly GarmentWork[]): PlanNote[] =>
  garments.flatMap((garment): PlanNote[] => {
    const fittings = works.find((work) => work.garment === garment.number)?.fittings ?? [];
    const without = fittings.filter(({ wearer }) => garment.wearers[wearer]?.performer == null);
    if (without.length === 0) return [];
    const text = `No performer is named yet: the fitter's time of ${without.length} of its ${fittings.length} fittings is kept, no appointment is made.`;
    return [{ kind: "caution", about: garment.number, text, mend: "Name the performer in casting.csv." }];
  });

const called = ({ performers, calls }: Staging, garments: readonly Garment[], works: readonly GarmentWork[]): PlanNote[] => {
  const garmentOf = new Map(garments.map((garment) => [garment.number, garment]));
  const fitted = new Set(
    works.flatMap((work) => work.fittings.map(({ wearer }) => garmentOf.get(work.garment)?.wearers[wearer]?.performer)),
  );
  const asked = performers.filter(({ code }) => fitted.has(code));
  if (asked.length > 0 && calls.length === 0) {
    const text = "No calls are known: fittings are placed whenever the workroom is open.";
    return [{ kind: "caution", about: "calls", text, mend: "Add the performers' days to calls.csv." }];
  }
  const minors = asked.filter(({ minor }) => minor);
  return minors.map(({ code, name }) => ({
    kind: "caution",
    about: code,
    text: `${name} is a minor: a chaperone attends every fitting, and nobody is alone with a child. Local law comes first.`,
    mend: "Agree the fittings with the chaperone.",
  }));
};
