import type { StagingPlan } from "#lib/planning/stagingPlan";
import { cuttingSheet, purchaseSheet } from "./buyingSheets";
import type { Sheet } from "./sheet";
import { fittingsSheet, loadSheet, notesSheet, planSheet, tasksSheet } from "./workSheets";

/** Every table of a plan that a person takes away. */
export const sheetsOf = (plan: StagingPlan): Sheet[] =>
  [tasksSheet, planSheet, loadSheet, fittingsSheet, purchaseSheet, cuttingSheet, notesSheet].map((sheet) => sheet(plan));
