# SPDX-License-Identifier: GPL-3.0-or-later
# One room, one target. What a room may touch is what it links, and nothing else.
set(BW_WARNINGS -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor -Woverloaded-virtual
                -Wcast-align -Wunused -Wdouble-promotion)
if(BLOCKWRIGHT_WERROR)
  list(APPEND BW_WARNINGS -Werror)
endif()
# GCC 12 sees overlaps in std::string's own operator+ once it optimises (GCC bug 105651).
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  list(APPEND BW_WARNINGS -Wno-restrict)
endif()

function(bw_common target)
  target_compile_options(${target} PRIVATE ${BW_WARNINGS})
  target_include_directories(${target} PRIVATE ${PROJECT_SOURCE_DIR}/src)
  # What Debian asks of a program: its table of addresses can't be written once it runs.
  target_link_options(${target} PUBLIC $<$<CONFIG:Release>:LINKER:-z,relro,-z,now>)
  if(BLOCKWRIGHT_SANITIZE)
    target_compile_options(${target} PUBLIC -fsanitize=${BLOCKWRIGHT_SANITIZE}
                           -fno-omit-frame-pointer)
    target_link_options(${target} PUBLIC -fsanitize=${BLOCKWRIGHT_SANITIZE})
  endif()
  if(BLOCKWRIGHT_FUZZ)
    target_compile_options(${target} PUBLIC -fsanitize=fuzzer-no-link -fno-sanitize-recover=all)
  endif()
endfunction()

# bw_room(NAME [QT] LINKS targets... USES targets...): all .cpp below the current folder as library
# bw_NAME; USES are private to the room.
function(bw_room name)
  cmake_parse_arguments(ARG "QT" "" "LINKS;USES" ${ARGN})
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/*.cpp
                                              ${CMAKE_CURRENT_SOURCE_DIR}/*.hpp)
  list(FILTER sources EXCLUDE REGEX "/main\\.cpp$")
  if(NOT sources) # a room still empty
    add_library(bw_${name} INTERFACE)
    target_link_libraries(bw_${name} INTERFACE ${ARG_LINKS})
    return()
  endif()
  add_library(bw_${name} STATIC ${sources})
  bw_common(bw_${name})
  target_include_directories(bw_${name} PUBLIC ${PROJECT_SOURCE_DIR}/include)
  target_link_libraries(bw_${name} PUBLIC ${ARG_LINKS} PRIVATE ${ARG_USES})
  if(ARG_QT)
    set_target_properties(bw_${name} PROPERTIES AUTOMOC ON)
    target_compile_definitions(bw_${name} PRIVATE QT_NO_KEYWORDS QT_NO_CAST_FROM_ASCII
                                                  QT_NO_CAST_TO_ASCII)
    target_precompile_headers(bw_${name} PRIVATE ${PROJECT_SOURCE_DIR}/cmake/qt_pch.hpp)
  endif()
endfunction()
