// What the fuzz targets share: a text from bytes, and what must hold for all that is said of it.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

#include "engine/source/show_diagnostic.hpp"

namespace heelrule {

inline std::string fuzzed_text(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

inline void must(bool holds) {
  if (!holds) {
    std::abort();
  }
}

inline void must_lie_inside(Span where, const Sources& sources) {
  must(where.source < sources.size());
  must(where.begin <= where.end && where.end <= sources.text(where.source).size());
}

/// A value is there unless an error says why not; each place lies in its text; and all of it can be
/// shown.
inline void must_be_explained(bool has_value, const Diagnostics& diagnostics,
                              const Sources& sources) {
  must(has_value != diagnostics.has_errors());
  for (const Diagnostic& diagnostic : diagnostics.by_place()) {
    must(!diagnostic.message.empty());
    must_lie_inside(diagnostic.where, sources);
    for (const Note& note : diagnostic.notes) {
      must_lie_inside(note.where, sources);
    }
  }
  must(show(diagnostics, sources).empty() == diagnostics.empty());
}

}  // namespace heelrule
