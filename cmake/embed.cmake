# SPDX-License-Identifier: GPL-3.0-or-later
# Script: cmake -DOUT=shipped_text.cpp -DFILES="a.json|b.json" -P embed.cmake
# Writes the texts into a source file, each as a raw string, in the order given.
string(REPLACE "|" ";" FILES "${FILES}")
set(entries "")
foreach(file IN LISTS FILES)
  get_filename_component(name "${file}" NAME)
  file(READ "${file}" text)
  string(FIND "${text}" ")bw-json\"" end)
  if(NOT end EQUAL -1)
    message(FATAL_ERROR "${file} holds the mark that ends a raw string")
  endif()
  string(APPEND entries "    {\"${name}\", R\"bw-json(${text})bw-json\"},\n")
endforeach()
file(WRITE "${OUT}" "// Made by cmake/embed.cmake; changes here are lost.
#include \"interchange/shipped_text.hpp\"

namespace bw {

std::span<const ShippedText> shippedTexts() {
    static constexpr ShippedText texts[] = {
${entries}    };
    return texts;
}

} // namespace bw
")
