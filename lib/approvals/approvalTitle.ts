import type { Staging } from "#lib/staging/staging";

/** The name of an approval, or of the set whose prototype is looked at. */
export const approvalTitle = ({ sets, approvals }: Pick<Staging, "sets" | "approvals">, code: string): string =>
  approvals.find((one) => one.code === code)?.title ?? sets.find((one) => one.code === code)?.name ?? code;
