const SEARCH = `  --seconds S    search so long for each plan
  --rounds R     search so many rounds; 0 keeps the plain priority rule
  --seed N       where the search begins (1); same seed and rounds, same plan
  --today DAY    plan from this day, like 2027-01-11
                 (today, or the production's first day if that is later)`;

const ENDS = "Ends with 0, or 2 when a folder or the command has faults (nothing is written), 1 on a defect.";

/** Help for the commands that ask what would be different. */
export const WHAT_IF_HELP = {
  compare: `Plans two folders alike and tells what changes from the first to the second: garments and their minutes, materials,
fittings and for whom, money, finish. For example from designs alone, every place on a size group, to the casting.

Examples
  npm run -s tarlatan -- compare designs cast
  npm run -s tarlatan -- compare designs cast --rounds 50 --out changes

Usage
  npm run -s tarlatan -- compare FOLDER-BEFORE FOLDER-AFTER [--out DIR] [--json] [--seconds S] [--rounds R] [--seed N] [--today DAY]

Options
  --out DIR      also write garments.csv, materials.csv, fittings.csv and money.csv there
  --json         everything as JSON on standard output: minutes, money in the smallest unit, lengths in 1/80 mm
${SEARCH}

A garment is the same in both when it is of the same piece for the same place. What stays the same is left out of the tables,
and more than 50 rows are left to --out.
Give rounds rather than seconds, so that the two plans differ by their folders alone.
${ENDS}
`,
  sources: `Compares one piece made, pulled from stock, altered, hired (rented) and bought: hours, money and date.

Examples
  npm run -s tarlatan -- sources seed/small hazel-bodice
  npm run -s tarlatan -- sources seed/small hazel-bodice --hire 60.00 --hire-days 14 --buy 180.00 --buy-days 21

Usage
  npm run -s tarlatan -- sources FOLDER PIECE [--hire PRICE] [--hire-days N] [--buy PRICE] [--buy-days N] [--json]
                                              [--seconds S] [--rounds R] [--seed N] [--today DAY]

Options
  --hire PRICE   price of one when hired; --buy PRICE when bought (or the price in the piece list)
  --hire-days N  days from today until it comes; --buy-days N the same when bought
  --json         the figures as JSON on standard output
${SEARCH}
                 (3 rounds unless said otherwise)

Build needs a construction; pull and alter a garment in stock of the same construction that no other piece takes; hire and buy a price.
Labour: likely minutes at the mean cost of the makers who have the skill, each at her pace and productive share; fittings by the clock.
Materials: by how much the purchase list grows, in whole packs. Finish: of the last garment, in a plan with all other work.
${ENDS}
`,
  remedies: `Tells what would help a plan: each remedy is planned, beginning from the plan as it stands, and the best comes first.

Examples
  npm run -s tarlatan -- remedies seed/impossible
  npm run -s tarlatan -- remedies seed/small --hands net:10 --overtime delia:6h --sooner net-stiff-white:7

Usage
  npm run -s tarlatan -- remedies FOLDER [--hands SKILL:DAYS:COUNT] [--overtime WHO:HOURS] [--outwork WHAT:PRICE:DAYS]
                         [--simpler PIECE:PARAMETER:VALUE] [--sooner MATERIAL:DAYS] [--one-more KIND] [--json]
                         [--seconds S] [--rounds R] [--seed N] [--today DAY]

Options
  --hands SKILL:DAYS:COUNT   more makers with the skill, for so many working days (COUNT 1 unless said)
  --overtime WHO:HOURS       overtime of a maker, or of each who has a skill, two hours an evening at most
  --outwork WHAT:PRICE:DAYS  a garment, or all of a piece, made out of the house: price of one, days by the calendar
  --simpler PIECE:PARAMETER:VALUE  a parameter of a piece set to something less
  --sooner MATERIAL:DAYS     a material so many days sooner
  --one-more KIND            one more machine of a kind, or "fitting room"
  --json                     the figures as JSON on standard output
${SEARCH}
                 (3 rounds for each plan unless said otherwise, and 10 at least for the one to be helped)

With none of the first six it tries those that the causes of lateness suggest: the late delivery, the scarce skill, the fitting room, the decoration.
More hands are paid for all their hours; an outworker does all but patterns and fittings. What a quicker delivery or another machine costs is not known here.
Long hours tire and hurt: your own agreement and the law come first.
${ENDS}
`,
  versions: `Tells what a new version of a construction would change: which garments, by how many hours (low, likely, high) and how much of each
material. Writes nothing unless told.

Examples
  npm run -s tarlatan -- versions my-staging classical-tutu changed.json
  npm run -s tarlatan -- versions my-staging classical-tutu changed.json --pieces lark-tutu --write

Usage
  npm run -s tarlatan -- versions FOLDER CONSTRUCTION NEW.json [--pieces A,B] [--write] [--json]

Options
  --pieces A,B   only these pieces, by code or by the number of a garment; the others keep to the version they have
  --write        keep the new version in FOLDER/constructions, beside the old one, and move the pieces in pieces.csv, all or none
  --json         the effect as JSON on standard output: minutes, lengths in 1/80 mm

NEW.json is a whole construction of the same code with a higher version. Hours are standard work with fittings, before batches.
${ENDS}
`,
} as const;
