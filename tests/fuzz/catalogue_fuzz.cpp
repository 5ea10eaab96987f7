// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A file of any bytes is opened as a catalogue, to read and to write, or refused with an error of
// ours; what is refused stays as it was to the byte. The folder is in memory (/dev/shm).
#include <unistd.h>

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "error/error.hpp"
#include "store/file.hpp"

namespace {

namespace fs = std::filesystem;

// Goes when the program ends.
struct Folder {
    const fs::path path = "/dev/shm/counterpart-fuzz-" + std::to_string(getpid());
    Folder() { fs::create_directory(path); }
    ~Folder() { fs::remove_all(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
};

std::string bytes_of(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

void open(const fs::path& path, const std::string& bytes, store::Access access) {
    std::ofstream(path, std::ios::binary) << bytes;
    try {
        static_cast<void>(store::File::open(path, access, std::chrono::milliseconds(0)));
    } catch (const error::Error&) {
        if (bytes_of(path) != bytes)
            std::abort();
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const Folder folder;
    const std::string bytes(reinterpret_cast<const char*>(data), size);
    for (const auto access : {store::Access::read, store::Access::write}) {
        open(folder.path / "catalogue", bytes, access);
        for (const auto& left : fs::directory_iterator(folder.path)) // journals, copies beside it
            fs::remove_all(left);
    }
    return 0;
}
