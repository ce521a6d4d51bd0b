// For whom a page is made.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace heelrule {

enum class ReportReader : std::uint8_t {
  assessor,  ///< everything, with reasons, sources, and how each number came about
  student,   ///< what was seen, what was missed, and how to take it next time
  client,    ///< one sheet in plain words, to take home
};

/// `assessor`, `student`, `client`.
std::string_view in_words(ReportReader reader);

/// The reader of that name, if there is one.
std::optional<ReportReader> find_reader(std::string_view name);

}  // namespace heelrule
