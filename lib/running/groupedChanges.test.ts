import { describe, expect, it } from "vitest";
import { smallStaging } from "#lib/staging/fixtures";
import { costumeChanges } from "./changes";
import { groupedChanges } from "./groupedChanges";

describe("changes made together", () => {
  const staging = smallStaging({
    "scenes.csv": "code,name,act,starts,minutes\nfall,Snowfall,1,30,7\nend,Finale,1,60,9",
    "costumes.csv": "code,name,role\nwhite,White,snow\ngrey,Grey,snow\nsilver,Silver,queen\nblack,Black,queen",
    "appearances.csv": "role,scene,costume\nsnow,fall,white\nsnow,end,grey\nqueen,fall,silver\nqueen,fall,black",
  });
  const said = groupedChanges(costumeChanges(staging)).map(
    ({ cast, from, to, minutes, bodies }) =>
      `${cast} ${from.costume}-${to.costume} ${minutes}: ${bodies.map((one) => one.performer ?? `place ${one.place}`)}`,
  );

  it("are one for a corps, cast by cast, the shortest time first; who is not cast yet counts by the place", () => {
    expect(said).toEqual([
      "first silver-black 0: ruth",
      "second silver-black 0: ines",
      "first white-grey 23: ines,place 2",
      "second white-grey 23: ruth,place 2",
    ]);
  });
});
