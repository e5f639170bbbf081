import { costumeChanges } from "#lib/running/changes";
import { type DressedChange, dressers } from "#lib/running/dressers";
import type { Answer, Asked } from "./answer";
import { counted } from "./told";

export const answerQuickChanges = ({ plan: { staging } }: Asked): Answer => {
  const data = dressers(staging, costumeChanges(staging));
  const performer = new Map(staging.performers.map(({ code, name }) => [code, name]));
  const costume = new Map(staging.costumes.map(({ code, name }) => [code, name]));
  const scene = new Map(staging.scenes.map(({ code, name }) => [code, name]));
  const who = (one: DressedChange) => (one.performer === null ? `place ${one.place}` : (performer.get(one.performer) ?? one.performer));
  const hopeless = data.tight.filter((one) => one.dressers === null);
  return {
    says: [
      data.changes.length === 0
        ? "Nobody changes costume during the evening."
        : data.tight.length === 0
          ? `None of ${counted(data.changes.length, "change")}: each dancer has the time alone.`
          : `${counted(data.tight.length, "change")} of ${data.changes.length} ${data.tight.length === 1 ? "is" : "are"} too quick for the dancer alone; ${counted(data.most, "dresser")} at once ${data.most === 1 ? "solves" : "solve"} ${hopeless.length === 0 ? "them all" : "the others"}, the most after minute ${data.at}.`,
      ...(hopeless.length > 0
        ? [
            `${counted(hopeless.length, "change fits", "changes fit")} the time with no number of dressers: underdress, take something off, or ask for more music.`,
          ]
        : []),
    ],
    tables: [
      {
        title: "Changes that need somebody",
        headings: ["cast", "dancer", "off with", "on with", "time", "takes one alone", "dressers", "where"],
        rows: data.tight.map((one) => [
          one.cast,
          who(one),
          `${costume.get(one.from.costume) ?? one.from.costume} after ${scene.get(one.from.scene) ?? one.from.scene}`,
          `${costume.get(one.to.costume) ?? one.to.costume} in ${scene.get(one.to.scene) ?? one.to.scene}`,
          `${one.minutes} min`,
          `${one.needs} s`,
          one.dressers === null ? "too quick" : String(one.dressers),
          one.where,
        ]),
      },
    ].filter(({ rows }) => rows.length > 0),
    reasons: [
      "The time is from the end of one scene to the start of the next in the running order.",
      "A piece with hooks, bars or bones takes a minute off or on, any other half a minute, shared out over all hands at it: common practice, no source. Time each at its first rehearsal, and rehearse before dress.",
      "Two dressers at most can get at one dancer.",
    ],
    data: { most: data.most, at: data.at, tight: data.tight, changes: data.changes.length },
  };
};
