/** Help of the verb. @internal */
export const SCREEN_HELP = `spindlewright screen: say of every part of a catalogue whether it fits

  spindlewright screen --need FILE [CATALOGUE]     what is wanted, written by hand
  spindlewright screen --job FILE [CATALOGUE]      what the job sheet of FILE asks for
  spindlewright screen --draft-mapping CATALOGUE   a first mapping of its columns and words

  CATALOGUE, --catalogue FILE   CSV (comma, semicolon, tab), NDJSON or JSON; standard input when absent or -
  --form csv|ndjson|json        form of the catalogue, when name and beginning do not tell
  --mapping FILE                what columns, units and words of the catalogue mean (JSON)
  --for arm|spindle|bolt|puller what to look for, when the job does not say
  --format text|ndjson|csv|json form of the output (text: counts and shortlist; the others: every row)
  --out FILE                    write there instead of to standard output
  --top N                       length of the shortlist (10)
  --quiet                       no progress and no counts on standard error

Start from nothing:

  spindlewright screen --draft-mapping catalogue.csv --out mapping.json
  echo '{"format":"spindlewright-need-1","for":"arm","interface":"square-taper-jis","side":"drive"}' > need.json
  spindlewright screen --need need.json --mapping mapping.json catalogue.csv
  spindlewright screen --need need.json --mapping mapping.json catalogue.csv --format csv --out answers.csv

Rows are never dropped: rows = fits + does not fit + cannot tell + refused. NDJSON and CSV are written as they come and
stay whole when interrupted; JSON is written under its name only when it is complete.

exit codes: 0 done, 2 refused (bad options, need, mapping or catalogue), 1 a file cannot be read or written,
130 interrupted (what was written is whole rows)
`;
