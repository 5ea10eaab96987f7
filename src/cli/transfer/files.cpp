// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The system's own calls: a stream would not say why it failed.
#include "cli/transfer/files.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <system_error>

#include "error/error.hpp"

namespace cli::transfer {

namespace {

namespace fs = std::filesystem;

[[noreturn]] void fail(const std::string& what, const fs::path& path, int number) {
    throw error::InputOutput(what + ": " + path.string(), std::generic_category().message(number));
}

// An open file, closed in the end.
class Descriptor {
  public:
    explicit Descriptor(int number) : number_(number) {}
    ~Descriptor() {
        if (number_ >= 0)
            ::close(number_);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] int number() const { return number_; }

  private:
    int number_;
};

// A file that is removed again unless it was given its name.
class Draft {
  public:
    explicit Draft(const fs::path& path)
        : name_(path.string() + ".XXXXXX"), file_(::mkstemp(name_.data())) {
        if (file_.number() < 0)
            fail("cannot write", path, errno);
    }
    ~Draft() {
        if (!kept_)
            ::unlink(name_.c_str());
    }
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;

    void write(const std::string& text, const fs::path& path) const {
        for (std::size_t at = 0; at < text.size();) {
            const ssize_t wrote = ::write(file_.number(), text.data() + at, text.size() - at);
            if (wrote < 0 && errno != EINTR)
                fail("cannot write", path, errno);
            if (wrote > 0)
                at += static_cast<std::size_t>(wrote);
        }
        constexpr mode_t k_usual = 0666;
        const mode_t mask = ::umask(0);
        ::umask(mask);
        if (::fchmod(file_.number(), k_usual & ~mask) != 0 || ::fsync(file_.number()) != 0)
            fail("cannot write", path, errno);
    }

    void name(const fs::path& path, bool replace) {
        // A link fails if something has come to be there; a rename would not.
        const int failed =
            replace ? ::rename(name_.c_str(), path.c_str()) : ::link(name_.c_str(), path.c_str());
        if (failed != 0)
            fail("cannot write", path, errno);
        kept_ = replace;
    }

  private:
    std::string name_;
    Descriptor file_;
    bool kept_ = false;
};

void sync_folder_of(const fs::path& path) {
    const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
    const Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (opened.number() >= 0)
        ::fsync(opened.number());
}

} // namespace

std::string read_whole(const fs::path& path) {
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (file.number() < 0)
        fail("cannot read", path, errno);
    std::string text;
    std::array<char, 65536> part{};
    while (true) {
        const ssize_t count = ::read(file.number(), part.data(), part.size());
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            fail("cannot read", path, errno);
        if (count == 0)
            return text;
        text.append(part.data(), static_cast<std::size_t>(count));
    }
}

void write_whole(const fs::path& path, const std::string& text, bool replace) {
    std::error_code ignored;
    const fs::file_status there = fs::status(path, ignored);
    if (fs::exists(there) && !fs::is_regular_file(there))
        throw error::InputOutput("not a plain file: " + path.string(), "name another file");
    if (fs::exists(there) && !replace)
        throw error::InputOutput("already there: " + path.string(),
                                 "name another file, or replace it with --force");
    // Through a symbolic link, so that the link stays one.
    const fs::path target = fs::exists(there) ? fs::canonical(path) : path;
    Draft draft(target);
    draft.write(text, target);
    draft.name(target, replace);
    sync_folder_of(target);
}

} // namespace cli::transfer
