// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The system's own calls: a stream would not say why it failed.
#include "cli/transfer/files.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdlib>
#include <system_error>

#include "cli/context.hpp"
#include "error/error.hpp"
#include "present/text.hpp"
#include "store/new_file.hpp"

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

void write_whole(const fs::path& path, const std::string& text, bool replace,
                 const Context& context) {
    store::refuse_output(path);
    std::error_code ignored;
    if (fs::exists(path, ignored) && !replace)
        store::throw_already_there(path);
    drop_left_over(path, context.err());
    store::NewFile draft(path, store::rights_of(context.path()));
    draft.write(text);
    if (replace)
        draft.replace(path);
    else if (!draft.move_to(path))
        store::throw_already_there(path);
}

void drop_left_over(const fs::path& wanted, std::ostream& err) {
    for (const fs::path& dropped : store::drop_left_over(wanted))
        err << "Taken away: " << present::safe(dropped.string())
            << ", left by a run that was cut short.\n";
}

void say_rights(const fs::path& path, const std::optional<store::Rights>& before,
                std::ostream& err) {
    if (before && before != store::rights_of(path))
        err << "Its owner or group could not be kept: see who may use "
            << present::safe(path.string()) << ".\n";
}

} // namespace cli::transfer
