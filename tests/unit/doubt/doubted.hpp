// A rule set and a record as text, graded, and how sure that is.
#pragma once

#include <string>

#include "engine/doubt/doubt.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {

struct Doubted : Graded {
  Doubt doubt;
};

inline Doubted doubted(const std::string& rules, const std::string& found) {
  Graded sample = graded(rules, "inspection: {rules: house}\nfound: " + found + "\n");
  Doubt doubt = doubt_of(sample.program, sample.inspection, sample.verdict);
  return {std::move(sample), std::move(doubt)};
}

/// One trait and one rule for each line of `traits`: `name: {trait}` and bands for it. Grades from
/// 80 and 50.
inline std::string house(const std::string& traits, const std::string& rules,
                         const std::string& more = "") {
  return "title: House\nsections: {fit: {title: Fit}}\ntraits:\n" + traits + "rules:\n" + rules +
         more +
         "grades: {sound: {from: 80, means: Keep.}, usable: {from: 50, means: Mend.}, unfit: "
         "{from: 0, means: Leave.}}\n";
}

/// A rule `name` that judges the trait of that name.
inline std::string rule(const std::string& name, const std::string& weight,
                        const std::string& credit, const std::string& more = "") {
  return "  " + name + ": {section: fit, weight: " + weight + ", reads: " + name + ", " + credit +
         ", because: It has to, source: common practice" + more + "}\n";
}

}  // namespace heelrule
