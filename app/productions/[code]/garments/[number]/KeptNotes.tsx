import type { GarmentWork } from "#lib/breakdown/work";
import type { KeptNote } from "#prisma/notes/notes";
import { ActionForm } from "../../../../_components/ActionForm";
import { showInstant } from "../../../../_data/showDates";
import styles from "./Garment.module.css";
import { addGarmentNote, changeGarmentNote } from "./noteActions";

const KINDS: Readonly<Record<GarmentWork["notes"][number]["kind"], string>> = {
  measurement: "measurements",
  parameter: "how it is made",
  material: "cloth",
  caution: "take care",
};

/** What a person must know of this garment: what follows from how it is made, and what people wrote down. */
export const KeptNotes = ({
  said,
  notes,
  production,
  garment,
  zone,
  user,
  canNote,
}: {
  readonly said: GarmentWork["notes"];
  readonly notes: readonly KeptNote[];
  readonly production: string;
  readonly garment: string;
  /** The workroom's time zone. */
  readonly zone: string;
  /** Who reads. */
  readonly user: string;
  readonly canNote: boolean;
}) => (
  <section className="part" aria-labelledby="notes">
    <header>
      <h2 id="notes">Notes</h2>
    </header>
    {notes.map((note) => (
      <div key={note.id} className="slip">
        {note.text}
        <span className="cap">
          {note.who}, {showInstant(note.at, zone)}
        </span>
        {canNote && note.user === user && (
          <details className={`${styles.fold} no-print`}>
            <summary>Change it</summary>
            <ActionForm action={changeGarmentNote} press="Keep" busy="Keeping">
              <Hidden production={production} garment={garment} />
              <input type="hidden" name="note" value={note.id} />
              <input type="hidden" name="version" value={note.version} />
              <label className="field">
                In words <span className="cap">leave it empty to take the note away</span>
                <textarea key={note.version} name="text" rows={3} maxLength={1000} defaultValue={note.text} />
              </label>
            </ActionForm>
          </details>
        )}
      </div>
    ))}
    {said.map((note) => (
      <div key={`${note.kind} ${note.text}`} className="slip">
        {note.text}
        <span className="cap">{KINDS[note.kind]}</span>
      </div>
    ))}
    {canNote && (
      <details className={`${styles.fold} no-print`}>
        <summary>Write a note</summary>
        <ActionForm action={addGarmentNote} press="Pin it" busy="Pinning">
          <Hidden production={production} garment={garment} />
          <label className="field">
            In words
            <textarea key={notes.length} name="text" rows={3} maxLength={1000} required />
          </label>
        </ActionForm>
      </details>
    )}
  </section>
);

const Hidden = ({ production, garment }: { readonly production: string; readonly garment: string }) => (
  <>
    <input type="hidden" name="production" value={production} />
    <input type="hidden" name="garment" value={garment} />
  </>
);
