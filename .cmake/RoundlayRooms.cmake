# A room is one folder, one static library roundlay_<folder>. What it may see is what it links.
set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_POSITION_INDEPENDENT_CODE ON)
if(NOT CMAKE_BUILD_TYPE)
    set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "" FORCE)
endif()

set(CMAKE_CXX_FLAGS_RELEASE "-O2 -DNDEBUG") # -O3 buys nothing measurable here and takes longer to build

find_program(ROUNDLAY_CCACHE ccache)
if(ROUNDLAY_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
    set(CMAKE_CXX_COMPILER_LAUNCHER ${ROUNDLAY_CCACHE})
endif()

add_library(roundlay_warnings INTERFACE)
target_compile_options(roundlay_warnings INTERFACE
    -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor -Wold-style-cast -Werror
    -ffp-contract=off) # the same sums on every machine: no fused multiply-add

# GCC 12 takes some string sums for overlapping copies (its bug 105651).
if(CMAKE_CXX_COMPILER_ID STREQUAL GNU AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
    target_compile_options(roundlay_warnings INTERFACE -Wno-restrict)
endif()

# GCC's sanitizers make it lose track of what is set: it then warns of the standard library's own <regex>.
if(CMAKE_CXX_COMPILER_ID STREQUAL GNU AND CMAKE_CXX_FLAGS MATCHES "-fsanitize")
    target_compile_options(roundlay_warnings INTERFACE -Wno-maybe-uninitialized)
endif()

# A build that is made from nothing and once, as sanitizers are in continuous integration, is cheaper so. The
# others go without, so that a file that forgets an include does not compile.
option(ROUNDLAY_PRECOMPILED "Precompile the headers of the standard library and of the tests'" OFF)
set(roundlay_common_headers <algorithm> <array> <cmath> <functional> <map> <memory> <numeric> <optional> <ranges> <set>
    <span> <sstream> <stdexcept> <string> <variant> <vector>)
if(ROUNDLAY_PRECOMPILED)
    file(CONFIGURE OUTPUT ${CMAKE_BINARY_DIR}/generated/precompiled.cpp CONTENT "")
    add_library(roundlay_precompiled STATIC ${CMAKE_BINARY_DIR}/generated/precompiled.cpp)
    target_link_libraries(roundlay_precompiled PRIVATE roundlay_warnings)
    target_precompile_headers(roundlay_precompiled PRIVATE ${roundlay_common_headers})
endif()

# roundlay_room(NAME LINKS room_or_library ... PRIVATE_LINKS ... SOURCES what_is_made_while_building ...): each source
# that lies in the folder or below it, but for a program's main.cpp. A file that comes or goes is noticed by the build.
function(roundlay_room name)
    cmake_parse_arguments(ROOM "" "" "SOURCES;LINKS;PRIVATE_LINKS" ${ARGN})
    file(GLOB_RECURSE lying_there CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/*.cpp)
    list(FILTER lying_there EXCLUDE REGEX "/main\\.cpp$")
    add_library(roundlay_${name} STATIC ${lying_there} ${ROOM_SOURCES})
    target_include_directories(roundlay_${name} PUBLIC ${PROJECT_SOURCE_DIR})
    target_link_libraries(roundlay_${name} PUBLIC ${ROOM_LINKS} PRIVATE ${ROOM_PRIVATE_LINKS} roundlay_warnings)
    if(ROUNDLAY_PRECOMPILED)
        target_precompile_headers(roundlay_${name} REUSE_FROM roundlay_precompiled)
    endif()
endfunction()

# Tests state options by name and leave the rest as it is. Clang goes by the last word on a warning.
add_library(roundlay_test_warnings INTERFACE)
if(CMAKE_CXX_COMPILER_ID MATCHES Clang)
    target_compile_options(roundlay_test_warnings INTERFACE "SHELL:-Wno-missing-field-initializers") # or it counts as said
endif()

# roundlay_test(NAME SOURCES what_helps.cpp ... LINKS room ...): one Catch2 program of each *_test.cpp that lies in the
# folder, and of all that lies in its support, one CTest entry.
function(roundlay_test name)
    cmake_parse_arguments(TEST "" "" "SOURCES;LINKS" ${ARGN})
    file(GLOB lying_there CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/*_test.cpp
         ${CMAKE_CURRENT_SOURCE_DIR}/support/*.cpp)
    add_executable(test_${name} ${lying_there} ${TEST_SOURCES})
    target_link_libraries(test_${name} PRIVATE ${TEST_LINKS} roundlay_test_main roundlay_warnings roundlay_test_warnings)
    target_compile_options(test_${name} PRIVATE ${ROUNDLAY_TEST_OPTIONS} -Wno-missing-field-initializers)
    if(ROUNDLAY_PRECOMPILED)
        target_precompile_headers(test_${name} REUSE_FROM roundlay_test_precompiled)
    endif()
    add_test(NAME ${name} COMMAND test_${name})
    set_tests_properties(${name} PROPERTIES LABELS unit)
endfunction()
