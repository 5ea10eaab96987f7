// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The table of pilots, and which body each is in.
#include "store/query.hpp"
#include "store/record.hpp"
#include "store/tool_rows.hpp"
#include "store/tools.hpp"

namespace store {

namespace {

// {0}: the columns; {1}: a parameter for each, the number first.
constexpr auto k_all = R"(
SELECT {0} FROM pilot ORDER BY number)";

constexpr auto k_one = R"(
SELECT {0} FROM pilot WHERE number = ?1 ORDER BY number)";

constexpr auto k_add = R"(
INSERT INTO pilot ({0}) VALUES ({1}))";

constexpr auto k_update = R"(
UPDATE pilot SET ({0}) = ({1}) WHERE number = ?1)";

constexpr auto k_other_inside = R"(
SELECT number FROM pilot WHERE in_body = ?1 AND number <> ?2 ORDER BY number)";

constexpr auto k_empty_body = R"(
UPDATE pilot SET in_body = NULL WHERE in_body = ?1 AND number <> ?2)";

constexpr auto k_put_in = R"(
UPDATE pilot SET in_body = ?2 WHERE number = ?1)";

template <class Visitor, class Record>
void visit(Visitor& visitor, Record& pilot) {
    visitor.column("number", pilot.number);
    visitor.column("tool_set", pilot.set);
    visitor.column("pilot_dia", pilot.pilot_dia);
    visitor.column("pilot_length", pilot.pilot_length);
    visitor.column("fluted", pilot.fluted);
    visitor.column("shank_dia", pilot.shank_dia);
    visitor.column("shank_length", pilot.shank_length);
    visitor.column("has_flat", pilot.has_flat);
    visitor.column("flat_at", pilot.flat_at);
    visitor.column("flat_length", pilot.flat_length);
    visitor.column("flat_depth", pilot.flat_depth);
    visitor.column("material", pilot.material);
    visitor.column("condition", pilot.condition);
    visitor.column("in_body", pilot.in_body);
    visitor.column("place", pilot.place);
    visitor.column("note", pilot.note);
    visitor.column("retired", pilot.retired);
}

std::string with_columns(const char* sql) {
    Names names;
    const trade::Pilot any;
    visit(names, any);
    return fmt::format(fmt::runtime(sql), names.list(), names.parameters());
}

trade::Pilot read(Query& query) {
    trade::Pilot pilot;
    Reader reader(query);
    visit(reader, pilot);
    return pilot;
}

void write(Change& change, const std::string& sql, const trade::Pilot& pilot) {
    Query query(change.statements(), sql);
    Writer writer(query);
    visit(writer, pilot);
    query.run();
}

trade::Pilot existing_pilot(const File& file, std::int64_t number) {
    if (auto found = pilot(file, number))
        return *found;
    throw_no_such(file, ToolKind::pilot, number);
}

trade::Body existing_body(const File& file, std::int64_t number) {
    if (auto found = body(file, number))
        return *found;
    throw_no_such(file, ToolKind::body, number);
}

void refuse_retired(const char* what, std::int64_t number,
                    const std::optional<std::string>& retired) {
    if (retired)
        throw error::BadData(fmt::format("the {} is retired: {}", what, number),
                             "`counterpart unretire` brings it back");
}

// Throws error::NoSuchRecord or BadData unless this pilot could be put in that body.
void refuse_pair(const File& file, const trade::Pilot& pilot, std::int64_t body_number) {
    const trade::Body body = existing_body(file, body_number);
    if (!trade::may_take_pilot(body))
        throw error::BadData(fmt::format("the body takes no removable pilot: {}", body_number),
                             trade::taken_as_integral(body) ? "its pilot is in one piece with it"
                                                            : "see its pilot_kind");
    refuse_retired("body", body_number, body.retired);
    refuse_retired("pilot", pilot.number, pilot.retired);
}

void refuse_occupied(Change& change, std::int64_t body, std::int64_t pilot) {
    Query query(change.statements(), k_other_inside);
    query.put(body).put(pilot);
    if (query.step())
        throw error::BadData(fmt::format("body {} holds another pilot: {}", body, query.integer()),
                             "one pilot a body; take the other out first");
}

} // namespace

std::vector<trade::Pilot> pilots(const File& file) {
    WorkLists work = all_work(file.database());
    const Loans loans = all_loans(file.database());
    std::vector<trade::Pilot> all;
    Query query(file.database(), with_columns(k_all));
    while (query.step())
        complete(all.emplace_back(read(query)), work, loans);
    return all;
}

std::optional<trade::Pilot> pilot(const File& file, std::int64_t number) {
    static const std::string k_sql = with_columns(k_one);
    Query query(file.statements(), k_sql);
    query.put(number);
    if (!query.step())
        return std::nullopt;
    trade::Pilot found = read(query);
    found.work = work_of(file.statements(), number);
    found.loan = loan_of(file.statements(), number);
    return found;
}

std::int64_t add_pilot(Change& change, const trade::Pilot& pilot) {
    trade::Pilot added = pilot;
    added.number = give_number(change, ToolKind::pilot, pilot.number);
    if (added.in_body) {
        refuse_pair(change.file(), added, *added.in_body);
        refuse_occupied(change, *added.in_body, added.number);
    }
    static const std::string k_sql = with_columns(k_add);
    write(change, k_sql, added);
    add_work(change, added.number, added.work);
    return added.number;
}

void update_pilot(Change& change, const trade::Pilot& pilot) {
    const trade::Pilot before = existing_pilot(change.file(), pilot.number);
    if (pilot.in_body && pilot.in_body != before.in_body) {
        refuse_pair(change.file(), pilot, *pilot.in_body);
        refuse_occupied(change, *pilot.in_body, pilot.number);
    }
    if (is_remeasured(before.shank_dia, pilot.shank_dia))
        forget_trials(change, pilot.number);
    static const std::string k_sql = with_columns(k_update);
    write(change, k_sql, pilot);
    put_work(change, pilot.number, pilot.work);
}

void put_in_body(Change& change, std::int64_t pilot, std::int64_t body) {
    refuse_pair(change.file(), existing_pilot(change.file(), pilot), body);
    Query(change.database(), k_empty_body).put(body).put(pilot).run();
    Query(change.database(), k_put_in).put(pilot).put(body).run();
}

void take_out(Change& change, std::int64_t pilot) {
    (void)existing_pilot(change.file(), pilot);
    Query(change.database(), k_put_in).put(pilot).put_null().run();
}

} // namespace store
