import type { Working } from "./clockStore";
import type { Compiled, Seats } from "./compiled";

/**
 * Seat people so that each serves one skill, or null when they cannot fill all seats. People come in order of preference:
 * growing a matching person by person keeps the most preferred set (the sets that can be seated form a matroid).
 */
export function matchCrew(compiled: Compiled, seats: Seats, people: readonly number[]): readonly Working[] | null {
  if (people.length < seats.length) return null;
  const sitting = new Array<number>(seats.length).fill(-1);
  let seated = 0;
  for (const maker of people) {
    const tried = new Array<boolean>(seats.length).fill(false);
    if (sit(compiled, seats, sitting, tried, maker)) seated++;
    if (seated === seats.length) return seats.map(({ skill }, seat) => ({ maker: sitting[seat]!, skill }));
  }
  return null;
}

function sit(compiled: Compiled, seats: Seats, sitting: number[], tried: boolean[], maker: number): boolean {
  const { pace } = compiled.problem.makers[maker]!;
  for (let seat = 0; seat < seats.length; seat++) {
    if (tried[seat] || (pace[seats[seat]!.skill] ?? 0) <= 0) continue;
    tried[seat] = true;
    if (sitting[seat]! < 0 || sit(compiled, seats, sitting, tried, sitting[seat]!)) {
      sitting[seat] = maker;
      return true;
    }
  }
  return false;
}
