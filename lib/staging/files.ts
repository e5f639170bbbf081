import { absences } from "./files/absences";
import { appearances } from "./files/appearances";
import { approvals } from "./files/approvals";
import { calls } from "./files/calls";
import { casting } from "./files/casting";
import { costumes } from "./files/costumes";
import { lots } from "./files/lots";
import { machines } from "./files/machines";
import { makers } from "./files/makers";
import { materials } from "./files/materials";
import { measurements } from "./files/measurements";
import { milestones } from "./files/milestones";
import { offers } from "./files/offers";
import { otherWork } from "./files/otherWork";
import { performers } from "./files/performers";
import { pieces } from "./files/pieces";
import { production } from "./files/production";
import { roles } from "./files/roles";
import { scenes } from "./files/scenes";
import { sets } from "./files/sets";
import { sizes } from "./files/sizes";
import { stock } from "./files/stock";

/** The CSV files of a staging, in the order a person fills them in. */
export const FILES = {
  production,
  milestones,
  sizes,
  performers,
  measurements,
  roles,
  casting,
  scenes,
  appearances,
  costumes,
  sets,
  pieces,
  makers,
  absences,
  machines,
  materials,
  offers,
  lots,
  stock,
  calls,
  approvals,
  otherWork,
};
export type Files = typeof FILES;
