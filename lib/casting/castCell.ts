/** A cell of the casting: a place of a role in one cast, danced or stood by for. */
export interface CastCell {
  readonly cast: string;
  readonly role: string;
  /** 1-based body of the role. */
  readonly place: number;
  readonly standing: "cast" | "cover";
}

/** What a cell shall hold. */
export interface Recast extends CastCell {
  /** Codes of performers: one who dances or any number who stand by; nobody yet when empty. Null: the cast has no such place. */
  readonly performers: readonly string[] | null;
}

export const cellKey = ({ cast, role, place, standing }: CastCell): string => JSON.stringify([cast, role, place, standing]);
