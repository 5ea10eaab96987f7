// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/intake/manual.hpp"

namespace cli::intake {

std::string_view manual() {
    return R"(One tool a line, in any order; what is left out is not known.

  13/16 x 17/32 x 3/8   cutting x pilot diameter x its length, in one piece
  7/8 bore 1/4 x 1      a removable pilot goes in: bore x depth
  7/8 removable         so too, not measured; 7/8 lost: and its pilot is lost
  7/8 no pilot          none; 7/8 pilot unknown: nobody can tell
  sf 5/8                a spotfacer; back 1-1/4, other 1/2, unknown 5/8
  pilot 9/64 x 3/16 shank 3/32 x 3/8      loose, each diameter x length
  note TEXT, photo FILE enough for a tool, to be seen to later

sizes  cut c, pilot, long l (of the pilot), bore b, deep d, reach r, shank s,
       #8-32 or M3 (set screw), at (from the mouth to it), flat (at x length
       x depth), no flat; bore unknown where it would be taken over
how    mark, rule, caliper cal, micrometer mic, pin gauge, test hole, guess:
       of the sizes before it; written against a size (.3267mic) of that one
drills of a pilot marked with one: pilot #7, 13/16 x #7, pilot drill F; a letter
       alone is none
counts 3 flutes or f3, number 101, in 37 (the body that the pilot is in)
words  good fair dull dirty rough broken; plain fluted; straight mt2;
       hss, carbon steel, silver steel; screw, threaded, detent, cross pin,
       sleeve, held other; holds, slides, binds, loose, will not go
names  set, place p: to a number or the next word; a comma or quotes hold it
       together; place 25 alone is hole 25 where the last was hole 22
texts  marked m (alone: with its size), work w, material: to a semicolon;
       note n: to the end
all    what follows it holds for the next tools too: all hss 3 flutes,
       all pilots, all counterbores, all mm, all place tin 2

Taken over from the line before: the set, the place counting up, and how a
size written alike was known. A new set begins afresh. Words may be cut short:
sha 1/2. undo takes back the newest line, the arrow keys bring lines back to be
mended, quit ends. For older ones: counterpart change, measure, retire.
)";
}

} // namespace cli::intake
