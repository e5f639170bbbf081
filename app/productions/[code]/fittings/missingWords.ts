import { showDay, showWall } from "#lib/calendar/showDay";
import type { Missing } from "#lib/fittings/missing";

/** What is not there yet, each with when it will be. */
export const missingWords = ({ work, goods }: Missing): readonly string[] => [
  ...work.map(({ name, end }) => `${name.toLowerCase()}, ${end === null ? "no place in the plan" : `done ${showWall(end)}`}`),
  ...goods.map(({ text, day }) => `${text} (${showDay(day)})`),
];
