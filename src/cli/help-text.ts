/** What `--help` prints. */
export const HELP = `Which blank enters which keyway, and with what margin.

  fit FAMILY.json [--json] [--verify]   judge every blank and tool in every opening
  check FAMILY.json                     say whether the file is sound, and every fault in it
  schema                                print the JSON Schema of the family file
  --help                                print this

  --json     print the verdicts as JSON instead of a table
  --verify   check every verdict again by a second, independent method

Verdicts
  enters     goes in; the margin is the gap all round in the best placement
  tight      goes in, with less gap than the family's running clearance; 0 where it touches on both sides
  blocked    does not go in; the margin is minus the depth by which it still collides in the best placement

JSON
  { "openings": [id], "profiles": [id],
    "pairs": [ { "profile", "opening", "verdict", "clearanceUm",
                 "placement": { "dxMm", "dyMm", "tiltDeg" }, "playUm": { "lateral", "vertical" } } ] }
  The placement moves the profile as drawn in its file to its best place in the opening as drawn.

Exit codes
  0  done
  1  --verify found a verdict that the second method does not confirm
  2  the words are wrong, or the file is missing or not sound; the reason is on stderr
  130  stopped by Ctrl-C

Calculated on ideal outlines: no certificate. Have a licensed locksmith and the cylinder's maker confirm before
cutting metal.
`;
