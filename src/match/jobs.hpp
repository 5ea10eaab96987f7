// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Many questions worked out once, to be put to many tools.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "match/job.hpp"

namespace match {

class Jobs {
  public:
    // `shop` must outlive this.
    Jobs(std::vector<Question> questions, const Shop& shop);
    Jobs(const Jobs&) = delete; // the jobs point at the questions
    Jobs& operator=(const Jobs&) = delete;
    Jobs(Jobs&&) = default;
    Jobs& operator=(Jobs&&) = default;
    ~Jobs() = default;

    [[nodiscard]] auto begin() const { return jobs_.begin(); }
    [[nodiscard]] auto end() const { return jobs_.end(); }
    [[nodiscard]] std::size_t size() const { return jobs_.size(); }
    [[nodiscard]] const Job& operator[](std::size_t at) const { return jobs_[at]; }

  private:
    std::vector<Question> questions_;
    std::vector<Job> jobs_;
};

// A shop that owns every drill of the tables: what a tool is for does not hang on the drills that
// happen to be here.
[[nodiscard]] Shop shop_with_every_drill(const trade::Tables& tables, trade::Practice practice);

// A question for every row of the tables' heads, through a hole of the pilot's choice.
[[nodiscard]] std::vector<Question> listed_questions(const trade::Tables& tables);

// The same question through the screw's `close`, `normal`, `loose` or `tap` hole; none where no
// table has one. Drills are looked up in `shop`.
[[nodiscard]] std::optional<Question> through(const Question& question, std::string_view hole,
                                              const Shop& shop);

// Every question, each followed by the same one through each of `holes` that it has.
[[nodiscard]] std::vector<Question> with_holes(const std::vector<Question>& questions,
                                               const std::vector<std::string_view>& holes,
                                               const Shop& shop);

} // namespace match
