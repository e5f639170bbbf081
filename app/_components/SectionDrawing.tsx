import type { GarmentWork } from "#lib/breakdown/work";
import { type SectionDrawing as Drawing, sectionDrawing } from "#lib/charts/section";
import type { Staging } from "#lib/staging/staging";
import styles from "./SectionDrawing.module.css";
import { DimensionLine, PictureText, through } from "./sectionParts";

interface Props {
  readonly work: GarmentWork;
  readonly staging: Pick<Staging, "production">;
}

const text = `${styles.text}`;
const strong = `${styles.text} ${styles.strong}`;
const note = `${styles.small} ${styles.quiet}`;

/** The cross-section of a net skirt, drawn from that garment's own numbers; nothing for a garment that has no layers. */
export const SectionDrawing = ({ work, staging }: Props) => {
  const drawing = sectionDrawing(work, staging.production);
  if (!drawing) return null;
  const { width, height, words } = drawing;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} className={styles.drawing} role="img" aria-label={words.sentence}>
      <Body drawing={drawing} />
      {drawing.layers.map((layer) => (
        <path key={layer.layer} d={through(layer.leader)} className={styles.thin} strokeWidth=".9" strokeDasharray="2 3" />
      ))}
      {drawing.layers.map((layer) => (
        <g key={layer.layer}>
          <path d={through(layer.net)} className={styles.net} />
          <path d={through(layer.dag)} className={styles.net} />
          <circle cx={layer.row.x} cy={layer.row.y} r="3" className={styles.dot} strokeWidth="1.4" />
        </g>
      ))}
      <path d={drawing.tacks.map(through).join("")} className={styles.line} strokeWidth="1.3" strokeDasharray="3 2.4" />
      <Hoop drawing={drawing} />
      {drawing.dimensions.map((dimension) => (
        <DimensionLine key={dimension.text} dimension={dimension} />
      ))}
      <List drawing={drawing} />
    </svg>
  );
};

const Body = ({ drawing: { body, waist, basqueLine, centre, words } }: { readonly drawing: Drawing }) => {
  const [basqueY, left] = [basqueLine[0].y, centre + 8];
  return (
    <g>
      <path d={through(body)} className={styles.body} strokeWidth="2" />
      <path d={through(basqueLine)} className={styles.line} strokeWidth="1.2" strokeDasharray="5 3" />
      <path d={through(waist)} className={styles.line} strokeWidth="4" />
      <path d={`M${centre} 36V${body.at(-1)?.y ?? 0}`} className={styles.thin} strokeDasharray="14 4 2 4" />
      <PictureText at={{ x: centre, y: 30 }} className={`${note} ${styles.middle}`}>
        centre
      </PictureText>
      <PictureText at={{ x: left, y: waist[0].y + 20 }} className={note}>
        {words.waist}
      </PictureText>
      <PictureText at={{ x: left, y: basqueY - 28 }} className={strong}>
        basque
      </PictureText>
      <PictureText at={{ x: left, y: basqueY - 11 }} className={note}>
        {words.basque}
      </PictureText>
      <PictureText at={{ x: left, y: basqueY + 60 }} className={strong}>
        {words.knickers}
      </PictureText>
      <PictureText at={{ x: left, y: basqueY + 77 }} className={note}>
        {words.rows}
      </PictureText>
    </g>
  );
};

const Hoop = ({ drawing: { hoop, words } }: { readonly drawing: Drawing }) => {
  const foot = hoop?.leader.at(-1);
  return hoop && foot ? (
    <g>
      <circle cx={hoop.at.x} cy={hoop.at.y} r="7" className={styles.dot} strokeWidth="1.6" />
      <circle cx={hoop.at.x} cy={hoop.at.y} r="3" className={styles.full} />
      <path d={through(hoop.leader)} className={styles.line} />
      {words.hoop.map((line, index) => (
        <PictureText key={line} at={{ x: foot.x + 6, y: foot.y - 3 + index * 16.5 }} className={index === 0 ? strong : note}>
          {line}
        </PictureText>
      ))}
    </g>
  ) : null;
};

const List = ({ drawing: { layers, list, words } }: { readonly drawing: Drawing }) => {
  const rule = list.top - 18;
  const sums = [
    ["off the roll", words.roll],
    ["of cut strip", words.strip],
  ] as const;
  return (
    <g>
      <text x={list.from} y={rule - 6} className={note}>
        layer
      </text>
      <text x={list.depth} y={rule - 6} className={`${note} ${styles.end}`}>
        {words.depthHead}
      </text>
      <text x={list.to} y={rule - 6} className={`${note} ${styles.end}`}>
        widths
      </text>
      <path d={`M${list.from} ${rule}H${list.to}`} className={styles.line} strokeWidth="1.5" />
      {layers.map(({ layer, line, depth, widths }) => (
        <g key={layer}>
          <text x={list.from} y={line} className={strong}>
            {layer}
          </text>
          <PictureText at={{ x: list.depth, y: line }} className={`${text} ${styles.end}`}>
            {depth}
          </PictureText>
          <text x={list.to} y={line} className={`${text} ${styles.quiet} ${styles.end}`}>
            {widths}
          </text>
        </g>
      ))}
      <path d={`M${list.from} ${list.foot + 9}H${list.to}`} className={styles.hair} />
      {sums.map(([label, value], index) => (
        <g key={label}>
          <text x={list.from} y={list.foot + 28 + index * 18} className={note}>
            {label}
          </text>
          <text x={list.to} y={list.foot + 28 + index * 18} className={`${strong} ${styles.end}`}>
            {value}
          </text>
        </g>
      ))}
    </g>
  );
};
