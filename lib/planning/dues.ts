import { weightOf } from "#lib/approvals/otherWork";
import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import type { Garment } from "#lib/casting/wardrobe";
import type { Due } from "#lib/levelling/problem";
import type { Staging } from "#lib/staging/staging";
import { type Axis, toAxis } from "./axis";
import type { OtherNodes } from "./otherNodes";

/** When each garment must be finished, and when other work with a day of its own must be done. */
export const dues = ({ milestones }: Staging, garments: readonly Garment[], other: OtherNodes, axis: Axis): Due[] => {
  const due = (node: number | undefined, code: string | null, weight: number, name: string): Due[] => {
    const milestone = milestones.find((one) => one.code === code);
    if (node === undefined || !milestone) return [];
    const at = toAxis(axis, dayNumber(milestone.date) * MINUTES_PER_DAY + milestone.at);
    return [{ node, at, weight, label: `${name} for ${milestone.name}` }];
  };
  return [
    ...garments.flatMap(({ number, due: code, weight }) => due(other.finished(number), code, weight, number)),
    ...[...other.taskAt].flatMap(([node, task]) => due(node, task.due, weightOf(task), task.title)),
  ];
};
