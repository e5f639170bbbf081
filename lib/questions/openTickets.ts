import type { Skill } from "#lib/labour/skills";
import type { Unplaced } from "#lib/levelling/problem";
import { namesOf } from "#lib/planning/names";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { showHours } from "#lib/units/hours";
import type { Minutes } from "#lib/units/quantities";
import { words } from "#lib/words/words";
import type { Answer, Asked } from "./answer";
import { counted, sum } from "./told";

/** Work the plan has no place for. */
export interface OpenTicket {
  readonly key: string;
  readonly name: string;
  readonly garments: readonly string[];
  readonly skill: Skill;
  readonly minutes: Minutes;
  readonly reason: Unplaced["reason"];
  /** Makers who have the skill. */
  readonly skilled: readonly string[];
}

/** Tasks and fittings without a place, those that nobody has the skill for first. */
export const openTickets = (plan: StagingPlan): readonly OpenTicket[] => {
  const names = namesOf(plan);
  const { problem } = plan;
  const garments = new Map([...plan.tasks, ...plan.fittings].map((one) => [one.node, "garment" in one ? [one.garment] : one.garments]));
  const tickets = plan.answer.plan.unplaced.flatMap(({ node, reason }): OpenTicket[] => {
    const engine = problem.nodes[node]!;
    const skill = engine.kind === "fitting" ? engine.fitterSkill : engine.crew[0]?.skill;
    if (skill === undefined) return [];
    return [
      {
        key: plan.nodes[node]!.key,
        name: names.node(node),
        garments: garments.get(node) ?? [],
        skill: problem.skills[skill] as Skill,
        minutes: engine.minutes,
        reason,
        skilled: problem.makers.filter((maker) => (maker.pace[skill] ?? 0) > 0).map(({ id }) => id),
      },
    ];
  });
  return tickets.sort((a, b) => rank(a) - rank(b));
};

/** No one with the skill, then what they have no time for, then what only waits for those. */
const rank = ({ skilled, reason }: OpenTicket): number => {
  if (skilled.length === 0) return 0;
  return reason === "waits for an unplaced one" ? 2 : 1;
};

export const answerOpenTickets = ({ plan }: Asked): Answer => {
  const data = openTickets(plan);
  const { skills, trade } = words(plan.staging.production.words);
  const unskilled = data.filter(({ skilled }) => skilled.length === 0);
  const waiting = data.filter((ticket) => rank(ticket) === 2);
  const pressed = data.length - unskilled.length - waiting.length;
  const tickets = (count: number) => counted(count, trade.ticket);
  return {
    says:
      data.length === 0
        ? [`None: every ${trade.ticket} has a person with the skill, and a time.`]
        : [
            `${tickets(unskilled.length)} of ${showHours(sum(unskilled.map(({ minutes }) => minutes)))} that nobody has the skill for; ` +
              `${pressed} for which those who have it, or the dancer, room or machine, have no time; ${waiting.length} that only wait for these.`,
          ],
    tables:
      data.length === 0
        ? []
        : [
            {
              title: "Work without a place",
              headings: ["work", "skill", "standard time", "why", "who has the skill"],
              rows: data.map((ticket) => [
                ticket.name,
                skills[ticket.skill],
                showHours(ticket.minutes),
                ticket.skilled.length === 0 ? "no one has the skill" : ticket.reason,
                ticket.skilled.join(", ") || "nobody",
              ]),
            },
          ],
    reasons: ["Read from the plan: what it could not place, with its reason. A person counts as having a skill at any pace above nothing."],
    data,
  };
};
