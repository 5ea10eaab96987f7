// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/session.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>

#include "store/translate.hpp"

namespace store {

namespace {

constexpr std::size_t k_usual_row = 2048; // bytes of JSON, so that few rows make it grow

std::string_view text_of(sqlite3_value* value) {
    const auto* text = reinterpret_cast<const char*>(sqlite3_value_text(value));
    return {text == nullptr ? "" : text, static_cast<std::size_t>(sqlite3_value_bytes(value))};
}

void append_escaped(std::string& json, char c) {
    if (c == '"' || c == '\\')
        json.append({'\\', c});
    else if (static_cast<unsigned char>(c) < 0x20)
        json += fmt::format("\\u{:04x}", static_cast<unsigned>(c));
    else
        json += c;
}

void append_string(std::string& json, std::string_view text) {
    const auto is_plain = [](char c) {
        return c != '"' && c != '\\' && static_cast<unsigned char>(c) >= 0x20;
    };
    json += '"';
    if (std::all_of(text.begin(), text.end(), is_plain)) {
        json += text;
    } else {
        for (const char c : text)
            append_escaped(json, c);
    }
    json += '"';
}

void append_value(std::string& json, sqlite3_value* value) {
    switch (sqlite3_value_type(value)) {
    case SQLITE_NULL:
        json += "null";
        break;
    case SQLITE_INTEGER:
        json += fmt::format_int(sqlite3_value_int64(value)).c_str();
        break;
    default:
        append_string(json, text_of(value));
    }
}

void give(sqlite3_context* context, const std::string& text) {
    sqlite3_result_text64(context, text.data(), text.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
}

void row(sqlite3_context* context, int count, sqlite3_value** values) {
    std::string json = "{";
    json.reserve(k_usual_row);
    for (int i = 0; i + 1 < count; i += 2) {
        append_string(json, text_of(values[i]));
        json += ':';
        append_value(json, values[i + 1]);
        json += i + 2 < count ? "," : "";
    }
    give(context, json + "}");
}

void key(sqlite3_context* context, int count, sqlite3_value** values) {
    std::string json = "[";
    for (int i = 0; i < count; ++i) {
        append_value(json, values[i]);
        json += i + 1 < count ? "," : "";
    }
    give(context, json + "]");
}

void group(sqlite3_context* context, int, sqlite3_value**) {
    auto* session = static_cast<Session*>(sqlite3_user_data(context));
    if (!session->group) {
        sqlite3_result_error(context, "no change is going on", -1);
        return;
    }
    session->changed = true;
    sqlite3_result_int64(context, *session->group);
}

void digest(sqlite3_context* context, int count, sqlite3_value** values) {
    Digest sum;
    for (int i = 0; i < count; ++i)
        sum.add(sqlite3_value_type(values[i]) == SQLITE_NULL ? std::nullopt
                                                             : std::optional(text_of(values[i])));
    give(context, fmt::format("{:016x}", sum.value()));
}

struct Function {
    const char* name;
    int parameters; // -1: any number
    int flags;
    void (*run)(sqlite3_context*, int, sqlite3_value**);
};

// Innocuous: allowed in triggers although the schema is not trusted with anything else.
constexpr int k_changing = SQLITE_UTF8 | SQLITE_INNOCUOUS;
constexpr int k_constant = k_changing | SQLITE_DETERMINISTIC;

constexpr Function k_functions[] = {
    {"counterpart_group", 0, k_changing, group},
    {"counterpart_row", -1, k_constant, row},
    {"counterpart_key", -1, k_constant, key},
    {"counterpart_digest", 4, k_constant, digest},
};

} // namespace

void Digest::add(std::optional<std::string_view> part) {
    if (part)
        for (const char c : *part)
            add(static_cast<unsigned char>(c));
    else
        add(0xFE);
    add(0xFF);
}

void register_functions(SQLite::Database& database, Session& session) {
    sqlite3* handle = database.getHandle();
    for (const Function& function : k_functions) {
        const int code =
            sqlite3_create_function_v2(handle, function.name, function.parameters, function.flags,
                                       &session, function.run, nullptr, nullptr, nullptr);
        if (code != SQLITE_OK)
            throw_translated(code, sqlite3_errmsg(handle), database.getFilename());
    }
}

} // namespace store
