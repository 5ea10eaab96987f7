// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/record/date_cell.hpp"

#include <doctest/doctest.h>

#include "error/error.hpp"

using namespace cli::record;

namespace {

struct Changed {
    const char* cell;
    const char* size;
};

} // namespace

TEST_CASE("a date gives away the fraction that it was") {
    constexpr Changed k_changed[] = {
        {"2-Jan", "1/2"},
        {"1-Feb", "1/2"},
        {"4-Jan", "1/4"},
        {"1-Apr", "1/4"},
        {"3-Apr", "3/4"},
        {"4-Mar", "3/4"},
        {"8-Jan", "1/8 or 1-8"},
        {"3-Aug", "3/8"},
        {"8-May", "5/8"},
        {"7-Aug", "7/8"},
        {"16-Jan", "1/16"},
        {"16-Mar", "3/16"},
        {"16-May", "5/16"},
        {"16-Jul", "7/16"},
        {"16-Sep", "9/16"},
        {"16-Nov", "11/16"},
        {"Jan-32", "1/32"},
        {"Mar-32", "3/32"},
        {"Nov-32", "11/32"},
        {"Jan-64", "1/64 or 1-64"},
        {"May-64", "5/64"},
        {"Jan 4", "1/4"},
        {"4 Jan", "1/4"},
        {"4. Jan", "1/4"},
        {"04-Jan", "1/4"},
        {"4-Jan-2026", "1/4"},
        {"4 January 2026", "1/4"},
        {"2026-01-04", "1/4"},
        {"1/4/2026", "1/4"},
        {"04.01.2026", "1/4"},
        {"1/4/26", "1/4"},
        {"01-04-2026", "1/4"},
        {"2026-01-04 00:00:00", "1/4"},
        {"2026-01-04T00:00", "1/4"},
        {"1964-01-01", "1/64 or 1-64"},
        {"46026", "1/4"},
        {"16. Mai", "5/16"},
        {"16-okt", "10/16"},
        {"1. M\xC3\xA4r", "1/3 or 3/1 or 1-3 or 3-1"},
    };
    for (const Changed& changed : k_changed) {
        CAPTURE(changed.cell);
        const std::string size = size_before_date(changed.cell, SizeKind::length);
        if (std::string(changed.size).find(" or ") == std::string::npos)
            CHECK(size == changed.size);
        else
            CHECK(!size.empty());
    }
}

TEST_CASE("a date gives away the thread that it was") {
    constexpr Changed k_changed[] = {
        {"24-Oct", "10-24"}, {"Oct-24", "10-24"}, {"Oct-32", "10-32"}, {"Aug-32", "8-32"},
        {"Jun-32", "6-32"},  {"Apr-40", "4-40"},  {"May-40", "5-40"},  {"Feb-56", "2-56"},
        {"24-Dec", "12-24"}, {"28-Dec", "12-28"},
    };
    for (const Changed& changed : k_changed) {
        CAPTURE(changed.cell);
        const std::string size = size_before_date(changed.cell, SizeKind::screw);
        CHECK(size.substr(0, size.find(" or ")) == changed.size);
    }
}

TEST_CASE("where nothing sensible gives the date, all that could is said") {
    CHECK(size_before_date("Jan-50", SizeKind::length) == "1/50 or 50/1 or 1-50 or 50-1");
    CHECK(size_before_date("6-Oct", SizeKind::screw) == "10-6 or 6-10 or 10/6 or 6/10");
}

TEST_CASE("sizes as a shop writes them are no dates") {
    for (const char* cell : {"",
                             "1/2",
                             "1-1/2",
                             "1 1/2",
                             ".4375",
                             "0.375 in",
                             "10 mm",
                             "3/8\"",
                             "10-24",
                             "5/16-18",
                             "M8x1.25",
                             "#10",
                             "F",
                             "go .1250 no-go .1260",
                             ".5935 +.0002 -.0003",
                             "1-8",
                             "1-64",
                             "5/16-18 socket head cap",
                             "close",
                             "march",
                             "may",
                             "13",
                             "1234567",
                             "Dec",
                             "4-Foo",
                             "1/2/3/4",
                             "1-2"}) {
        CAPTURE(cell);
        CHECK(size_before_date(cell, SizeKind::length).empty());
        CHECK(size_before_date(cell, SizeKind::screw).empty());
        CHECK_NOTHROW(refuse_date(cell, SizeKind::screw));
    }
}

TEST_CASE("the refusal names the cell and the size") {
    try {
        refuse_date("16-May", SizeKind::length);
        FAIL("not refused");
    } catch (const error::BadData& bad) {
        CHECK(std::string(bad.what()) == "a date, not a size: '16-May'");
        CHECK(bad.hint().find("probably 5/16;") != std::string::npos);
    }
}
