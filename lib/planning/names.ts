import { approvalTitle } from "#lib/approvals/approvalTitle";
import type { OtherTask } from "#lib/approvals/otherWork";
import type { Prepared } from "./prepared";

/** Names a person knows, for the indices of the engine. */
export interface Names {
  readonly maker: (index: number) => string;
  readonly performer: (index: number) => string;
  readonly machine: (index: number) => string;
  /** `SB 003 mount the layers`: what is done at a node. */
  readonly node: (index: number) => string;
}

export const namesOf = ({ staging, problem, nodes, works }: Pick<Prepared, "staging" | "problem" | "nodes" | "works">): Names => {
  const words = staging.production.words;
  const workOf = new Map(works.map((work) => [work.garment, work]));
  return {
    maker: (index) => `${staging.makers[index]!.name} (${staging.makers[index]!.trade})`,
    performer: (index) => staging.performers[index]!.name,
    machine: (index) => problem.machines[index]!.id,
    node: (index) => {
      const node = nodes[index]!;
      if (node.kind === "approval") return `approval of ${approvalTitle(staging, node.approval)}`;
      if (node.kind === "other") return otherName(staging.otherWork.find(({ code }) => code === node.task)!);
      if (node.kind === "finished") return `finishing ${node.garment}`;
      if (node.kind === "fitting") {
        const fitting = workOf.get(node.garment)!.fittings.find(({ code }) => code === node.fitting)!;
        return `${node.garment} ${lowered(fitting.name[words])}`;
      }
      const [first, ...others] = node.garments;
      const operation = workOf.get(first!)!.operations.find(({ code }) => code === node.operation)!;
      return `${first}${others.length > 0 ? ` and ${others.length} more` : ""} ${lowered(operation.name[words])}`;
    },
  };
};

const otherName = ({ garment, title }: OtherTask) => (garment === null ? lowered(title) : `${garment} ${lowered(title)}`);

const lowered = (text: string) => text.slice(0, 1).toLowerCase() + text.slice(1);
