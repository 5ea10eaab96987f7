// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/rights.hpp"

#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "error/error.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

constexpr mode_t k_all = 0777;
constexpr mode_t k_group = 070;
constexpr mode_t k_others = 07;
constexpr mode_t k_new_file = 0666;
constexpr mode_t k_owner_writes = 0600;
constexpr auto k_as_it_is = static_cast<uid_t>(-1);

// Another group gets no more than everybody.
mode_t for_another_group(mode_t mode) {
    return mode & (~k_group | ((mode & k_others) << 3U));
}

bool give_group(int handle, gid_t group) {
    struct stat status {};
    return ::fstat(handle, &status) == 0 &&
           (status.st_gid == group || ::fchown(handle, k_as_it_is, group) == 0);
}

void set_mode(int handle, mode_t mode, const fs::path& path) {
    if (::fchmod(handle, mode) == 0)
        return;
    if (errno == EPERM || errno == EINVAL || errno == ENOTSUP || errno == ENOSYS)
        return; // a file system without such bits
    throw error::InputOutput("it cannot be said who may use the file: " + path.string(),
                             std::generic_category().message(errno));
}

} // namespace

std::optional<Rights> rights_of(const fs::path& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0)
        return std::nullopt;
    return Rights{status.st_uid, status.st_gid, status.st_mode & k_all};
}

void narrow(int handle, const std::optional<Rights>& original, const fs::path& path) {
    const mode_t mask = ::umask(0);
    ::umask(mask);
    mode_t mode = k_new_file & ~mask;
    if (original)
        mode &= give_group(handle, original->group) ? original->mode
                                                    : for_another_group(original->mode);
    set_mode(handle, mode | k_owner_writes, path);
}

void give(int handle, const Rights& rights, const fs::path& path) {
    const bool group = give_group(handle, rights.group);
    const mode_t mode = group ? rights.mode : for_another_group(rights.mode);
    // The owner last: then the bits may no more be ours to set.
    set_mode(handle, mode, path);
    (void)(::fchown(handle, rights.owner, k_as_it_is) == 0);
}

} // namespace store
