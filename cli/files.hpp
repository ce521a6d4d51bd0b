// Reading whole files, with limits.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// The content of a regular file of at most 4 MiB. The problem names the path and the reason.
Parsed<std::string> read_file(const std::string& path);

/// The folder that a file lies in, as its path says it; `.` where it says none.
std::string folder_of(std::string_view path);

/// The path with every link resolved; empty where there is no such file.
std::string real_path(const std::string& path);

/// The names in a folder, in order; none if it cannot be read.
std::vector<std::string> file_names(const std::string& folder);

/// Whether there is a regular file of that name.
bool is_regular_file(const std::string& path);

}  // namespace heelrule
