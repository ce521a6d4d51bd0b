#include "engine/source/diagnostic.hpp"

#include <algorithm>

namespace heelrule {

void Diagnostics::error(Span where, std::string message, std::string hint,
                        std::vector<Note> notes) {
  found_.push_back({Severity::error, where, std::move(message), std::move(hint), std::move(notes)});
  ++errors_;
}

void Diagnostics::warning(Span where, std::string message, std::string hint,
                          std::vector<Note> notes) {
  found_.push_back(
      {Severity::warning, where, std::move(message), std::move(hint), std::move(notes)});
}

std::vector<Diagnostic> Diagnostics::by_place() const {
  std::vector<Diagnostic> sorted = found_;
  std::stable_sort(sorted.begin(), sorted.end(), [](const Diagnostic& a, const Diagnostic& b) {
    return std::pair(a.where.source, a.where.begin) < std::pair(b.where.source, b.where.begin);
  });
  sorted.erase(std::unique(sorted.begin(), sorted.end()), sorted.end());
  return sorted;
}

Problem Diagnostics::first_error() const {
  for (const Diagnostic& diagnostic : by_place()) {
    if (diagnostic.severity == Severity::error) {
      return {diagnostic.message, diagnostic.hint};
    }
  }
  return {};
}

}  // namespace heelrule
