# SPDX-License-Identifier: GPL-3.0-or-later
# What holds the house together, besides the code: tree, documents, desktop files.
find_program(BW_PYTHON python3 PATHS /usr/bin NO_DEFAULT_PATH) # the one that has jsonschema
find_program(BW_PYTHON python3 REQUIRED)

add_test(NAME house COMMAND sh ${PROJECT_SOURCE_DIR}/tools/check-house.sh)

# bw_script_test(NAME SCRIPT [arguments...]): a test program in Python of this folder.
function(bw_script_test name script)
  add_test(NAME ${name} COMMAND ${BW_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/house/${script} ${ARGN})
  set_tests_properties(${name} PROPERTIES TIMEOUT 300 ENVIRONMENT
    "BW_SOURCE_DIR=${PROJECT_SOURCE_DIR};BW_BIN=${CMAKE_BINARY_DIR}/bin;LC_ALL=C.UTF-8;QT_QPA_PLATFORM=offscreen")
endfunction()

bw_script_test(house-itself house_test.py)
bw_script_test(examples-itself examples_test.py)
bw_script_test(translate-itself translate_test.py)
add_test(NAME translations COMMAND ${BW_PYTHON} -B ${PROJECT_SOURCE_DIR}/tools/translate.py --check)
bw_script_test(desktop desktop_test.py)
bw_script_test(manual manual_test.py)
bw_script_test(completion completion_test.py)
bw_script_test(completion-zsh zsh_completion_test.py)
set_tests_properties(completion-zsh PROPERTIES SKIP_RETURN_CODE 77) # no zsh here
find_program(BW_DPKG dpkg-shlibdeps)
if(BW_DPKG AND NOT BLOCKWRIGHT_SANITIZE) # a sanitizer's libraries are no part of the package
  bw_script_test(package package_test.py)
endif()
add_test(NAME examples COMMAND ${BW_PYTHON} -B ${PROJECT_SOURCE_DIR}/tools/examples.py
                               ${PROJECT_SOURCE_DIR} ${CMAKE_BINARY_DIR}/bin)
add_test(NAME rule-fixtures COMMAND ${BW_PYTHON} -B
                                    ${PROJECT_SOURCE_DIR}/tools/make-rule-fixtures.py --check)
add_test(NAME demo-file COMMAND ${BW_PYTHON} -B ${PROJECT_SOURCE_DIR}/tools/make-demo.py --check)
