# heelrule_embed(TARGET FUNCTION FILE): makes FILE part of TARGET. Whoever wants it declares
#   namespace heelrule { std::string_view FUNCTION(); }
# and gets its bytes as they were when TARGET was built.
function(heelrule_embed target function file)
  cmake_path(ABSOLUTE_PATH file BASE_DIRECTORY ${CMAKE_CURRENT_SOURCE_DIR})
  set(made ${CMAKE_CURRENT_BINARY_DIR}/embedded/${function}.cpp)
  add_custom_command(OUTPUT ${made}
    COMMAND ${CMAKE_COMMAND} -DFUNCTION=${function} -DFILE=${file} -DMADE=${made} -P ${CMAKE_CURRENT_FUNCTION_LIST_FILE}
    DEPENDS ${file} ${CMAKE_CURRENT_FUNCTION_LIST_FILE}
    COMMENT "Embedding ${file}" VERBATIM)
  target_sources(${target} PRIVATE ${made})
endfunction()

if(CMAKE_SCRIPT_MODE_FILE)
  file(READ ${FILE} digits HEX)
  string(REGEX REPLACE "(................................................................)" "\\1\n" digits "${digits}")
  string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${digits}")
  # An empty file still makes an array, which has a last byte that is not part of the text.
  file(WRITE ${MADE} "#include <string_view>
namespace heelrule {
std::string_view ${FUNCTION}();
namespace {
constexpr unsigned char bytes[] = {
${bytes}0};
}
std::string_view ${FUNCTION}() {
  return {reinterpret_cast<const char*>(bytes), sizeof bytes - 1};
}
}  // namespace heelrule
")
endif()
