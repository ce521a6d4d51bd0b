# The engine as a WebAssembly module, for pages that run it. Sets HEELRULE_PAGE_MODULE to the file
# that will be built, or leaves it empty where that cannot be done here.
#
# A module needs clang 19 with its linker, and the libraries of C and C++ for wasm32-wasi, which
# examples/install-packages names. CMake knows one compiler at a time, so the module's sources are
# compiled by commands of their own.
set(heelrule_page_usual OFF)
if(PROJECT_IS_TOP_LEVEL AND HEELRULE_CLI)
  set(heelrule_page_usual AUTO)
endif()
set(HEELRULE_PAGE ${heelrule_page_usual} CACHE STRING "Build the engine for pages too: AUTO (where the compiler is there), ON, OFF")
set_property(CACHE HEELRULE_PAGE PROPERTY STRINGS AUTO ON OFF)
set(HEELRULE_PAGE_MODULE "")

# heelrule_page_compiler(FOUND): whether a C++ program for wasm32-wasi can be made here.
function(heelrule_page_compiler found)
  set(${found} FALSE PARENT_SCOPE)
  find_program(HEELRULE_PAGE_CXX clang++-19)
  find_program(HEELRULE_PAGE_LINKER wasm-ld-19)
  mark_as_advanced(HEELRULE_PAGE_CXX HEELRULE_PAGE_LINKER)
  if(NOT HEELRULE_PAGE_CXX OR NOT HEELRULE_PAGE_LINKER)
    return()
  endif()
  set(trial ${CMAKE_CURRENT_BINARY_DIR}/page/trial)
  file(WRITE ${trial}.cpp "#include <string>\nint main(int count, char**) { return (int)std::string(count, 'x').size(); }\n")
  execute_process(COMMAND ${HEELRULE_PAGE_CXX} --target=wasm32-wasi -fno-exceptions ${trial}.cpp -o ${trial}.wasm
    RESULT_VARIABLE failed OUTPUT_QUIET ERROR_QUIET)
  if(failed EQUAL 0)
    set(${found} TRUE PARENT_SCOPE)
  endif()
endfunction()

# heelrule_page_headers(FOLDER): a folder with the headers of libraries that are headers alone. The
# system's own folder holds those of another machine's C library beside them.
function(heelrule_page_headers folder)
  set(made ${CMAKE_CURRENT_BINARY_DIR}/page/headers)
  file(MAKE_DIRECTORY ${made})
  get_target_property(fmt_folder fmt::fmt-header-only INTERFACE_INCLUDE_DIRECTORIES)
  get_target_property(fast_float_folder FastFloat::fast_float INTERFACE_INCLUDE_DIRECTORIES)
  file(CREATE_LINK ${fmt_folder}/fmt ${made}/fmt SYMBOLIC)
  file(CREATE_LINK ${fast_float_folder}/fast_float ${made}/fast_float SYMBOLIC)
  find_path(HEELRULE_BOOST_HEADERS boost/version.hpp)
  mark_as_advanced(HEELRULE_BOOST_HEADERS)
  if(HEELRULE_BOOST_HEADERS)
    file(CREATE_LINK ${HEELRULE_BOOST_HEADERS}/boost ${made}/boost SYMBOLIC)
  endif()
  # Boost.Math asks for a lock even where there are no threads; this one has nothing to lock.
  set(alone ${CMAKE_CURRENT_BINARY_DIR}/page/alone)
  file(WRITE ${alone}/boost/smart_ptr/detail/lightweight_mutex.hpp "#pragma once
namespace boost::detail {
struct lightweight_mutex {
  struct scoped_lock { explicit scoped_lock(lightweight_mutex&) {} };
};
}
")
  set(${folder} ${made} PARENT_SCOPE)
endfunction()

# What a page has no use for: files, draws of doubtful readings, other layouts, and what would bring a library
# with it. The linker leaves out the rest that is not reached; what is listed here need not be compiled first, and
# is taken off the list when the linker misses it.
set(heelrule_page_floors quantity source model fitting reading formula scoring doubt report recording page)
set(heelrule_page_leaves_out
  "quantity/(deviate|random_)"
  "reading/(csv_|json_lines|json_scanner|line_|load_|plain_value|quick_json|quoted_text|read_marking|row_filler|written_value|yaml_)"
  "doubt/(doubt|draws|effect_sums|linear|sensitivity|tally)\\."
  "report/(.*_(data|page|ruler|text)|agreement_|class_|fault_line|fill_template|finding_lines|finding_table|fitting_json|fitting_names)"
  "report/(mark_|named_measure|page_frame|page_quotes|pass_|ratings_|recorded_words|report_|rule_proposal|safety_parts|school_)"
  "report/(text_|then_and_now|verdict_lines|verdict_table|verdict_words|without_client|wrap)"
  "recording/(blank_|dialogue|draft|field|journal_|paper_|place_names|record_yaml|typed_)")

# heelrule_page_module(TARGET): makes the module of the sources of TARGET.
function(heelrule_page_module target)
  if(HEELRULE_PAGE STREQUAL "OFF")
    return()
  endif()
  heelrule_page_compiler(can_build)
  if(NOT can_build AND HEELRULE_PAGE STREQUAL "ON")
    message(FATAL_ERROR "no compiler for wasm32-wasi: install clang-19 lld-19 wasi-libc libc++-19-dev-wasm32 "
      "libclang-rt-19-dev-wasm32, or give -DHEELRULE_PAGE=OFF")
  elseif(NOT can_build)
    return()
  endif()

  heelrule_page_headers(headers)
  set(flags --target=wasm32-wasi -std=c++20 -Os -fno-exceptions -fno-rtti -ffp-contract=off -fvisibility=hidden
    -ffunction-sections -fdata-sections -DNDEBUG -DFMT_HEADER_ONLY "-DFMT_STATIC_THOUSANDS_SEPARATOR=','" -DBOOST_DISABLE_THREADS -DBOOST_SP_DISABLE_THREADS
    -I${PROJECT_SOURCE_DIR} -isystem ${CMAKE_CURRENT_BINARY_DIR}/page/alone -isystem ${headers})
  list(JOIN heelrule_page_floors "|" floors)
  list(JOIN heelrule_page_leaves_out "|" leaves_out)
  get_target_property(sources ${target} SOURCES)
  list(FILTER sources INCLUDE REGEX "^(${floors})/.*\\.cpp$")
  list(FILTER sources EXCLUDE REGEX "^(${leaves_out})")
  set(objects "")
  foreach(source IN LISTS sources)
    set(object ${CMAKE_CURRENT_BINARY_DIR}/page/${source}.o)
    cmake_path(GET object PARENT_PATH folder)
    file(MAKE_DIRECTORY ${folder})
    add_custom_command(OUTPUT ${object}
      COMMAND ${CMAKE_CXX_COMPILER_LAUNCHER} ${HEELRULE_PAGE_CXX} ${flags} -MD -MF ${object}.d
        -c ${CMAKE_CURRENT_SOURCE_DIR}/${source} -o ${object}
      DEPENDS ${source}
      DEPFILE ${object}.d
      COMMENT "Compiling ${source} for pages" VERBATIM)
    list(APPEND objects ${object})
  endforeach()

  set(module ${CMAKE_CURRENT_BINARY_DIR}/page/heelrule.wasm)
  add_custom_command(OUTPUT ${module}
    COMMAND ${HEELRULE_PAGE_CXX} --target=wasm32-wasi -mexec-model=reactor -Os ${objects} -o ${module}
      -Wl,--strip-all -Wl,--gc-sections -Wl,-z,stack-size=1048576
    DEPENDS ${objects}
    COMMENT "Linking the engine for pages" VERBATIM)
  set(HEELRULE_PAGE_MODULE ${module} PARENT_SCOPE)
endfunction()
