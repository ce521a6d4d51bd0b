// A small rule set to record against, with two sections and a safety question.
#pragma once

#include <string>

#include "tests/unit/report/graded.hpp"

namespace heelrule {

/// Its first trait is `worn`, a question to answer with yes or no; `traits` are the others in YAML,
/// indented by two blanks.
inline Program house_with(const std::string& traits) {
  return graded(R"(title: House
sections:
  look: {title: First look, order: 1}
  feet: {title: Feet, order: 2}
safety: {numb: {ask: "Numb?", referral: See somebody.}}
traits:
  worn: {ask: "Worn?", section: look, answer: yes or no}
)" + traits + R"(
rules:
  worn: {section: look, weight: 1, reads: worn, because: It counts., source: house choice,
         levels: {yes: 0, no: 100 %}}
grades: {sound: {from: 50, means: Keep it.}, unfit: {from: 0, means: Leave it.}}
)",
                "inspection: {rules: house}\n")
      .program;
}

}  // namespace heelrule
