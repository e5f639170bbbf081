import { notFound } from "next/navigation";
import { type Act, may } from "../_gate/may";
import { type Member, requireMember } from "../_gate/member";
import { loadProduction, type ProductionView } from "./stagingPlan";
import { withoutMeasurements } from "./withoutMeasurements";

/**
 * The gate of a production's pages and files: a member who may, and a production of their company; any other is not found. Who may not see
 * measurements is given the production without them.
 */
export const requireProduction = async (act: Act, code: string): Promise<{ readonly member: Member; readonly view: ProductionView }> => {
  const member = await requireMember(act);
  const view = await loadProduction(member.company, code);
  if (!view) notFound();
  return { member, view: may(member.role, "measurements") ? view : withoutMeasurements(view) };
};
