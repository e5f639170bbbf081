/** Something that may be wider than the page: it scrolls by itself, by keyboard too. `fit` shrinks a picture as far as it stays legible. */
export const Wide = ({
  label,
  fit = false,
  children,
}: {
  readonly label: string;
  readonly fit?: boolean;
  readonly children: React.ReactNode;
}) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard (WCAG 2.1.1).
  <section className={fit ? "wide fit" : "wide"} aria-label={label} tabIndex={0}>
    {children}
  </section>
);
