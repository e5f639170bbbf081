import type { GarmentWork } from "#lib/breakdown/work";

const KINDS: Readonly<Record<GarmentWork["notes"][number]["kind"], string>> = {
  measurement: "measurements",
  parameter: "how it is made",
  material: "cloth",
  caution: "take care",
};

/** What a person must know of this garment. */
export const GarmentNotes = ({ work }: { readonly work: GarmentWork }) =>
  work.notes.length > 0 && (
    <section className="part" aria-labelledby="notes">
      <header>
        <h2 id="notes">Notes</h2>
      </header>
      {work.notes.map((note) => (
        <div key={`${note.kind} ${note.text}`} className="slip">
          {note.text}
          <span className="cap">{KINDS[note.kind]}</span>
        </div>
      ))}
    </section>
  );
