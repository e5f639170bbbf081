import localFont from "next/font/local";

const besley = localFont({
  src: [
    { path: "../../node_modules/@fontsource/besley/files/besley-latin-500-normal.woff2", weight: "500" },
    { path: "../../node_modules/@fontsource/besley/files/besley-latin-700-normal.woff2", weight: "700" },
  ],
  variable: "--besley",
  fallback: ["serif"],
});

const besleyMore = localFont({
  src: [{ path: "../../node_modules/@fontsource/besley/files/besley-latin-ext-500-normal.woff2", weight: "500" }],
  variable: "--besley-more",
  preload: false,
  adjustFontFallback: false,
  declarations: [
    {
      prop: "unicode-range",
      value:
        "U+0100-02BA, U+02BD-02C5, U+02C7-02CC, U+02CE-02D7, U+02DD-02FF, U+1E00-1E9F, U+1EF2-1EFF, U+2020, U+20A0-20AB, U+20AD-20C0, U+2113, U+2C60-2C7F, U+A720-A7FF",
    },
  ],
});

const commissioner = localFont({
  src: "../../node_modules/@fontsource-variable/commissioner/files/commissioner-latin-flar-normal.woff2",
  weight: "100 900",
  variable: "--commissioner",
  fallback: ["sans-serif"],
});

const commissionerMore = localFont({
  src: "../../node_modules/@fontsource-variable/commissioner/files/commissioner-latin-ext-flar-normal.woff2",
  weight: "100 900",
  variable: "--commissioner-more",
  preload: false,
  adjustFontFallback: false,
  declarations: [
    {
      prop: "unicode-range",
      value:
        "U+0100-02BA, U+02BD-02C5, U+02C7-02CC, U+02CE-02D7, U+02DD-02FF, U+1E00-1E9F, U+1EF2-1EFF, U+2020, U+20A0-20AB, U+20AD-20C0, U+2113, U+2150-218F, U+2C60-2C7F, U+A720-A7FF",
    },
  ],
});

/** The families tokens.css names, served from this address: Besley for names, Commissioner for all that is read. */
export const letters = [besley, besleyMore, commissioner, commissionerMore].map((face) => face.variable).join(" ");
