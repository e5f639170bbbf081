import type { OtherTask } from "#lib/approvals/otherWork";
import type { PlainDate } from "#lib/calendar/plainDate";
import { newCode } from "#lib/editing/newCode";
import type { Skill } from "#lib/labour/skills";
import type { Staging } from "#lib/staging/staging";
import type { Minutes } from "#lib/units/quantities";
import { nameOfPlace, usualAlteration } from "./places";

/** What a fitting asks for at one place of a garment. */
export interface AskedAlteration {
  readonly garment: string;
  readonly place: string;
  readonly finding: "alter" | "remake";
  readonly text: string;
  /** Null: what is usual at that place. */
  readonly skill: Skill | null;
  readonly minutes: Minutes | null;
  readonly askedBy: string;
  readonly askedOn: PlainDate;
}

/** The staging with the alteration among its other work: the garment is not finished without it. Also the code it was given. */
export const withAlteration = (
  staging: Staging,
  asked: AskedAlteration,
): { readonly code: string; readonly title: string; readonly next: Staging } => {
  const { garment, place, finding, text, askedBy, askedOn } = asked;
  const title = `${finding === "remake" ? "Remake, " : ""}${nameOfPlace(place).toLowerCase()}${text === "" ? "" : `: ${text}`}`;
  const code = newCode(staging, "other_work.csv", `${garment} ${place}`);
  const usual = usualAlteration(place);
  const minutes = asked.minutes ?? usual.minutes;
  const task: OtherTask = {
    code,
    origin: "alteration",
    title: title.slice(0, 1).toUpperCase() + title.slice(1),
    garment,
    set: null,
    material: null,
    gates: null,
    skill: asked.skill ?? usual.skill,
    minutes: [minutes, minutes, minutes],
    machine: null,
    priority: 2,
    due: null,
    waitsFor: null,
    shownFor: null,
    askedBy,
    askedOn,
    doneOn: null,
  };
  return { code, title: task.title, next: { ...staging, otherWork: [...staging.otherWork, task] } };
};
