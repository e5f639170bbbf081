import type { Chance } from "#lib/levelling/random";

const GIVEN = [
  "Al",
  "Bren",
  "Cal",
  "Del",
  "Ey",
  "Fen",
  "Gar",
  "Hal",
  "Il",
  "Jor",
  "Kel",
  "Lin",
  "Mar",
  "Nev",
  "Or",
  "Per",
  "Ros",
  "Sel",
  "Tal",
  "Ves",
];
const GIVEN_END = ["a", "en", "ic", "in", "is", "o", "wyn", "ette"];
const FAMILY = [
  "Ash",
  "Bram",
  "Cold",
  "Dun",
  "Elm",
  "Fal",
  "Gorse",
  "Hol",
  "Iver",
  "Kes",
  "Lark",
  "Mor",
  "Nor",
  "Oak",
  "Pell",
  "Quar",
  "Ryd",
  "Stan",
  "Thorn",
  "Wen",
];
const FAMILY_END = ["by", "combe", "dale", "er", "ford", "garth", "ley", "mere", "rick", "sby", "ton", "wick"];

/** A made-up name; the number keeps two alike apart. */
export const inventedName = (chance: Chance, taken: Set<string>): string => {
  const part = (words: readonly string[]) => words[chance.below(words.length)]!;
  const name = `${part(GIVEN)}${part(GIVEN_END)} ${part(FAMILY)}${part(FAMILY_END)}`;
  const own = taken.has(name) ? `${name} ${taken.size}` : name;
  taken.add(own);
  return own;
};
