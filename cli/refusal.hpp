// Why a file is not read or written, in the words that all commands share.
#pragma once

#include <string>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// ``cannot write `page.html`: No space left on device``; `reason` is the `errno` of the failure.
Problem cannot_write(const std::string& path, int reason);

/// The path is a link, which is not followed.
Problem is_a_link(const std::string& path);

/// The path is a folder, a pipe or a device.
Problem is_no_file(const std::string& path);

}  // namespace heelrule
