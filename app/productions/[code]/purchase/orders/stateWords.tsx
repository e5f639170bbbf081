import type { ShownOrderState } from "#lib/purchasing/order";
import { State, type StateCode } from "../../../../_components/State";

const STATES: Readonly<Record<ShownOrderState, readonly [StateCode, string]>> = {
  draft: ["none", "to approve"],
  approved: ["hand", "to place"],
  placed: ["wait", "on order"],
  "part received": ["hand", "part received"],
  received: ["done", "all came"],
  closed: ["done", "closed"],
  cancelled: ["cut", "cancelled"],
};

/** How far an order is, as a mark and a word. */
export const OrderStateMark = ({ state, late }: { readonly state: ShownOrderState; readonly late: boolean }) => {
  const [code, word] = STATES[state];
  return late ? <State code="late">{word}, overdue</State> : <State code={code}>{word}</State>;
};

export const stateWord = (state: ShownOrderState): string => STATES[state][1];
