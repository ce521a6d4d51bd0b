# join_scripts.cmake: cmake -DFILES=A.js,B.js -DMADE=sheet.js -P join_scripts.cmake
#
# Makes one module of several: a page that loads nothing has no address to import from. Later files
# use what earlier ones export. Beside MADE stands its SHA-256 in hexadecimal digits, MADE.sha256, by
# which the page's policy knows its script.
string(REPLACE "," ";" files "${FILES}")
set(joined "")
foreach(file IN LISTS files)
  file(READ ${file} text)
  # A list in CMake ends at a semicolon and pairs brackets, so nothing here may be taken for a list.
  string(REGEX REPLACE "(^|\n)import [^\n]*" "\\1" text "${text}")
  string(REGEX REPLACE "\nexport " "\n" text "${text}")
  string(APPEND joined "${text}")
endforeach()
file(WRITE ${MADE} "${joined}")
file(SHA256 ${MADE} digest)
file(WRITE ${MADE}.sha256 "${digest}")
