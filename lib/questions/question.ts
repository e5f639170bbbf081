import type { BothWords } from "#lib/constructions/construction";
import type { Answer, Asked } from "./answer";
import type { Option, Options } from "./options";

/** A question a workroom asks. */
export interface Question {
  /** 1 to 25: the order they were gathered in. */
  readonly number: number;
  /** Short name to ask it by. */
  readonly code: string;
  readonly asks: BothWords;
  readonly options: readonly Option[];
  /** Null: not answered yet. */
  readonly answer: ((asked: Asked, options: Options) => Answer | Promise<Answer>) | null;
}
