import { notFound } from "next/navigation";
import type { Act } from "../_gate/may";
import { type Member, requireMember } from "../_gate/member";
import { loadProduction, type ProductionView } from "./stagingPlan";

/** The gate of a production's pages: a member who may, and a production of their company; any other is not found. */
export const requireProduction = async (act: Act, code: string): Promise<{ readonly member: Member; readonly view: ProductionView }> => {
  const member = await requireMember(act);
  const view = await loadProduction(member.company, code);
  if (!view) notFound();
  return { member, view };
};
