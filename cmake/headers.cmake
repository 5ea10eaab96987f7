# Headers that most files take, compiled once for all targets that are compiled alike: a third to a
# half of the time that a small file takes goes into these.
set(common_headers
    <algorithm> <array> <cstdint> <functional> <map> <memory> <optional> <string> <string_view>
    <utility> <variant> <vector>)

# compile_headers(TARGET [HEADER...]): the common ones and these, for TARGET and those that share them.
function(compile_headers target)
    target_precompile_headers(${target} PRIVATE ${common_headers} ${ARGN})
endfunction()

# share_headers(TARGET OWNER): those of OWNER, which has the same options.
function(share_headers target owner)
    target_precompile_headers(${target} REUSE_FROM ${owner})
endfunction()
