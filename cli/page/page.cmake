# The parts of the recording page, made part of the program.
set(page_scripts
  elements.js
  engine.js
  record.js
  keeping.js
  question.js
  tape.js
  reach.js
  verdict.js
  paper.js
  sheet.js
)
list(TRANSFORM page_scripts PREPEND ${CMAKE_CURRENT_LIST_DIR}/)
set(joined ${CMAKE_CURRENT_BINARY_DIR}/page/sheet.js)
file(MAKE_DIRECTORY ${CMAKE_CURRENT_BINARY_DIR}/page)
list(JOIN page_scripts "," page_script_names)
add_custom_command(OUTPUT ${joined} ${joined}.sha256
  COMMAND ${CMAKE_COMMAND} -DFILES=${page_script_names} -DMADE=${joined} -P ${CMAKE_CURRENT_LIST_DIR}/join_scripts.cmake
  DEPENDS ${page_scripts} ${CMAKE_CURRENT_LIST_DIR}/join_scripts.cmake
  COMMENT "Joining the scripts of the page" VERBATIM)
heelrule_embed(heelrule sheet_script ${joined})
heelrule_embed(heelrule sheet_script_digest ${joined}.sha256)
heelrule_embed(heelrule sheet_style ${CMAKE_CURRENT_LIST_DIR}/sheet.css)
heelrule_embed(heelrule sheet_template ${CMAKE_CURRENT_LIST_DIR}/sheet.mustache)

# Where there is no module, the program says so when it is asked for a page.
if(HEELRULE_PAGE_MODULE)
  heelrule_embed(heelrule sheet_module ${HEELRULE_PAGE_MODULE})
  add_dependencies(heelrule heelrule_page)
else()
  file(WRITE ${CMAKE_CURRENT_BINARY_DIR}/page/no_module "")
  heelrule_embed(heelrule sheet_module ${CMAKE_CURRENT_BINARY_DIR}/page/no_module)
endif()
