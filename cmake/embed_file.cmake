# Turns a file into a C++ source that holds it byte for byte: cmake -D IN=file -D OUT=file.cpp
# -D NAME=identifier -P embed_file.cmake. The source defines std::string_view embedded::NAME.
file(READ "${IN}" bytes HEX)
string(REGEX REPLACE "(..)" "0x\\1," bytes "${bytes}")
string(REGEX REPLACE "(0x..,0x..,0x..,0x..,0x..,0x..,0x..,0x..,0x..,0x..,0x..,0x..,0x..,0x..,0x..,0x..,)"
    "\\1\n" bytes "${bytes}")
get_filename_component(from "${IN}" NAME)
file(WRITE "${OUT}" "// Made from ${from} by the build.
#include <string_view>

namespace embedded {

static constexpr unsigned char k_bytes[] = {
${bytes}0};

extern const std::string_view ${NAME};
const std::string_view ${NAME}(reinterpret_cast<const char*>(k_bytes), sizeof k_bytes - 1);

} // namespace embedded
")
