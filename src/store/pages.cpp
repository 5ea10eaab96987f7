// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/pages.hpp"

#include <algorithm>
#include <bit>
#include <optional>

#include "error/error.hpp"
#include "store/connection.hpp"

namespace store {

namespace {

struct Unreadable {};

constexpr int k_deepest = 20; // more levels than any file has
constexpr std::size_t k_header_size = 100;

enum Kind : unsigned { index_inner = 2, table_inner = 5, index_leaf = 10, table_leaf = 13 };

// Takes numbers from bytes; throws Unreadable past their end.
class Taker {
  public:
    explicit Taker(const std::vector<unsigned char>& bytes, std::size_t at = 0)
        : bytes_(bytes), at_(at) {}

    unsigned byte() {
        if (at_ >= bytes_.size())
            throw Unreadable();
        return bytes_[at_++];
    }
    // Big-endian, of so many bytes.
    std::uint64_t whole(int bytes) {
        std::uint64_t value = 0;
        for (int i = 0; i < bytes; ++i)
            value = (value << 8U) | byte();
        return value;
    }
    std::int64_t number(int bytes) {
        const unsigned spare = 64U - 8U * static_cast<unsigned>(bytes);
        return static_cast<std::int64_t>(whole(bytes) << spare) >> spare; // keeps the sign
    }
    std::uint64_t varint() {
        std::uint64_t value = 0;
        for (int i = 0; i < 8; ++i) {
            const unsigned next = byte();
            value = (value << 7U) | (next & 0x7FU);
            if (next < 0x80U)
                return value;
        }
        return (value << 8U) | byte();
    }
    std::string text(std::size_t size) {
        if (size > bytes_.size() - at_)
            throw Unreadable();
        const auto begin = bytes_.begin() + static_cast<std::ptrdiff_t>(at_);
        at_ += size;
        return {begin, begin + static_cast<std::ptrdiff_t>(size)};
    }
    [[nodiscard]] std::size_t at() const { return at_; }

  private:
    const std::vector<unsigned char>& bytes_;
    std::size_t at_;
};

Cell cell(std::uint64_t type, Taker& body) {
    constexpr int k_sizes[] = {0, 1, 2, 3, 4, 6, 8};
    if (type == 0)
        return {};
    if (type <= 6)
        return body.number(k_sizes[type]);
    if (type == 8 || type == 9)
        return static_cast<std::int64_t>(type - 8);
    if (type < 13 || type % 2 == 0) // a fraction or a blob
        throw Unreadable();
    return body.text((type - 13) / 2);
}

std::vector<Cell> cells(const std::vector<unsigned char>& payload) {
    Taker types(payload);
    const std::uint64_t end = types.varint();
    if (end > payload.size())
        throw Unreadable();
    Taker body(payload, end);
    std::vector<Cell> all;
    while (types.at() < end)
        all.push_back(cell(types.varint(), body));
    return all;
}

} // namespace

class Pages::Page {
  public:
    Page(std::uint32_t number, Bytes read)
        : bytes(std::move(read)), begin_(number == 1 ? k_header_size : 0) {
        kind = Taker(bytes, begin_).byte();
        count = Taker(bytes, begin_ + 3).whole(2);
        inner = kind == index_inner || kind == table_inner;
    }
    [[nodiscard]] bool is_known() const {
        return inner || kind == index_leaf || kind == table_leaf;
    }
    [[nodiscard]] std::size_t place(std::size_t cell) const {
        return Taker(bytes, begin_ + (inner ? 12 : 8) + 2 * cell).whole(2);
    }
    [[nodiscard]] std::uint32_t child(std::size_t at) const {
        return static_cast<std::uint32_t>(Taker(bytes, at).whole(4));
    }
    [[nodiscard]] std::uint32_t last_child() const { return child(begin_ + 8); }

    Bytes bytes;
    unsigned kind = 0;
    std::size_t count = 0;
    bool inner = false;

  private:
    std::size_t begin_;
};

Pages::Pages(const std::filesystem::path& path) : file_(path, std::ios::binary | std::ios::ate) {
    if (!file_)
        throw error::InputOutput("the file cannot be read: " + path.string());
    const auto size = static_cast<std::size_t>(file_.tellg());
    Bytes header = bytes_of(1);
    const std::size_t told = Taker(header, 16).whole(2);
    if (std::has_single_bit(told) && (told == 1 || told >= 512))
        page_size_ = told == 1 ? 65536 : told;
    count_ = static_cast<std::uint32_t>((size + page_size_ - 1) / page_size_);
    seen_.resize(count_ + 1);
    free_.resize(count_ + 1);
    find_free();
}

// What the disk does not give, and what lies past the end of the file, is zeros.
Pages::Bytes Pages::bytes_of(std::uint32_t number) {
    Bytes bytes(page_size_);
    file_.clear();
    file_.seekg(static_cast<std::streamoff>(page_size_) * (number - 1));
    file_.read(reinterpret_cast<char*>(bytes.data()), static_cast<std::streamsize>(page_size_));
    return bytes;
}

std::int64_t Pages::user_version() {
    const Bytes header = bytes_of(1);
    return static_cast<std::int64_t>(Taker(header, 60).whole(4));
}

void Pages::find_free() {
    const Bytes header = bytes_of(1);
    std::uint64_t trunk = Taker(header, 32).whole(4);
    while (trunk >= 1 && trunk <= count_ && !free_[trunk]) {
        free_[trunk] = true;
        const Bytes bytes = bytes_of(static_cast<std::uint32_t>(trunk));
        Taker list(bytes);
        trunk = list.whole(4);
        const std::uint64_t leaves = std::min<std::uint64_t>(list.whole(4), page_size_ / 4 - 2);
        for (std::uint64_t i = 0; i < leaves; ++i)
            if (const std::uint64_t leaf = list.whole(4); leaf <= count_)
                free_[leaf] = true;
    }
}

// Of a long row only the beginning is on its page, the rest on a chain of others. A row of more
// bytes than any cell may have is none of ours.
Pages::Bytes Pages::payload(const Page& page, std::size_t at, std::size_t size) {
    const std::size_t usable = page_size_;
    const std::size_t most = page.kind == table_leaf ? usable - 35 : (usable - 12) * 64 / 255 - 23;
    const std::size_t least = (usable - 12) * 32 / 255 - 23;
    std::size_t here = size;
    if (size > most) {
        here = least + (size - least) % (usable - 4);
        here = here <= most ? here : least;
    }
    if (size > k_longest_cell_read || size > page_size_ * count_ || at + here > page.bytes.size())
        throw Unreadable();
    const auto begin = page.bytes.begin() + static_cast<std::ptrdiff_t>(at);
    Bytes all(begin, begin + static_cast<std::ptrdiff_t>(here));
    std::uint64_t next = size == here ? 0 : Taker(page.bytes, at + here).whole(4);
    while (all.size() < size) {
        if (next < 1 || next > count_)
            throw Unreadable();
        const Bytes more = bytes_of(static_cast<std::uint32_t>(next));
        next = Taker(more).whole(4);
        const std::size_t part = std::min(size - all.size(), usable - 4);
        all.insert(all.end(), more.begin() + 4,
                   more.begin() + 4 + static_cast<std::ptrdiff_t>(part));
    }
    return all;
}

bool Pages::row(const Page& page, std::size_t at, const See& see) {
    try {
        Taker taker(page.bytes, at);
        const std::size_t size = taker.varint();
        PageRow row;
        row.has_id = page.kind == table_leaf;
        if (row.has_id)
            row.id = static_cast<std::int64_t>(taker.varint());
        row.cells = cells(payload(page, taker.at(), size));
        return see(row);
    } catch (const Unreadable&) {
        return false;
    }
}

bool Pages::walk(std::uint32_t number, int depth, const See& see) {
    if (number < 1 || number > count_ || seen_[number] || depth > k_deepest)
        return false;
    seen_[number] = true;
    const Page page(number, bytes_of(number));
    if (!page.is_known())
        return false;
    bool whole = true;
    const auto attempt = [&whole](const auto& act) {
        try {
            whole = act() && whole;
        } catch (const Unreadable&) {
            whole = false;
        }
    };
    for (std::size_t i = 0; i < page.count && 2 * i < page_size_; ++i) {
        if (page.inner)
            attempt([&] { return walk(page.child(page.place(i)), depth + 1, see); });
        if (page.kind != table_inner)
            attempt([&] { return row(page, page.place(i) + (page.inner ? 4 : 0), see); });
    }
    if (page.inner)
        attempt([&] { return walk(page.last_child(), depth + 1, see); });
    return whole;
}

bool Pages::tree(std::uint32_t root, const See& see) {
    return walk(root, 0, see);
}

void Pages::stray(const See& see) {
    for (std::uint32_t number = 1; number <= count_; ++number)
        if (!seen_[number] && !free_[number] && bytes_of(number)[0] == table_leaf)
            walk(number, 0, see);
}

} // namespace store
