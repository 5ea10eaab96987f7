// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One pass from left to right.
#include "cli/intake/items.hpp"

#include <algorithm>

#include "cli/intake/scan.hpp"
#include "cli/suggest.hpp"
#include "trade/drill.hpp"
#include "trade/text.hpp"

namespace cli::intake {

namespace {

constexpr const char* k_see_help = "help shows the words; a note takes any";
constexpr std::size_t k_shortest_known = 3; // shorter ones are near to everything

// `6 x 3.2 x 4 mm`, as drawings write it: the unit is that of the sizes before it too.
void spread_unit(std::vector<Size>& sizes) {
    std::string unit;
    for (auto size = sizes.rbegin(); size != sizes.rend(); ++size) {
        if (size->fraction || size->drill)
            continue;
        if (size->unit.empty())
            size->unit = unit;
        unit = size->unit;
    }
}

// A letter alone is a word, or nothing: what to write if a drill was meant.
std::string or_a_drill(const std::string& word) {
    const std::string drill = trade::number_or_letter_drill(word);
    return drill.empty() ? "" : "; the drill on a pilot is written drill " + drill;
}

class Reader {
  public:
    explicit Reader(const std::string& line) : scan_(line) {}

    std::vector<Item> read() {
        for (scan_.skip_separators(); !scan_.at_end(); scan_.skip_separators())
            take_item();
        return std::move(items_);
    }

  private:
    void take_item() {
        Item item;
        item.at = scan_.at();
        item.for_all = for_all_;
        if (scan_.at_size() || scan_.at_drill(false)) {
            if (!take_count_before(item))
                take_sizes(item);
        } else {
            take_named(item);
        }
        if (item.word != nullptr && item.word->sense == Sense::how)
            tell_how(item);
        else if (item.word == nullptr || item.word->sense != Sense::all)
            items_.push_back(std::move(item));
    }

    // `3 flutes`.
    bool take_count_before(Item& item) {
        Scan ahead = scan_;
        const std::string digits = ahead.take_digits();
        ahead.skip_blanks();
        const FoundWord found = find_word(ahead.rest());
        if (digits.empty() || found.word == nullptr || found.word->column != "flutes")
            return false;
        item.word = found.word;
        item.text = digits;
        ahead.go(found.length);
        scan_ = ahead;
        return true;
    }

    void take_sizes(Item& item) {
        do {
            item.sizes.push_back(scan_.at_size() ? scan_.take_size() : scan_.take_drill());
            take_how_against(item.sizes.back());
            take_how_before_times(item);
        } while (scan_.take_times());
        spread_unit(item.sizes);
    }

    // `.3267mic`: of this size alone.
    void take_how_against(Size& size) {
        const FoundWord found = find_word(scan_.rest());
        if (found.word == nullptr || found.word->sense != Sense::how)
            return;
        size.how = found.word->value;
        scan_.go(found.length);
    }

    // `1/2 mark x .3267`: of the sizes before it, and more sizes follow.
    void take_how_before_times(Item& item) {
        Scan ahead = scan_;
        ahead.skip_blanks();
        const FoundWord found = find_word(ahead.rest());
        if (found.word == nullptr || found.word->sense != Sense::how)
            return;
        ahead.go(found.length);
        if (!Scan(ahead).take_times())
            return;
        tell_how(*found.word, item.sizes);
        scan_ = ahead;
    }

    void take_named(Item& item) {
        const std::string screw = scan_.take_screw();
        if (!screw.empty()) {
            item.word = find_word("screw").word;
            item.text = screw;
            return;
        }
        const FoundWord found = find_word(scan_.rest());
        if (found.word == nullptr)
            refuse_word();
        item.word = found.word;
        scan_.go(found.length);
        scan_.skip_blanks();
        take_what_follows(item);
    }

    void take_what_follows(Item& item) {
        switch (item.word->sense) {
        case Sense::size:
        case Sense::pilot:
            take_sizes_after(item);
            break;
        case Sense::count:
        case Sense::taper:
            item.text = scan_.take_digits();
            if (item.text.empty() && !take_unknown(item))
                refuse_missing(item, "a whole number",
                               item.word->sense == Sense::taper ? "2" : "3");
            break;
        case Sense::screw:
            item.text = scan_.take_screw();
            if (item.text.empty())
                take_unknown(item);
            break;
        case Sense::phrase:
            item.text = scan_.take_phrase();
            if (item.text.empty())
                refuse_missing(item, "a name", "rack 1");
            break;
        case Sense::text:
        case Sense::rest:
            item.text = item.word->sense == Sense::rest ? scan_.take_rest() : scan_.take_text();
            if (item.text.empty() && item.word->column != "marking")
                refuse_missing(item, "some words", "as you like");
            break;
        case Sense::all:
            for_all_ = true;
            break;
        case Sense::value:
        case Sense::how:
        case Sense::unit:
        case Sense::lost:
            break;
        }
    }

    void take_sizes_after(Item& item) {
        const bool pilot = item.word->sense == Sense::pilot;
        if (scan_.at_size() || (pilot && scan_.at_drill(true)))
            take_sizes(item);
        else if (!take_unknown(item) && !pilot)
            refuse_missing(item, "a size", "3/8");
    }

    bool take_unknown(Item& item) {
        const std::string_view rest = scan_.rest();
        const FoundWord next = find_word(rest.substr(0, rest.find_first_of(" \t,;")));
        item.unknown = next.word != nullptr && next.word->text == "unknown";
        if (item.unknown)
            scan_.go(next.length);
        return item.unknown;
    }

    // Of the sizes before it, back to the last word of this kind. A drill's name is a mark: only
    // one right before the word, the last of `newest`, is meant by it.
    void tell_how(const Word& how, std::vector<Size>& newest) {
        for (Item& item : items_)
            tell_how(how, item.sizes, nullptr);
        tell_how(how, newest, &newest.back());
    }

    static void tell_how(const Word& how, std::vector<Size>& sizes, const Size* right_before) {
        for (Size& size : sizes)
            if (size.how.empty() && (!size.drill || &size == right_before))
                size.how = how.value;
    }

    void tell_how(const Item& item) {
        const auto newest = std::find_if(items_.rbegin(), items_.rend(),
                                         [](const Item& before) { return !before.sizes.empty(); });
        if (newest == items_.rend())
            throw LineError(item.at, "no size stands before it: " + std::string(item.word->text),
                            "how a size is known comes after it: 13/16 x 17/32 mark");
        tell_how(*item.word, newest->sizes);
    }

    [[noreturn]] void refuse_missing(const Item& item, const std::string& what,
                                     const std::string& example) const {
        const std::string word(item.word->text);
        throw LineError(scan_.at(), what + " should follow: " + word,
                        "for instance " + word + ' ' + example + or_a_drill(word));
    }

    [[noreturn]] void refuse_word() const {
        const std::string_view rest = scan_.rest();
        const std::string word(rest.substr(0, std::min(rest.find_first_of(" \t,;"), rest.size())));
        if (trade::folded(word) == "x")
            throw LineError(scan_.at(), "no size before x: " + word,
                            "for instance 13/16 x 17/32" + or_a_drill(word));
        throw LineError(scan_.at(), "not a word of a line: " + word,
                        word.size() < k_shortest_known
                            ? k_see_help + or_a_drill(word)
                            : did_you_mean(word, word_list(), k_see_help));
    }

    Scan scan_;
    std::vector<Item> items_;
    bool for_all_ = false;
};

} // namespace

std::vector<Item> take_apart(const std::string& line) {
    return Reader(line).read();
}

} // namespace cli::intake
