// Writing whole files: all of it, or nothing.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// What becomes of a file that is there already.
enum class Existing : std::uint8_t { keep, replace };

/// Writes `text` beside `path`, settles it on the disk, and gives it its name at the end: whoever
/// reads `path` finds the old content or the new one, and never a part. Only the owner may read a
/// new file, for records are health data; one that is replaced keeps its permissions. The problem
/// names the path and the reason, and is empty where all went well.
Problem write_file(const std::string& path, std::string_view text, Existing existing);

/// Why `path` cannot be the name of a file to write: it is there already and is to be kept, a link,
/// or no regular file. Empty if it can.
Problem refuse_target(const std::string& path, Existing existing);

/// Makes a folder that only its owner may look into; nothing to do where there is one.
Problem make_folder(const std::string& path);

/// Whether there is a folder of that name.
bool is_folder(const std::string& path);

}  // namespace heelrule
