import type { PlainDate } from "#lib/calendar/plainDate";
import type { LevellingAnswer, LevellingProblem } from "#lib/levelling/problem";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";

/** A small table of an answer: text as a person reads it. */
export interface Table {
  readonly title: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** One question answered. */
export interface Answer {
  /** The answer itself, in sentences. */
  readonly says: readonly string[];
  readonly tables: readonly Table[];
  /** How it was worked, and what it leaves out. */
  readonly reasons: readonly string[];
  /** The same in figures, for programs: minutes, minor units, days. */
  readonly data: unknown;
}

/** What a question is asked of. */
export interface Asked {
  readonly plan: StagingPlan;
  /** Day from which work is planned and on which goods not yet ordered are ordered. */
  readonly today: PlainDate;
  /** Plans a changed staging as this one was planned: same day, seed and rounds. */
  readonly replan: (staging: Staging) => Promise<StagingPlan>;
  /** Levels a changed problem with the same seed, in so many rounds; as many as the plan took when null. */
  readonly relevel: (problem: LevellingProblem, rounds: number | null) => LevellingAnswer;
  /** Repairs the kept plan of a changed problem and no more, without having it judged: for a first look, never for a conclusion. */
  readonly glance: (problem: LevellingProblem) => LevellingAnswer;
}
