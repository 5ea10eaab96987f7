// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Bodies, pilots, pairs and trials: what is put in comes back, and what cannot be is refused.
#include "store/tools.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include "random_tools.hpp"
#include "scratch.hpp"
#include "store/rack.hpp"
#include "trade/dimension.hpp"

using error::ExitCode;
using scratch::error_of;

namespace {

trade::MaybeDimension known(const std::string& text, std::int64_t lo, std::int64_t hi) {
    return trade::Dimension{
        text, trade::How::caliper, {length::thousandths(lo), length::thousandths(hi)}};
}

trade::Body removable(std::int64_t number) {
    trade::Body body;
    body.number = number;
    body.kind = trade::BodyKind::counterbore;
    body.pilot_kind = trade::PilotKind::removable;
    body.bore = known(".250", 249, 251);
    return body;
}

trade::Pilot plain(std::int64_t number) {
    trade::Pilot pilot;
    pilot.number = number;
    pilot.shank_dia = known(".249", 248, 250);
    return pilot;
}

// A catalogue with bodies 1 to 3 (3 integral) and pilots 11 and 12.
struct Shop {
    Shop() {
        store::Change change(file, "add tools");
        store::add_body(change, removable(1));
        store::add_body(change, removable(2));
        trade::Body integral = removable(3);
        integral.pilot_kind = trade::PilotKind::integral;
        store::add_body(change, integral);
        store::add_pilot(change, plain(11));
        store::add_pilot(change, plain(12));
        change.commit();
    }

    // Runs `act` in a change and commits it.
    template <class Act>
    void change(Act act) {
        store::Change change(file, "test");
        act(change);
        change.commit();
    }

    scratch::Folder folder;
    store::File file = scratch::catalogue(folder / "c.db");
};

} // namespace

TEST_CASE("bodies and pilots of any content read back as they were added, alone and together") {
    const scratch::Folder folder;
    store::File file = scratch::catalogue(folder / "c.db");
    RandomTools random(1);
    std::vector<trade::Body> bodies;
    std::vector<trade::Pilot> pilots;
    for (int round = 0; round < 100; ++round) {
        store::Change change(file, random.text());
        bodies.push_back(random.body());
        bodies.back().number = store::add_body(change, bodies.back());
        pilots.push_back(random.pilot());
        pilots.back().number = store::add_pilot(change, pilots.back());
        change.commit();
    }
    CHECK(store::bodies(file) == bodies);
    CHECK(store::pilots(file) == pilots);
    const store::File again = store::File::open(folder / "c.db", store::Access::read);
    CHECK(store::FileRack(again).bodies() == bodies);
    CHECK(store::FileRack(again).pilots() == pilots);
    for (std::size_t i = 0; i < bodies.size(); ++i) {
        CHECK(store::body(again, bodies[i].number) == bodies[i]);
        CHECK(store::pilot(again, pilots[i].number) == pilots[i]);
    }
}

TEST_CASE("an update replaces every field") {
    const scratch::Folder folder;
    store::File file = scratch::catalogue(folder / "c.db");
    RandomTools random(2);
    for (int round = 0; round < 50; ++round) {
        store::Change change(file, "update");
        const auto body_number = store::add_body(change, random.body());
        const auto pilot_number = store::add_pilot(change, random.pilot());
        trade::Body body = random.body();
        body.number = body_number;
        store::update_body(change, body);
        trade::Pilot pilot = random.pilot();
        pilot.number = pilot_number;
        store::update_pilot(change, pilot);
        change.commit();
        CHECK(store::body(file, body_number) == body);
        CHECK(store::pilot(file, pilot_number) == pilot);
    }
}

TEST_CASE("bodies and pilots share one sequence of numbers") {
    Shop shop;
    store::Change change(shop.file, "add");
    CHECK(store::add_body(change, removable(0)) == 13);
    CHECK(store::add_pilot(change, plain(0)) == 14);
    CHECK(store::add_pilot(change, plain(40)) == 40);
    CHECK(store::add_body(change, removable(30)) == 30);
    CHECK(store::add_body(change, removable(0)) == 41);
    for (const std::int64_t number : {1, 11, 13, 40}) {
        CHECK(error_of([&] { store::add_body(change, removable(number)); })->code() ==
              ExitCode::bad_data);
        CHECK(error_of([&] { store::add_pilot(change, plain(number)); })->code() ==
              ExitCode::bad_data);
    }
    for (const std::int64_t number : {std::int64_t{-1}, std::int64_t{1'000'000'000}, INT64_MAX})
        CHECK(error_of([&] { store::add_body(change, removable(number)); })->code() ==
              ExitCode::bad_data);
}

TEST_CASE("a number that is no such tool is refused with what it is") {
    Shop shop;
    store::Change change(shop.file, "test");
    const auto error = error_of([&] { store::update_body(change, removable(11)); });
    REQUIRE(error);
    CHECK(error->code() == ExitCode::no_such_record);
    CHECK(error->what() == std::string("there is no such body: 11"));
    CHECK(error->hint() == "number 11 is a pilot");
    CHECK(error_of([&] { store::update_pilot(change, plain(99)); })->code() ==
          ExitCode::no_such_record);
    CHECK(error_of([&] { store::take_out(change, 1); })->code() == ExitCode::no_such_record);
    CHECK(error_of([&] { store::put_in_body(change, 11, 12); })->code() ==
          ExitCode::no_such_record);
    CHECK(error_of([&] {
              store::record_trial(change, {1, 11, trade::Tried::binds});
          })->code() == ExitCode::no_such_record);
}

TEST_CASE("a pilot put in a body takes the place of the one that was there") {
    Shop shop;
    shop.change([](store::Change& change) { store::put_in_body(change, 11, 1); });
    CHECK(store::pilot(shop.file, 11)->in_body == 1);
    shop.change([](store::Change& change) { store::put_in_body(change, 12, 1); });
    CHECK(store::pilot(shop.file, 12)->in_body == 1);
    CHECK_FALSE(store::pilot(shop.file, 11)->in_body);
    shop.change([](store::Change& change) { store::put_in_body(change, 12, 2); });
    CHECK(store::pilot(shop.file, 12)->in_body == 2);
    shop.change([](store::Change& change) { store::take_out(change, 12); });
    CHECK_FALSE(store::pilot(shop.file, 12)->in_body);
}

TEST_CASE("a pilot does not go in a body that cannot take it") {
    Shop shop;
    shop.change([](store::Change& change) {
        trade::Body without = removable(4);
        without.pilot_kind = trade::PilotKind::none;
        store::add_body(change, without);
        trade::Body taken = removable(5);
        taken.pilot_kind = trade::PilotKind::unknown;
        taken.pilot_dia = known(".257", 255, 259);
        store::add_body(change, taken);
        trade::Body retired = removable(6);
        retired.retired = "cracked";
        store::add_body(change, retired);
        trade::Pilot bent = plain(13);
        bent.retired = "bent";
        store::add_pilot(change, bent);
    });
    store::Change change(shop.file, "pair");
    for (const std::int64_t body : {3, 4, 5, 6}) {
        CAPTURE(body);
        CHECK(error_of([&] { store::put_in_body(change, 11, body); })->code() ==
              ExitCode::bad_data);
        trade::Pilot pilot = plain(0);
        pilot.in_body = body;
        CHECK(error_of([&] { store::add_pilot(change, pilot); })->code() == ExitCode::bad_data);
        pilot.number = 11;
        CHECK(error_of([&] { store::update_pilot(change, pilot); })->code() == ExitCode::bad_data);
    }
    CHECK(error_of([&] { store::put_in_body(change, 13, 1); })->code() == ExitCode::bad_data);
    CHECK_FALSE(error_of([&] { store::put_in_body(change, 11, 1); }));
}

TEST_CASE("a pilot is not added to a body that holds another") {
    Shop shop;
    store::Change change(shop.file, "pair");
    store::put_in_body(change, 11, 1);
    trade::Pilot pilot = plain(20);
    pilot.in_body = 1;
    const auto error = error_of([&] { store::add_pilot(change, pilot); });
    REQUIRE(error);
    CHECK(error->what() == std::string("body 1 holds another pilot: 11"));
}

TEST_CASE("a body that holds a pilot cannot become one that takes none") {
    Shop shop;
    store::Change change(shop.file, "pair");
    store::put_in_body(change, 11, 1);
    trade::Body body = removable(1);
    body.pilot_kind = trade::PilotKind::integral;
    CHECK(error_of([&] { store::update_body(change, body); })->code() == ExitCode::bad_data);
    store::take_out(change, 11);
    CHECK_FALSE(error_of([&] { store::update_body(change, body); }));
}

TEST_CASE("the last trial of a pair counts") {
    Shop shop;
    shop.change([](store::Change& change) {
        store::record_trial(change, {12, 1, trade::Tried::binds});
        store::record_trial(change, {11, 2, trade::Tried::loose});
        store::record_trial(change, {11, 1, trade::Tried::slides});
        store::record_trial(change, {12, 1, trade::Tried::slides_and_holds});
    });
    CHECK(store::trials(shop.file) ==
          std::vector<trade::Trial>{{11, 1, trade::Tried::slides},
                                    {11, 2, trade::Tried::loose},
                                    {12, 1, trade::Tried::slides_and_holds}});
    store::Change change(shop.file, "try");
    CHECK(error_of([&] {
              store::record_trial(change, {11, 3, trade::Tried::binds});
          })->code() == ExitCode::bad_data);
}

TEST_CASE("trials stop counting when the bore or the pilot shank is known otherwise") {
    Shop shop;
    const auto try_all = [&shop] {
        shop.change([](store::Change& change) {
            for (const std::int64_t pilot : {11, 12})
                for (const std::int64_t body : {1, 2})
                    store::record_trial(change, {pilot, body, trade::Tried::slides});
        });
    };
    const auto left = [&shop] { return store::trials(shop.file).size(); };

    SUBCASE("another note leaves them") {
        try_all();
        shop.change([](store::Change& change) {
            trade::Body body = removable(1);
            body.note = "cleaned";
            body.reach = known(".5", 490, 510);
            store::update_body(change, body);
            trade::Pilot pilot = plain(11);
            pilot.pilot_dia = known(".257", 256, 258);
            store::update_pilot(change, pilot);
        });
        CHECK(left() == 4);
    }
    SUBCASE("another range of the bore") {
        try_all();
        shop.change([](store::Change& change) {
            trade::Body body = removable(1);
            body.bore->range.hi = length::thousandths(252);
            store::update_body(change, body);
        });
        CHECK(left() == 2);
    }
    SUBCASE("another text of the shank") {
        try_all();
        shop.change([](store::Change& change) {
            trade::Pilot pilot = plain(12);
            pilot.shank_dia->text = ".2490";
            store::update_pilot(change, pilot);
        });
        CHECK(left() == 2);
    }
    SUBCASE("a bore that is not known any more") {
        try_all();
        shop.change([](store::Change& change) {
            trade::Body body = removable(2);
            body.bore.reset();
            store::update_body(change, body);
        });
        CHECK(left() == 2);
    }
    SUBCASE("told so") {
        try_all();
        shop.change([](store::Change& change) { store::forget_trials(change, 11); });
        CHECK(left() == 2);
    }
}

TEST_CASE("a tool says who has it, and an update leaves that alone") {
    Shop shop;
    shop.file.database().exec("INSERT INTO loan (number, name, since) VALUES "
                              "(2, 'the garage', '2026-01-02'), (11, 'night shift', '2026-01-02')");
    CHECK(store::body(shop.file, 2)->loan == "the garage");
    CHECK(store::pilots(shop.file)[0].loan == "night shift");
    shop.change([](store::Change& change) {
        store::update_body(change, removable(2));
        store::update_pilot(change, plain(11));
    });
    CHECK(store::bodies(shop.file)[1].loan == "the garage");
    CHECK(store::pilot(shop.file, 11)->loan == "night shift");
    CHECK_FALSE(store::body(shop.file, 1)->loan);
}

TEST_CASE("text that is not UTF-8, or has a zero byte, is refused") {
    Shop shop;
    store::Change change(shop.file, "test");
    using namespace std::string_literals;
    for (const auto& text : {"\xff"s, "a\0b"s, "\xc0\xaf"s, "\xed\xa0\x80"s, "\xf4\x90\x80\x80"s,
                             "\xe2\x82"s, "\x80"s, "\xf8\x88\x80\x80\x80"s}) {
        trade::Body body = removable(0);
        body.note = text;
        CHECK(error_of([&] { store::add_body(change, body); })->code() == ExitCode::bad_data);
    }
}

TEST_CASE("the file's own checks refuse a range that is upside down") {
    Shop shop;
    store::Change change(shop.file, "test");
    trade::Body body = removable(0);
    body.bore = known(".25", 251, 249);
    const auto error = error_of([&] { store::add_body(change, body); });
    REQUIRE(error);
    CHECK(error->code() == ExitCode::bad_data);
    CHECK(error->what() == std::string("a value that the catalogue does not take: bore"));
}
