import type { PlainDate } from "#lib/calendar/plainDate";

/** Somebody's yes that work waits for. The approval of a set's prototype stands with the set. */
export interface Approval {
  readonly code: string;
  readonly title: string;
  /** Who looks: designer, choreographer, or a name. */
  readonly by: string;
  /** Working days the look takes. */
  readonly days: number;
  /** Day it was handed over to be looked at. */
  readonly askedOn: PlainDate | null;
  /** Day the answer is promised for; it counts as given by the end of that day. */
  readonly expectedOn: PlainDate | null;
  readonly approvedOn: PlainDate | null;
  /** The garments of the set wait for it, past `freeUntil`, or altogether when that is null. */
  readonly set: string | null;
  readonly freeUntil: string | null;
  /** Nothing is cut from the material, and it is not dyed, before. */
  readonly material: string | null;
}
