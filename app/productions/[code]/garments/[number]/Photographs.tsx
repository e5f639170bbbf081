import type { KeptPhoto } from "#prisma/photos/photos";
import { ActionForm } from "../../../../_components/ActionForm";
import { showInstant } from "../../../../_data/showDates";
import styles from "./Garment.module.css";
import { addPhotograph, dropPhotograph } from "./photographActions";

/** Photographs of the garment, the newest first, and the form that adds one. */
export const Photographs = ({
  photos,
  href,
  production,
  garment,
  zone,
  canAdd,
  mayDrop,
}: {
  readonly photos: readonly KeptPhoto[];
  /** Address of the garment. */
  readonly href: string;
  readonly production: string;
  readonly garment: string;
  readonly zone: string;
  readonly canAdd: boolean;
  readonly mayDrop: (photo: KeptPhoto) => boolean;
}) => (
  <section className="part" aria-labelledby="photographs">
    <header>
      <h2 id="photographs">Photographs</h2>
    </header>
    {photos.length === 0 && <p className="q">There is none yet.</p>}
    <ul className={styles.photographs}>
      {photos.map((photo) => (
        <li key={photo.id}>
          <a href={`${href}/photographs/${photo.id}`}>
            {/* biome-ignore lint/performance/noImgElement: only members may have it, so no picture server may keep it. */}
            <img
              src={`${href}/photographs/${photo.id}?small`}
              width={photo.width}
              height={photo.height}
              alt={photo.caption || `${garment}, photographed by ${photo.who ?? "somebody"}`}
              loading="lazy"
            />
          </a>
          <p className="cap">
            {photo.caption && <>{photo.caption}. </>}
            {photo.who}, {showInstant(photo.at, zone)}
          </p>
          {mayDrop(photo) && (
            <ActionForm action={dropPhotograph} press="Take it away" busy="Taking away" look="plain">
              <Hidden production={production} garment={garment} />
              <input type="hidden" name="photograph" value={photo.id} />
            </ActionForm>
          )}
        </li>
      ))}
    </ul>
    {canAdd && (
      <details className={`${styles.fold} no-print`}>
        <summary>Add a photograph</summary>
        <ActionForm action={addPhotograph} press="Add it" busy="Adding">
          <Hidden production={production} garment={garment} />
          <label className="field">
            Photograph <span className="cap">JPEG, PNG or WebP, to 11 MB; the place and the camera it names are taken out</span>
            <input type="file" name="photograph" accept="image/jpeg,image/png,image/webp" required />
          </label>
          <label className="field">
            What it shows
            <input name="caption" maxLength={200} placeholder="back, second fitting" autoComplete="off" />
          </label>
          <label className={styles.tick}>
            <input type="checkbox" name="agreed" value="yes" required />
            Whoever can be seen in it agrees; for a minor a parent or guardian does
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
