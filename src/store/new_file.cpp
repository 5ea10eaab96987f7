// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/new_file.hpp"

#include <fcntl.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <string>
#include <system_error>

#include "error/error.hpp"
#include "store/translate.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

constexpr auto k_unfinished = ".unfinished-";
constexpr std::size_t k_letters = 6; // that mkostemp puts in

[[noreturn]] void throw_system(const std::string& what, const fs::path& path) {
    const std::string why = std::generic_category().message(errno);
    throw error::InputOutput(what + ": " + path.string(), why);
}

fs::path folder_of(const fs::path& path) {
    return path.has_parent_path() ? path.parent_path() : fs::path(".");
}

std::string hidden_start(const fs::path& wanted) {
    return "." + wanted.filename().string() + k_unfinished;
}

fs::path journal_of(const fs::path& path) {
    return path.string() + "-journal";
}

void sync_folder(const fs::path& folder) {
    const int handle = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (handle < 0)
        throw_system("the folder cannot be opened", folder);
    const int result = ::fsync(handle);
    ::close(handle);
    // Some file systems have no such thing as syncing a folder.
    if (result != 0 && errno != EINVAL)
        throw_system("the folder cannot be written to the disk", folder);
}

// On a file system that cannot do it in one step an empty file takes the name first. A hard link
// would do too, but not all of them have links.
int take_name_and_rename(const fs::path& from, const fs::path& to) {
    const int taken = ::open(to.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (taken < 0)
        return -1;
    ::close(taken);
    if (::rename(from.c_str(), to.c_str()) == 0)
        return 0;
    const int why = errno;
    ::unlink(to.c_str());
    errno = why;
    return -1;
}

// 0, or -1 with errno set; EEXIST if something has the new name.
int rename_without_overwriting(const fs::path& from, const fs::path& to) {
    const int result = ::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE);
    if (result == 0 || (errno != EINVAL && errno != ENOSYS))
        return result;
    return take_name_and_rename(from, to);
}

// False if another opening of the file has it, or if the file system has no such locks. Of this
// opening, not of the process, and on a byte that SQLite's locks do not reach.
bool lock(int handle) {
    struct flock wanted {};
    wanted.l_type = F_WRLCK;
    wanted.l_whence = SEEK_SET;
    wanted.l_start = off_t{1} << 62U;
    wanted.l_len = 1;
    return ::fcntl(handle, F_OFD_SETLK, &wanted) == 0;
}

bool has_a_name(int handle) {
    struct stat status {};
    return ::fstat(handle, &status) == 0 && status.st_nlink > 0;
}

bool was_left_over(const fs::path& path) {
    const int handle = ::open(path.c_str(), O_RDWR | O_NOFOLLOW | O_CLOEXEC);
    struct stat status {};
    const bool left = handle >= 0 && ::fstat(handle, &status) == 0 && S_ISREG(status.st_mode) &&
                      status.st_uid == ::geteuid() && lock(handle);
    if (handle >= 0)
        ::close(handle);
    return left;
}

} // namespace

fs::path real_path(const fs::path& path) {
    std::error_code code;
    const fs::path real = fs::is_symlink(path, code) ? fs::canonical(path, code) : path;
    return code ? path : real;
}

void refuse_output(const fs::path& wanted) {
    std::error_code ignored;
    const fs::file_status there = fs::symlink_status(wanted, ignored);
    if (fs::is_symlink(there))
        throw error::InputOutput("a symbolic link, and these are not followed: " + wanted.string(),
                                 "name the file it leads to, or another");
    if (fs::exists(there) && !fs::is_regular_file(there))
        throw error::InputOutput("not a plain file: " + wanted.string(), "name another file");
}

void throw_already_there(const fs::path& wanted, const char* hint) {
    throw error::InputOutput("already there: " + wanted.string(), hint);
}

NewFile::NewFile(const fs::path& wanted, const std::optional<Rights>& original) {
    do {
        let_go();
        open_beside(wanted);
        (void)lock(handle_);
    } while (!has_a_name(handle_)); // taken for left over before it was locked
    try {
        narrow(handle_, original, folder_of(wanted)); // mkostemp shut others out
    } catch (...) {
        ::unlink(hidden_.c_str());
        let_go();
        throw;
    }
}

void NewFile::open_beside(const fs::path& wanted) {
    const fs::path folder = folder_of(wanted);
    std::string name = folder / (hidden_start(wanted) + std::string(k_letters, 'X'));
    handle_ = ::mkostemp(name.data(), O_CLOEXEC);
    if (handle_ < 0)
        throw_system("no file can be made here", folder);
    path_ = hidden_ = name;
}

NewFile::~NewFile() {
    std::error_code ignored;
    fs::remove(journal_of(hidden_), ignored);
    if (!moved_)
        fs::remove(path_, ignored);
    let_go();
}

void NewFile::let_go() {
    if (handle_ >= 0)
        ::close(handle_);
    handle_ = -1;
}

void NewFile::write(std::string_view bytes) const {
    while (!bytes.empty()) {
        const ssize_t count = ::write(handle_, bytes.data(), bytes.size());
        if (count < 0 && errno != EINTR)
            throw_system("cannot write", path_);
        if (count > 0)
            bytes.remove_prefix(static_cast<std::size_t>(count));
    }
    if (::fsync(handle_) != 0)
        throw_system("cannot write", path_);
}

bool NewFile::move_to(const fs::path& wanted) {
    if (rename_without_overwriting(path_, wanted) != 0) {
        if (errno == EEXIST)
            return false;
        throw_system("the file cannot be named", wanted);
    }
    path_ = wanted; // taken away again if the disk does not know of it
    sync_folder(folder_of(wanted));
    moved_ = true;
    let_go(); // or closing it later would undo a lock of SQLite's
    return true;
}

void NewFile::replace(const fs::path& wanted) {
    if (const auto rights = rights_of(wanted))
        take_rights(*rights);
    if (::rename(path_.c_str(), wanted.c_str()) != 0)
        throw_system("the file cannot be named", wanted);
    moved_ = true;
    let_go();
    try {
        sync_folder(folder_of(wanted));
    } catch (const error::InputOutput&) {
        throw_uncertain(wanted.string());
    }
}

std::vector<fs::path> drop_left_over(const fs::path& wanted) {
    const std::string start = hidden_start(wanted);
    const fs::path folder = folder_of(wanted);
    std::vector<fs::path> dropped;
    std::error_code code;
    for (fs::directory_iterator at(folder, code), end; !code && at != end; at.increment(code)) {
        const std::string name = at->path().filename().string();
        const fs::path path = wanted.has_parent_path() ? folder / name : fs::path(name);
        std::error_code ignored;
        if (name.rfind(start, 0) != 0 || name.size() != start.size() + k_letters ||
            !was_left_over(path) || !fs::remove(path, ignored))
            continue;
        fs::remove(journal_of(path), ignored);
        dropped.push_back(path);
    }
    return dropped;
}

} // namespace store
