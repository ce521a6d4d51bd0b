// What is wrong with one line of many.
#pragma once

#include "engine/source/diagnostic.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// The faults of a line, with the line itself as their only source, numbered as in its file.
struct LineFault {
  Sources sources;
  Diagnostics diagnostics;
};

}  // namespace heelrule
