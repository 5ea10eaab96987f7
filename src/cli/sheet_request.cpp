// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/sheet_request.hpp"

#include <charconv>

#include "cli/tool.hpp"
#include "error/error.hpp"
#include "job/torque.hpp"
#include "trade/material.hpp"
#include "trade/text.hpp"

namespace cli {

namespace {

constexpr int k_most_holes = 1'000'000;

int count_of(const std::string& text) {
    int count = 0;
    const auto word = trade::trimmed(text);
    const auto end = word.data() + word.size();
    const auto result = std::from_chars(word.data(), end, count);
    if (result.ec != std::errc() || result.ptr != end || count < 1 || count > k_most_holes)
        throw error::BadData("no number of holes: '" + text + "'", "1 to 1000000");
    return count;
}

job::On on_of(const std::string& text) {
    if (const auto on = job::read_on(text))
        return *on;
    throw error::BadData("no such machine tool: '" + text + "'", "drill press, mill or lathe");
}

std::optional<std::int64_t> maybe_number(const std::string& word) {
    return word.empty() ? std::nullopt : std::optional(tool_number(word));
}

bool not_there(const SheetRequest& request, const std::optional<match::Answer>& answer) {
    return !answer && (!request.body.empty() || !request.pilot.empty());
}

} // namespace

SheetMaker::SheetMaker(Context& context)
    : context_(context), reader_{context, context.practice()},
      shop_(match::make_shop(context.tables(), reader_.practice, context.catalogue().unit())),
      tools_(match::load_tools(context.rack())), materials_(context.tables().materials()),
      everyday_(trade::everyday_materials(context.practice_rows())) {}

trade::Material SheetMaker::material_of(const std::string& text) const {
    auto material = trade::find_material(text, materials_, everyday_);
    trade::check_cut_here(material);
    return material;
}

job::Particulars SheetMaker::particulars(const SheetRequest& request) const {
    job::Particulars job;
    job.part = request.part;
    job.note = request.note;
    if (!request.count.empty())
        job.count = count_of(request.count);
    if (!request.material.empty())
        job.material = material_of(request.material);
    job.to_edge = reader_.maybe(request.edge, trade::Feature::thickness);
    if (!request.torque.empty())
        job.torque = job::read_torque(request.torque);
    if (!request.grade.empty())
        job.grade = request.grade;
    if (!request.surface.empty())
        job.surface = request.surface;
    if (!request.on.empty())
        job.on = on_of(request.on);
    return job;
}

match::Report SheetMaker::ask(const SheetRequest& request, const match::Question& question) const {
    const bool named = !request.body.empty() || !request.pilot.empty();
    if (!request.body.empty())
        (void)find_body(context_.catalogue(), tool_number(request.body));
    if (!request.pilot.empty())
        (void)find_pilot(context_.catalogue(), tool_number(request.pilot));
    return named ? match::match_pairs(question, shop_, tools_, context_.unit(), 0)
                 : match::match(question, shop_, context_.rack(), context_.unit(), 0);
}

job::Sheet SheetMaker::make(const SheetRequest& request) const {
    check_set(request.asked.set, context_.rack());
    const auto question = read_question(request.asked, reader_);
    const auto job = particulars(request);
    const auto report = ask(request, question);
    const auto answer =
        job::answer_for(report, maybe_number(request.body), maybe_number(request.pilot));
    if (not_there(request, answer))
        throw error::NoSuchRecord("that body and pilot do not serve this screw: '" +
                                      question.screw.name + "'",
                                  "`match --pairs --all` lists the pairs that do");
    return job::make_sheet(question, job, report, answer, tools_, shop_,
                           job::read_books(context_.tables(), question.screw), context_.unit());
}

} // namespace cli
