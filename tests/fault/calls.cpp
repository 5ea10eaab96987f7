// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Loaded before the C library (LD_PRELOAD): the system's calls that write, sync, name or take away
// a file, of which the one numbered FAULT_AT fails with the error FAULT_ERROR, and with FAULT_STAYS
// all after it too. FAULT_MARK is a file made when a call has failed: its name is in it. Printing
// (standard output and error) is left alone. With FAULT_STICK the file system is a poor one: it has
// no links, no renaming that spares what is there, no owners and no permissions.
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/types.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>

namespace {

long number(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? 0 : std::atol(value);
}

template <class Function>
Function next(const char* name) {
    return reinterpret_cast<Function>(dlsym(RTLD_NEXT, name));
}

void mark(const char* call) {
    const char* path = std::getenv("FAULT_MARK");
    if (path == nullptr)
        return;
    const int handle = ::open(path, O_WRONLY | O_CREAT | O_TRUNC, 0666);
    static const auto real = next<ssize_t (*)(int, const void*, size_t)>("write");
    if (handle >= 0 && real(handle, call, std::strlen(call)) >= 0)
        ::close(handle);
}

bool fails(const char* call) {
    static long count = 0;
    static const long at = number("FAULT_AT");
    static const bool stays = number("FAULT_STAYS") != 0;
    ++count;
    if (at == 0 || count < at || (count > at && !stays))
        return false;
    if (count == at)
        mark(call);
    errno = static_cast<int>(number("FAULT_ERROR"));
    return true;
}

bool fails(const char* call, int handle) {
    return handle > STDERR_FILENO && fails(call);
}

// Whether the poor file system has no such thing; errno says so.
bool is_lacking(int error) {
    static const bool poor = number("FAULT_STICK") != 0;
    if (poor)
        errno = error;
    return poor;
}

} // namespace

extern "C" {

int link(const char* from, const char* to) noexcept {
    static const auto real = next<int (*)(const char*, const char*)>("link");
    return is_lacking(EPERM) ? -1 : real(from, to);
}

int fchmod(int handle, mode_t mode) noexcept {
    static const auto real = next<int (*)(int, mode_t)>("fchmod");
    return is_lacking(EPERM) ? -1 : real(handle, mode);
}

int fchown(int handle, uid_t owner, gid_t group) noexcept {
    static const auto real = next<int (*)(int, uid_t, gid_t)>("fchown");
    return is_lacking(EPERM) ? -1 : real(handle, owner, group);
}

ssize_t write(int handle, const void* from, size_t size) {
    static const auto real = next<ssize_t (*)(int, const void*, size_t)>("write");
    return fails("write", handle) ? -1 : real(handle, from, size);
}

ssize_t pwrite64(int handle, const void* from, size_t size, off64_t at) {
    static const auto real = next<ssize_t (*)(int, const void*, size_t, off64_t)>("pwrite64");
    return fails("pwrite", handle) ? -1 : real(handle, from, size, at);
}

ssize_t pwrite(int handle, const void* from, size_t size, off_t at) {
    return pwrite64(handle, from, size, at);
}

int fsync(int handle) {
    static const auto real = next<int (*)(int)>("fsync");
    return fails("fsync", handle) ? -1 : real(handle);
}

int fdatasync(int handle) {
    static const auto real = next<int (*)(int)>("fdatasync");
    return fails("fdatasync", handle) ? -1 : real(handle);
}

int ftruncate64(int handle, off64_t size) noexcept {
    static const auto real = next<int (*)(int, off64_t)>("ftruncate64");
    return fails("ftruncate", handle) ? -1 : real(handle, size);
}

int ftruncate(int handle, off_t size) noexcept {
    return ftruncate64(handle, size);
}

int unlink(const char* path) noexcept {
    static const auto real = next<int (*)(const char*)>("unlink");
    return fails("unlink") ? -1 : real(path);
}

int remove(const char* path) noexcept {
    static const auto real = next<int (*)(const char*)>("remove");
    return fails("remove") ? -1 : real(path);
}

int rename(const char* from, const char* to) noexcept {
    static const auto real = next<int (*)(const char*, const char*)>("rename");
    return fails("rename") ? -1 : real(from, to);
}

int renameat2(int a, const char* from, int b, const char* to, unsigned flags) noexcept {
    static const auto real =
        next<int (*)(int, const char*, int, const char*, unsigned)>("renameat2");
    if (flags != 0 && is_lacking(EINVAL))
        return -1;
    return fails("rename") ? -1 : real(a, from, b, to, flags);
}

} // extern "C"
