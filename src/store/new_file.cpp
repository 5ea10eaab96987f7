// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/new_file.hpp"

#include <fcntl.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <string>
#include <system_error>

#include "error/error.hpp"
#include "store/translate.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

[[noreturn]] void throw_system(const std::string& what, const fs::path& path) {
    const std::string why = std::generic_category().message(errno);
    throw error::InputOutput(what + ": " + path.string(), why);
}

fs::path folder_of(const fs::path& path) {
    return path.has_parent_path() ? path.parent_path() : fs::path(".");
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

// 0, or -1 with errno set; EEXIST if something has the new name.
int rename_without_overwriting(const fs::path& from, const fs::path& to) {
    const int result = ::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE);
    if (result == 0 || (errno != EINVAL && errno != ENOSYS))
        return result;
    // A file system that cannot do it in one step.
    if (::link(from.c_str(), to.c_str()) != 0)
        return -1;
    return ::unlink(from.c_str());
}

} // namespace

NewFile::NewFile(const fs::path& wanted, fs::perms widest) {
    const fs::path folder = folder_of(wanted);
    std::string name = folder / ("." + wanted.filename().string() + ".XXXXXX");
    const int handle = ::mkostemp(name.data(), O_CLOEXEC);
    if (handle < 0)
        throw_system("no file can be made here", folder);
    path_ = hidden_ = name;
    // mkostemp shuts others out; a new file is as open as the user's others.
    const mode_t mask = ::umask(0);
    ::umask(mask);
    const int result = ::fchmod(handle, 0666 & ~mask & static_cast<mode_t>(widest));
    ::close(handle);
    if (result != 0)
        throw_system("no file can be made here", folder);
}

NewFile::~NewFile() {
    std::error_code ignored;
    if (!moved_)
        fs::remove(path_, ignored);
    fs::remove(hidden_.string() + "-journal", ignored);
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
    return true;
}

void NewFile::replace(const fs::path& wanted) {
    if (::rename(path_.c_str(), wanted.c_str()) != 0)
        throw_system("the file cannot be named", wanted);
    moved_ = true;
    try {
        sync_folder(folder_of(wanted));
    } catch (const error::InputOutput&) {
        throw_uncertain(wanted.string());
    }
}

} // namespace store
