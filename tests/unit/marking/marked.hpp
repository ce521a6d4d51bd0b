// A house, a reference and a record as text, and the mark that comes of them.
#pragma once

#include <string>
#include <vector>

#include "engine/marking/mark.hpp"
#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {

struct Marked {
  Program program;
  MarkingRules marking;
  Inspection record;
  Reference reference;
  Mark mark;

  /// The comparison of a trait and side. Precondition: there is one.
  const Comparison& of(std::string_view trait, Side side = Side::none) const {
    const std::size_t index = *program.rules.find_trait(trait);
    for (const Comparison& one : mark.comparisons) {
      const ReferenceItem& item = reference.items[one.item];
      if (item.trait == index && item.side == side) {
        return one;
      }
    }
    return mark.comparisons.at(mark.comparisons.size());
  }

  const ReferenceItem& item(std::string_view trait, Side side = Side::none) const {
    const std::size_t index = *program.rules.find_trait(trait);
    std::size_t at = 0;
    while (reference.items.at(at).trait != index || reference.items.at(at).side != side) {
      ++at;
    }
    return reference.items.at(at);
  }
};

/// An inspection whose parts after the head are `parts`: `found: {…}`.
inline Inspection recorded(const std::string& rules, const std::string& parts) {
  return graded(rules, "inspection: {rules: house}\n" + parts + "\n").inspection;
}

/// `marking` holds the keys of a marking file; empty: as usual.
inline Marked marked(const std::string& rules, const std::string& marking,
                     const std::vector<std::string>& references, const std::string& record) {
  Program program = graded(rules, "inspection: {rules: house}\nfound: {}\n").program;
  MarkingRules wanted = usual_marking_rules(program.rules);
  if (!marking.empty()) {
    Sources sources;
    const std::uint32_t source = sources.add("marks.yaml", marking);
    wanted = *load_marking_rules(sources, source, program.rules);
  }
  std::vector<Inspection> panel;
  for (const std::string& one : references) {
    panel.push_back(recorded(rules, one));
  }
  Inspection seen = recorded(rules, record);
  Reference reference = make_reference(program, wanted, panel);
  Mark mark = mark_record(program, wanted, reference, seen);
  return {std::move(program), std::move(wanted), std::move(seen), std::move(reference),
          std::move(mark)};
}

}  // namespace heelrule
