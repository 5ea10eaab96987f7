// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The table of bodies.
#include "store/query.hpp"
#include "store/record.hpp"
#include "store/tool_rows.hpp"
#include "store/tools.hpp"

namespace store {

namespace {

// {0}: the columns; {1}: a parameter for each, the number first.
constexpr auto k_all = R"(
SELECT {0} FROM body ORDER BY number)";

constexpr auto k_one = R"(
SELECT {0} FROM body WHERE number = ?1 ORDER BY number)";

constexpr auto k_add = R"(
INSERT INTO body ({0}) VALUES ({1}))";

constexpr auto k_update = R"(
UPDATE body SET ({0}) = ({1}) WHERE number = ?1)";

constexpr auto k_pilot_inside = R"(
SELECT number FROM pilot WHERE in_body = ?1 ORDER BY number)";

constexpr auto k_next_to = R"(
SELECT max(number) FROM body WHERE number < ?1
UNION ALL SELECT min(number) FROM body WHERE number > ?1 ORDER BY 1)";

template <class Visitor, class Record>
void visit(Visitor& visitor, Record& body) {
    visitor.column("number", body.number);
    visitor.column("tool_set", body.set);
    visitor.column("kind", body.kind);
    visitor.column("cut_dia", body.cut_dia);
    visitor.column("flutes", body.flutes);
    visitor.column("pilot_kind", body.pilot_kind);
    visitor.column("pilot_dia", body.pilot_dia);
    visitor.column("pilot_length", body.pilot_length);
    visitor.column("fluted", body.fluted);
    visitor.column("bore", body.bore);
    visitor.column("bore_depth", body.bore_depth);
    visitor.column("retention", body.retention);
    visitor.column("set_screw", body.set_screw);
    visitor.column("set_screw_at", body.set_screw_at);
    visitor.column("reach", body.reach);
    visitor.column("shank_dia", body.shank_dia);
    visitor.column("shank_kind", body.shank_kind);
    visitor.column("material", body.material);
    visitor.column("condition", body.condition);
    visitor.column("marking", body.marking);
    visitor.column("place", body.place);
    visitor.column("note", body.note);
    visitor.column("retired", body.retired);
}

std::string with_columns(const char* sql) {
    Names names;
    const trade::Body any;
    visit(names, any);
    return fmt::format(fmt::runtime(sql), names.list(), names.parameters());
}

trade::Body read(Query& query) {
    trade::Body body;
    Reader reader(query);
    visit(reader, body);
    return body;
}

void write(Change& change, const std::string& sql, const trade::Body& body) {
    Query query(change.statements(), sql);
    Writer writer(query);
    visit(writer, body);
    query.run();
}

// A pilot cannot be in a body that is turned into one without a bore.
void refuse_while_holding(Change& change, const trade::Body& body) {
    if (trade::may_take_pilot(body))
        return;
    if (const auto pilot = pilot_in(change.file(), body.number))
        throw error::BadData(fmt::format("body {} takes no removable pilot, but holds pilot: {}",
                                         body.number, *pilot),
                             "take the pilot out first (`counterpart unpair`)");
}

} // namespace

std::vector<trade::Body> bodies(const File& file) {
    WorkLists work = all_work(file.database());
    const Loans loans = all_loans(file.database());
    std::vector<trade::Body> all;
    Query query(file.database(), with_columns(k_all));
    while (query.step())
        complete(all.emplace_back(read(query)), work, loans);
    return all;
}

std::optional<trade::Body> body(const File& file, std::int64_t number) {
    static const std::string k_sql = with_columns(k_one);
    Query query(file.statements(), k_sql);
    query.put(number);
    if (!query.step())
        return std::nullopt;
    trade::Body found = read(query);
    found.work = work_of(file.statements(), number);
    found.loan = loan_of(file.statements(), number);
    return found;
}

std::optional<std::int64_t> pilot_in(const File& file, std::int64_t body) {
    Query query(file.statements(), k_pilot_inside);
    query.put(body);
    if (!query.step())
        return std::nullopt;
    const std::int64_t number = query.integer();
    if (!pilot(file, number))
        throw_lost_tool(file, ToolKind::pilot, number);
    return number;
}

std::vector<std::int64_t> bodies_next_to(const File& file, std::int64_t number) {
    Query query(file.statements(), k_next_to);
    query.put(number);
    std::vector<std::int64_t> numbers;
    while (query.step())
        if (const auto found = query.maybe_integer())
            numbers.push_back(*found);
    return numbers;
}

std::int64_t add_body(Change& change, const trade::Body& body) {
    trade::Body added = body;
    added.number = give_number(change, ToolKind::body, body.number);
    static const std::string k_sql = with_columns(k_add);
    write(change, k_sql, added);
    add_work(change, added.number, added.work);
    return added.number;
}

void update_body(Change& change, const trade::Body& body) {
    const auto before = store::body(change.file(), body.number);
    if (!before)
        throw_no_such(change.file(), ToolKind::body, body.number);
    refuse_while_holding(change, body);
    if (is_remeasured(before->bore, body.bore))
        forget_trials(change, body.number);
    static const std::string k_sql = with_columns(k_update);
    write(change, k_sql, body);
    put_work(change, body.number, body.work);
}

} // namespace store
