// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/intake/manual.hpp"

namespace cli::intake {

std::string_view manual() {
    return R"(One tool a line, in any order; what is left out is not known.

  3/4 x 1/2 x 3/8             cutting x pilot diameter x pilot length, in one piece
  7/8 bore 1/4 x 1            a removable pilot goes in: bore x depth
  7/8 removable; 7/8 lost     so too; and its pilot is lost
  7/8 no pilot; 7/8 pilot unknown
  pilot 9/64 x 3/16 shank 3/32 x 3/8     a loose pilot: each diameter x length
  sf 5/8; back 1-1/4; other; unknown     no counterbore, but a spotfacer, ...
  note TEXT; photo FILE       enough for a tool, to be seen to later

sizes     cut c, pilot, long l, bore b, deep d, reach r, shank s, screw (#8-32, M3),
          at (the set screw from the mouth), flat (at x length x depth), no flat
how known mark, rule, caliper cal, micrometer mic, pin gauge, test hole, guess:
          after the sizes they tell of
numbers   flutes f (3 flutes, f3), number, in 37 (the body it is in)
words     good fair dull dirty rough broken; plain fluted; straight mt2; hss,
          carbon steel, silver steel; screw, threaded, detent, cross pin, sleeve,
          held other; holds, slides, binds, loose, will not go
names     set, place p: end at the next word; 25 alone is hole 25 where it was 22
text      marked m (alone: with its size), work w, material, note n: to ; or the end
all       what follows it holds for the tools after this one too: all hss 3 flutes;
          all pilots, all counterbores, all mm, all place tin 2

Taken over from the line before: the set, the place counting up, and how a size
written alike was known; a new set begins afresh. Words may be cut short: sha 1/2.

undo takes back the newest line, the arrow keys bring lines back to be mended, quit
ends. For older ones: counterpart change NUMBER, measure, retire.
)";
}

} // namespace cli::intake
