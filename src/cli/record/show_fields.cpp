// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The columns in their order; a 'how' is told beside its dimension.
#include "cli/record/show_fields.hpp"

#include <algorithm>

#include "length/print.hpp"

namespace cli::record {

namespace {

std::string label_of(std::string name) {
    std::replace(name.begin(), name.end(), '_', ' ');
    return name;
}

// `7/16 (mark; .4345 to .4385 in)`.
std::string with_limits(const trade::Dimension& dimension, length::Unit unit) {
    const std::string how = dimension.how == trade::How::unstated
                                ? std::string("not stated how")
                                : std::string(trade::to_text(dimension.how));
    return dimension.text + "  (" + how + "; " + length::to_text(dimension.range, unit) +
           (unit == length::Unit::inch ? " in)" : " mm)");
}

template <class Record>
void add_fields(present::Fields& fields, const Record& record, const Columns<Record>& columns,
                length::Unit stored, length::Unit unit) {
    for (const Column<Record>& column : columns) {
        const trade::Dimension* dimension = column.size ? column.size(record) : nullptr;
        if (dimension != nullptr)
            fields.add(label_of(column.name), with_limits(*dimension, unit));
        else if (column.json && column.name != "number")
            fields.add(label_of(column.name), column.cell(record, stored));
    }
    if (record.loan)
        fields.add("on loan to", *record.loan);
    if (record.retired)
        fields.add("retired", *record.retired);
}

} // namespace

present::Fields fields_of(const trade::Body& body, length::Unit stored, length::Unit unit) {
    present::Fields fields;
    add_fields(fields, body, body_columns(), stored, unit);
    return fields;
}

present::Fields fields_of(const PilotRecord& pilot, length::Unit stored, length::Unit unit) {
    present::Fields fields;
    add_fields(fields, pilot, pilot_columns(), stored, unit);
    return fields;
}

} // namespace cli::record
