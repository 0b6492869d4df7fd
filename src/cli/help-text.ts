/** What `--help` prints. */
export const HELP = `Which blank enters which keyway, and with what margin.

  fit FAMILY.json [options]     judge every blank and tool in every opening
  check FAMILY.json             say whether the file is sound, and every fault in it
  export FAMILY.json [options]  write outlines for other programs, at true size, arcs as arcs
  claims FAMILY.json [options]  check what charts and colleagues say of it: who enters what
  tiers FAMILY.json [options]   order blanks by the keyways that they enter: who enters all that another does
  passage FAMILY.json [options] find the widest blank that passes several openings, and what it loses in each
  grow FAMILY.json [options]    say how many sections more there is room for, and propose the next ones, drawn and judged
  plan PLAN.json [-o FAMILY.json] plan the family of a file from its areas and holders: wards, drawn and judged
  plan --table TABLE.csv [opts] choose wards and grooves on the fewest sites for a table of who must enter what
  strength FAMILY.json [options] say what each blade bears in torsion and bending, and which materials will do
  capacity [FAMILY.json] [opts] count key changes, with a family those of all sections that exclude each other
  identify FAMILY.json DRAWING  say which section an unknown outline (SVG, DXF, CSV) is, the closest first
  ask FAMILY.json "QUESTION"    answer in plain words: does X go into Y, what is X, what goes into Y, what differs
  names FAMILY.json [--json]    list every name with what it stands for, and the names that mislead
  gauge FAMILY.json --height MM [options] say how thick a straight strip may be to enter every opening, and who sets it
  publish FAMILY.json --sheet SHEET -o FILE  lay out a sheet for paper or a room: PDF, SVG, HTML slides, CSV matrix
  print3d FAMILY.json -o FILE   build the display set: openings as a block, blanks as coupons, a board; 3MF or STL
  schema                        print the JSON Schema of the family file
  --help                        print this; COMMAND --help or help COMMAND prints what concerns that command

Options of fit
  --json             print the answers as JSON instead of a table
  --verify           check every verdict again by a second, independent method; under --tilt at the angle found
  --margins          tell the guard margin and the smallest clearance of the family, new and held upright
  --tilt DEG         let a blank stand turned by up to DEG degrees either way, 0 to 15; upright where not given
  --tolerance-um N   take every outline as made to N um to either side, 0 to 1000, in place of the file's tolerances
  --wear-um N        take N um off every blank and tool, and as much off every keyway, 0 to 1000; heights are
                     told from the floor of the worn keyway
  --draws N          with --json, new and upright: draw N pairs of parts evenly from their tolerances for each pair (seed 1)
  With --tilt or --tolerance-um the table has a second mark, the answer for all parts within their tolerance.

Options of export
  --as FORMAT        svg, dxf or csv; where not given, what the name after -o ends with
  --only ID,ID       the profiles with these ids, in this order; all of the file where not given
  -o, --output FILE  write this file, in place of what it holds; without it the text is printed
  SVG and DXF have the outlines side by side, CSV has each as it is drawn; the unit is the family's.

Options of claims
  --table FILE       the claims of this table (CSV: a list, or a matrix of keyways and blanks) in place of the family's
  --json             print the answers as JSON instead of text
  + confirmed, x contradicted, ~ too close to call (some parts within their tolerance do as it says, some do not),
  ? a name that stands for nothing or for several outlines; new parts held upright, tolerances as in the file

Options of tiers
  --blanks           leave the tools out
  --json             print nodes, covers and the size of the concept lattice as JSON instead of text
  A node is all that enters the same keyways: base (one), group (several), all, nothing. Tier 1 is the lowest; a node
  stands one tier above the highest node below it. Counting concepts ends at 100,000.

Options of passage
  --openings ID,ID   the openings with these ids; all of the file where not given
  --milled           restrict the blank to what one straight cutter mills from a plain blade
  --flank-deg N, --root-um N, --groove-um N, --step-um N
                     with --milled: lean of the flanks (0), radius of the root (100), least width of a groove (400),
                     step of its depth (50)
  --thickness-um N, --height-um N
                     with --milled: the plain blade; as much as there is room for where not given
  --json             print sizes, moves, losses and the outline of the blank as JSON instead of text
  Each opening is moved, never turned, to where the blank with the family's running clearance has the greatest area.

Options of grow
  --between ID,ID    two openings that the next sections are to lie between
  --allow ID,ID      group blanks that may enter new openings; none where not given
  --passage          let the widest blank that passes all openings stand for an all-section blank
  --json             print sites, counts and the proposals with their outlines as JSON instead of text
  A further section leaves everything as it is, is entered by the all-section blanks and its own blank only, and its blank
  enters no other opening, for all parts within their tolerance; further sections exclude each other.

Options of plan
  -o, --output FILE  write the family with its planned sections to this file; without it the plan is only told
  --replace          leave out sections of the file that were not planned; they are kept where not given
  --table FILE       a bare matrix (CSV): a row a section, a column a blank; 1 must enter, 0 must not, * either; names of
                     blanks may stand in a first row, names of sections in a first column
  --stops N          by how many sites, each enough by itself, a blank is stopped, 1 to 3; 1 where not given
  --depths N         how many depths a ward may have at one site, 1 to 4; 1 where not given
  --seconds N        how long fewer sites are looked for and a proof is tried, 0 to 3600; 20 where not given
  --json             print { "sites", "lowerBound", "proved", "bound", "wards": { section: [site] }, "grooves":
                     { blank: [site] } }, sites from 1; with several depths { site: depth } in place of [site]

Options of strength
  --material ID      the material of the blades, nickel silver C77000 H02 where not given; a wrong id lists all
  --torque NM        compare with NM newton metres in place of the 2.5 of the use test, which is second-hand
  --json             print all figures with their bounds as JSON instead of a table
  J is told with half the distance of its bounds; yielding by von Mises; estimates for ideal outlines without cuts.

Options of capacity
  --chambers N       1 to 12; 6 where not given
  --depths N         2 to 12; 10 where not given
  --macs N           greatest difference of neighbouring cuts, or none; 7 where not given
  --exclude 0,9      depths that are not used; 2:0,9 for chamber 2 alone; may be given several times
  --alike N          at most N equal cuts in a row
  --different N      at least N different depths in a bitting
  --two-step         keep one parity in each position: the master's, else --parity eoeoeo, else even
  --master 5,2,7     the top master; no change key equals it in any position
  --first-depth N    number of the shallowest depth as it is written, 0 or 1; 0 where not given
  --sections N       without a family: take N sections to exclude each other
  --json             print all figures as JSON, counts as text of any length
  Sections exclude each other where each has a blank that enters it and none of the others.

Options of identify
  --json             print the figures of every section as JSON instead of a table
  --among WHICH      blanks (and tools), keyways or all; blanks where not given
  --error-um N       by how much the outline may be wrong at each of its places either way, 1 to 1000; 50 where not given
  --loop N           which outline of the drawing, where it has several
  It is tried mirrored (the view from the tip) and turned by any angle, never scaled; profiles of one outline are one line.

Options of gauge
  --height LENGTH    the height of the strip: millimetres, or with a unit: 6, 6mm, 0.236in, 236thou
  --thickness LENGTH tell which openings a strip of this thickness enters, and with how much to spare
  --tilt DEG         let the strip stand turned by up to DEG degrees either way, 0 to 15; upright where not given
  --json             print the answer, and for each opening where it holds the strip, its curve of thickness against
                     height (straight between its corners) and its line of sight, as JSON instead of a table

Options of publish
  --sheet SHEET      chart, matrix, scale (an opening and a blank at true size and enlarged), card (what one blank or one
                     holder's blank enters), answers (a quiz on paper) or slides (the lesson, 16:9)
  -o, --output FILE  ends in .pdf or .svg (several pages: FILE-1.svg and on); .html also for slides, .csv for the matrix
  --paper PAPER      A4, A3, Letter or A1; A4 where not given
  --landscape, --portrait
                     how it is held; where not given a chart and a matrix lie, the other sheets stand
  --grey             greys that stay apart on any printer, in place of colours
  --of ID            scale: an opening, a blank, or both parted by a comma; card: a blank, or a holder of the plan
  --enlarge N        scale: enlarged N times beside true size, 1 to 50; as much as one page takes where not given
  --one-page         chart: made smaller until it stands on one page
  --in-between ID,ID chart: openings that were squeezed in later stand half a row higher, between their neighbours; those
                     that the file says are in between where not given
  --blanks           chart, matrix: leave the tools out
  --questions N, --seed N
                     answers: how many questions, 1 to 100 (12), and what draws them (1)
  --units UNIT       mm or in; the family's where not given
  --date YYYY-MM-DD  told at the foot of each page; none where not given, so that the same file comes out again
  Print without scaling: a bar on the sheet must measure 50 mm. Text is text, the typeface goes with the file.

Options of print3d
  -o, --output FILE  ends in .3mf (all parts, named, in millimetres) or .stl (a file a part: FILE-01-block.stl and on)
  --only ID,ID       the openings, blanks and tools with these ids; all of the file where not given, equal outlines once
  --scale N          N times as large as the real sections, 1 to 12; 4 where not given
  --columns N        openings in a row of the block
  --depth MM, --wall MM, --letter-size MM
                     depth of the block (20), walls between openings (6), height of the letters' em (7)
  --gap MM           fitting gap taken off each coupon all round; 0.15 where not given
  --nozzle MM        width of the nozzle's line, which sets what is named as too thin; 0.4 where not given
  --bed XxY          the printer's bed in mm; 250x210 where not given; the block is cut where it is larger
  --tip SHAPE        flat, chamfered or pointed; chamfered where not given
  --no-letters, --no-board
                     without raised names, without the board that holds the set
  All lengths are millimetres as printed. What a printer would lose, and what the gap does to verdicts, is said on stderr.

Verdicts
  enters     goes in; the margin is the gap all round in the best placement
  tight      goes in, with less gap than the family's running clearance; 0 where it touches on both sides
  blocked    does not go in; the margin is minus the depth by which it still collides in the best placement

All parts within their tolerance
  always     every blank goes into every keyway
  depends    some do, some do not
  never      none goes in

JSON
  { "openings": [id], "profiles": [id],
    "pairs": [ { "profile", "opening", "verdict", "clearanceUm",
                 "placement": { "dxMm", "dyMm", "tiltDeg" }, "playUm": { "lateral", "vertical" },
                 "threeWay", "limits": [ { "side", "ward", "atMm", "gapUm", "blank", "opening" } ],
                 "blockedBy": [ { "side", "ward", "fromMm", "toMm", "depthUm" } ], "interferenceUm", "seatUm",
                 "drawn": { "share", "from", "to" } } ],
    "margins": { "guard": { "profile", "opening", "wearUm" }, "clearance": { "profile", "opening", "clearanceUm" } } }
  placement  turns the profile about the origin of its drawing, then moves it to its best place in the opening
  threeWay   always, depends or never
  limits     where the gap is narrowest: the side of the plug, whether a ward, the height above the keyway's lowest
             point, and what meets: { "corner": n } or { "edge": n }, from 0; corner n is outline[n] of the file, edge n
             starts there; a milled profile counts counter-clockwise from the left end of its back; null under wear
  blockedBy  what is in the way in the best placement, with its height band above the keyway's lowest point and its depth
  seatUm     how much higher (below zero: lower) the blank rides than the section's own when springs press both down;
             null where one of the two does not go in
  drawn      with --draws only; the share of drawn pairs that go together, and its 95 % confidence interval
  margins    with --margins only; guard: the least wear of blank and keyway each at which a blank goes in where it is
             stopped, to 0.5 um; null where there is none

Exit codes
  0  done
  1  --verify found a verdict that the second method does not confirm, a claim is not confirmed, or there is no plan:
     the blade has no room for it, or a pair of it is not confirmed
  2  the words are wrong, the file is missing, not sound or cannot be written, it has no sections to work on, rows of a
     table cannot be read, or wear leaves nothing of a blank; stderr says which
  130  stopped by Ctrl-C

Calculated on ideal outlines: no certificate. Have a licensed locksmith and the cylinder's maker confirm before
cutting metal.
`;
