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

# roundlay_room(NAME SOURCES a.cpp ... LINKS room_or_library ... PRIVATE_LINKS ...)
function(roundlay_room name)
    cmake_parse_arguments(ROOM "" "" "SOURCES;LINKS;PRIVATE_LINKS" ${ARGN})
    if(ROOM_SOURCES)
        add_library(roundlay_${name} STATIC ${ROOM_SOURCES})
        target_include_directories(roundlay_${name} PUBLIC ${PROJECT_SOURCE_DIR})
        target_link_libraries(roundlay_${name} PUBLIC ${ROOM_LINKS} PRIVATE ${ROOM_PRIVATE_LINKS} roundlay_warnings)
    else()
        add_library(roundlay_${name} INTERFACE)
        target_include_directories(roundlay_${name} INTERFACE ${PROJECT_SOURCE_DIR})
        target_link_libraries(roundlay_${name} INTERFACE ${ROOM_LINKS})
    endif()
endfunction()

# roundlay_test(NAME SOURCES a_test.cpp ... LINKS room ...): one Catch2 program, one CTest entry.
function(roundlay_test name)
    cmake_parse_arguments(TEST "" "" "SOURCES;LINKS" ${ARGN})
    add_executable(test_${name} ${TEST_SOURCES})
    target_link_libraries(test_${name} PRIVATE ${TEST_LINKS} roundlay_test_main roundlay_warnings)
    target_compile_options(test_${name} PRIVATE -Wno-missing-field-initializers) # options by name, the rest default
    add_test(NAME ${name} COMMAND test_${name})
    set_tests_properties(${name} PROPERTIES LABELS unit)
endfunction()
