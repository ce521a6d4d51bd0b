// A name that nothing has.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "engine/source/diagnostic.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

/// Reports that there is no `kind` (`section`) of this name, and asks for the nearest of `known`,
/// or lists them where they are few. Says nothing of an empty name, whose absence has been
/// reported.
void report_unknown(const Located<std::string>& name, std::string_view kind,
                    std::span<const std::string_view> known, Diagnostics& diagnostics);

}  // namespace heelrule
