// A file that one program at a time may write to.
#pragma once

#include <string>

#include "cli/descriptor.hpp"
#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// What opening came to.
struct LockedFile {
  Descriptor file;    ///< open for reading and writing at its end; closed if it could not be had
  bool busy = false;  ///< another program has it
  Problem problem;    ///< empty if the file is open; of a busy one the caller knows more
};

/// Opens a regular file, made if it is not there, readable by its owner alone, and locks it until
/// it is closed. A program that is killed leaves no lock behind. Links are not followed.
LockedFile open_locked(const std::string& path);

/// Sees that a name that was made, changed or taken away in the folder of `path` lasts. 0, or the
/// `errno` of the failure.
int settle_folder_of(const std::string& path);

}  // namespace heelrule
