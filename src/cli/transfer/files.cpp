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

constexpr std::size_t k_part = 65536;

std::size_t read_some(int file, char* to, std::size_t most, const fs::path& path) {
    while (true) {
        const ssize_t count = ::read(file, to, most);
        if (count >= 0)
            return static_cast<std::size_t>(count);
        if (errno != EINTR)
            fail("cannot read", path, errno);
    }
}

// All that comes out of a pipe, in a file without a name.
int spooled(int pipe, const fs::path& path) {
    std::string name = fs::temp_directory_path() / "counterpart-XXXXXX";
    const int file = ::mkostemp(name.data(), O_CLOEXEC);
    if (file < 0)
        fail("no temporary file can be made", name, errno);
    ::unlink(name.c_str());
    std::array<char, k_part> part{};
    while (const std::size_t count = read_some(pipe, part.data(), part.size(), path))
        if (::write(file, part.data(), count) != static_cast<ssize_t>(count)) {
            const int number = errno;
            ::close(file);
            fail("no room for a temporary file", path, number);
        }
    ::lseek(file, 0, SEEK_SET);
    return file;
}

} // namespace

Input::Input(const fs::path& path)
    : path_(path), file_(::open(path.c_str(), O_RDONLY | O_CLOEXEC)) {
    if (file_ < 0)
        fail("cannot read", path, errno);
    if (::lseek(file_, 0, SEEK_SET) == 0)
        return;
    const Descriptor pipe(file_);
    file_ = -1;
    file_ = spooled(pipe.number(), path);
}

Input::~Input() {
    if (file_ >= 0)
        ::close(file_);
}

std::size_t Input::read(char* to, std::size_t most) {
    return read_some(file_, to, most, path_);
}

void Input::rewind() {
    if (::lseek(file_, 0, SEEK_SET) != 0)
        fail("cannot read", path_, errno);
}

std::string read_whole(const fs::path& path) {
    Input input(path);
    std::string text;
    std::array<char, k_part> part{};
    while (const std::size_t count = input.read(part.data(), part.size()))
        text.append(part.data(), count);
    return text;
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
