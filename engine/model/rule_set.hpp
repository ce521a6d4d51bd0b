// House rules, as written: every file that they build on joined, every value read, nothing
// cross-checked yet.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/change.hpp"
#include "engine/model/rule.hpp"
#include "engine/model/text.hpp"
#include "engine/model/trait.hpp"

namespace heelrule {

struct Section {
  Located<std::string> name;
  Text title;
  double order = 0;  ///< sections are shown by this, then as written

  bool operator==(const Section&) const = default;
};

/// A question that comes before everything else. It is a yes/no trait too.
struct SafetyQuestion {
  std::size_t trait = 0;  ///< index in `RuleSet::traits`
  Text referral;          ///< what is said where the answer is yes

  bool operator==(const SafetyQuestion&) const = default;
};

struct Grade {
  Located<std::string> name;
  Located<double> from;      ///< the lowest score, in thousandths of a point
  bool from_unread = false;  ///< it is missing or was not understood; that has been reported
  Text means;

  bool operator==(const Grade&) const = default;
};

/// A usual caution, at the foot of every report.
struct UsualCaution {
  std::string name;
  Text words;

  bool operator==(const UsualCaution&) const = default;
};

/// How findings are decided where readings are in doubt (JCGM 106:2012, clause 8).
struct DecisionRule {
  double clear_from = 0.95;  ///< a finding that is surer than this is called clear; 0.5 to 1
  double guard = 0;  ///< of rules that protect: width of the guard band in standard uncertainties

  bool operator==(const DecisionRule&) const = default;
};

/// What the page that a client takes home says beyond the findings.
struct ClientPage {
  bool score = false;                 ///< whether it shows the score
  std::optional<Quantity> come_back;  ///< the time after which to measure again; above 0

  bool operator==(const ClientPage&) const = default;
};

struct RuleSet {
  std::string name;  ///< by which it was asked for
  Span where;        ///< the start of its file
  Text title;
  std::string edition;
  Text about;
  std::vector<std::string> languages;  ///< first choice first; empty: plain texts only
  std::vector<Section> sections;       ///< in the order in which they are shown
  std::vector<Trait> traits;           ///< the safety questions first
  std::vector<SafetyQuestion> safety;
  std::vector<Rule> rules;
  std::vector<Grade> grades;  ///< best first
  std::vector<UsualCaution> cautions;
  DecisionRule decision;
  ClientPage client;
  std::vector<Change> changes;  ///< of a pair, that the house knows; at most `most_changes`

  bool operator==(const RuleSet&) const = default;

  /// The name without folders and `.yaml`, as records give it.
  std::string_view short_name() const;

  /// The index of the trait, section or grade of this name, if there is one.
  std::optional<std::size_t> find_trait(std::string_view trait_name) const;
  std::optional<std::size_t> find_section(std::string_view section_name) const;
  std::optional<std::size_t> find_grade(std::string_view grade_name) const;
};

}  // namespace heelrule
