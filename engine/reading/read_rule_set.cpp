#include "engine/reading/read_rule_set.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <initializer_list>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/nearest.hpp"
#include "engine/reading/map_reader.hpp"
#include "engine/reading/parse_share.hpp"
#include "engine/reading/read_change.hpp"
#include "engine/reading/read_rule.hpp"
#include "engine/reading/read_text.hpp"
#include "engine/reading/read_trait.hpp"

namespace heelrule {
namespace {

constexpr double widest_guard = 10;

constexpr std::string_view grades_sample =
    "{sound: {from: 50, means: …}, unfit: {from: 0, means: …}}";

class RuleSetReader {
 public:
  RuleSetReader(const std::string& name, const Node& tree, Diagnostics& diagnostics)
      : map_(tree, start_of(tree), "a rule set", diagnostics), diagnostics_(diagnostics) {
    rules_.name = name;
    rules_.where = start_of(tree);
  }

  RuleSet read() {
    map_.take("heelrule");  // has been checked, of each file
    rules_.title = require_text(map_, "title", "Fit of the shoe on the loaded foot");
    rules_.edition = map_.text("edition").value;
    rules_.about = take_text(map_, "about");
    read_languages();
    map_.take("extends");  // dealt with when the files were joined
    map_.take("drop");
    read_sections();
    read_safety_and_traits();
    each_entry("rules", [&](const Entry& entry) {
      if (is_whole("rules", entry, {"reads", "bands", "levels"})) {
        rules_.rules.push_back(read_rule(entry.key, entry.value, diagnostics_));
      }
    });
    read_grades();
    each_entry("cautions", [&](const Entry& entry) {
      check_name(entry.key, "caution", diagnostics_);
      rules_.cautions.push_back(
          {entry.key.value, read_text(entry.value, entry.key.value, diagnostics_)});
    });
    read_decision();
    read_client();
    read_changes();
    map_.finish();
    return std::move(rules_);
  }

 private:
  static Span start_of(const Node& tree) {
    return {tree.where.source, tree.where.begin, tree.where.begin};
  }

  template <class Function>
  void each_entry(std::string_view key, Function function) {
    const Node* node = map_.take(key);
    if (node == nullptr) {
      return;
    }
    if (!node->is_map()) {
      diagnostics_.error(node->where,
                         fmt::format("`{}` is a map from name to content, and this is {}", key,
                                     in_words(node->kind)),
                         "write each name on a line of its own, indented");
      return;
    }
    for (const Entry& entry : node->entries) {
      function(entry);
    }
  }

  // A rule or trait that has none of the keys that make one is a change to something inherited,
  // under a name that nothing inherited has.
  bool is_whole(std::string_view list, const Entry& entry,
                std::initializer_list<std::string_view> keys) {
    const bool fragment = entry.value.is_map() && !entry.value.entries.empty() &&
                          !entry.value.in_part &&
                          std::none_of(keys.begin(), keys.end(), [&](std::string_view key) {
                            Nearest nearest(key);
                            for (const Entry& inner : entry.value.entries) {
                              nearest.offer(inner.key.value);
                            }
                            return nearest.found();
                          });
    if (!fragment) {
      return true;
    }
    Nearest nearest(entry.key.value);
    for (const Entry& other : map_.take(list)->entries) {
      if (&other != &entry) {
        nearest.offer(other.key.value);
      }
    }
    diagnostics_.error(
        entry.key.where,
        fmt::format("there is no `{}.{}` to change, and this is no whole one", list,
                    entry.key.value),
        nearest.found()
            ? nearest.question()
            : fmt::format("name one that is there, or add `{}` and the rest", *keys.begin()));
    return false;
  }

  void read_client() {
    const Node* node = map_.take("client");
    if (node == nullptr) {
      return;
    }
    MapReader map(*node, node->where, "what a client is told", diagnostics_);
    rules_.client.score = map.yes_or_no("score");
    read_come_back(map.text("come_back"));
    map.finish();
  }

  void read_come_back(const Located<std::string>& text) {
    if (text.value.empty()) {
      return;
    }
    const auto time = parse_quantity_in(text.value, Unit::month);
    if (!time) {
      diagnostics_.error(text.where, time.problem());
    } else if (time->stored <= 0) {
      diagnostics_.error(text.where, "a client comes back later, and not before or at once",
                         "write a time above 0, such as `12 months`");
    } else {
      rules_.client.come_back = *time;
    }
  }

  void read_languages() {
    const Node* node = map_.take("languages");
    if (node == nullptr) {
      return;
    }
    if (!node->is_list()) {
      diagnostics_.error(node->where, "`languages` is a list of language tags",
                         "write `languages: [en, es]`");
      return;
    }
    for (const Node& item : node->items) {
      const Located<std::string> tag = read_plain_text(item, "language", diagnostics_);
      if (is_language_tag(tag.value)) {
        rules_.languages.push_back(tag.value);
      } else if (item.is_text()) {
        diagnostics_.error(tag.where, fmt::format("`{}` is no language tag", tag.value),
                           "write a tag such as `en`, `es` or `pt-BR`");
      }
    }
  }

  void read_sections() {
    each_entry("sections", [&](const Entry& entry) {
      check_name(entry.key, "section", diagnostics_);
      MapReader map(entry.value, entry.key.where, "a section", diagnostics_);
      Section section;
      section.name = entry.key;
      section.title = require_text(map, "title", "Fit on the standing foot");
      section.order = map.number("order", 0);
      map.finish();
      rules_.sections.push_back(std::move(section));
    });
    std::stable_sort(rules_.sections.begin(), rules_.sections.end(),
                     [](const Section& a, const Section& b) { return a.order < b.order; });
  }

  void read_safety_and_traits() {
    each_entry("safety", [&](const Entry& entry) {
      SafetyEntry safety = read_safety(entry.key, entry.value, diagnostics_);
      rules_.safety.push_back({rules_.traits.size(), std::move(safety.referral)});
      rules_.traits.push_back(std::move(safety.trait));
    });
    each_entry("traits", [&](const Entry& entry) {
      if (const auto known = rules_.find_trait(entry.key.value)) {
        diagnostics_.error(entry.key.where,
                           fmt::format("`{}` is a safety question already", entry.key.value),
                           "give the trait another name",
                           {{rules_.traits[*known].where, "the safety question is here"}});
        rules_.traits[*known].kind = UnreadKind{};  // which of the two is read stays open
      }
      if (is_whole(
              "traits", entry,
              {"ask", "measure", "scale", "answer", "choice", "content", "marked", "derive"})) {
        rules_.traits.push_back(read_trait(entry.key, entry.value, diagnostics_));
      } else {
        Trait unread;  // so that what reads it is not reported too
        unread.name = entry.key.value;
        unread.where = entry.key.where;
        rules_.traits.push_back(std::move(unread));
      }
    });
  }

  void read_grades() {
    const Node* node = map_.require("grades", grades_sample);
    if (node == nullptr) {
      return;
    }
    if (node->is_map() && node->entries.empty()) {
      diagnostics_.error(node->where, "`grades` needs at least one grade",
                         fmt::format("write `grades: {}`", grades_sample));
    }
    each_entry("grades", [&](const Entry& entry) {
      check_name(entry.key, "grade", diagnostics_);
      MapReader map(entry.value, entry.key.where, "a grade", diagnostics_);
      Grade grade;
      grade.name = entry.key;
      read_boundary(map, grade);
      grade.means = require_text(map, "means", "what a client should make of it");
      map.finish();
      rules_.grades.push_back(std::move(grade));
    });
  }

  void read_boundary(MapReader& map, Grade& grade) {
    const Located<std::string> from = map.required_text("from", "80");
    grade.from.where = from.where;
    grade.from_unread = true;
    if (from.value.empty()) {
      return;
    }
    const auto number = parse_decimal(from.value);
    if (!number) {
      diagnostics_.error(from.where, number.problem());
    } else if (number->exponent < -3 || scaled(*number) < 0 || scaled(*number) > 100) {
      diagnostics_.error(from.where,
                         fmt::format("`{}` is no score for a grade to begin at", from.value),
                         "write a number from 0 to 100, with at most three decimals");
    } else {
      grade.from.value = scaled(*number, 1, 3);
      grade.from_unread = false;
    }
  }

  void read_changes() {
    each_entry("changes", [&](const Entry& entry) {
      if (rules_.changes.size() == most_changes) {
        diagnostics_.error(entry.key.where,
                           fmt::format("a rule set names up to {} changes", most_changes),
                           "leave out those that are seldom made");
      }
      rules_.changes.push_back(read_change(entry.key, entry.value, rules_, diagnostics_));
    });
  }

  void read_decision() {
    const Node* node = map_.take("decision");
    if (node == nullptr) {
      return;
    }
    MapReader map(*node, node->where, "a decision rule", diagnostics_);
    if (const Located<std::string> clear = map.text("clear_from"); !clear.value.empty()) {
      read_clear_from(clear);
    }
    if (const Located<std::string> guard = map.text("guard"); !guard.value.empty()) {
      read_guard(guard);
    }
    map.finish();
  }

  void read_clear_from(const Located<std::string>& text) {
    const auto share = parse_share(text.value);
    if (!share) {
      diagnostics_.error(text.where, share.problem());
    } else if (*share < 0.5 || *share >= 1) {
      diagnostics_.error(text.where,
                         fmt::format("`{}` parts nothing clear from what is in doubt", text.value),
                         "write a chance from 50 % to below 100 %, such as `95 %`");
    } else {
      rules_.decision.clear_from = *share;
    }
  }

  void read_guard(const Located<std::string>& text) {
    const auto number = parse_decimal(text.value);
    if (!number) {
      diagnostics_.error(text.where, number.problem());
    } else if (scaled(*number) < 0 || scaled(*number) > widest_guard) {
      diagnostics_.error(text.where, fmt::format("`{}` is no width of a guard band", text.value),
                         "write a number of standard uncertainties from 0 to 10, such as `1.645`");
    } else {
      rules_.decision.guard = scaled(*number);
    }
  }

  MapReader map_;
  Diagnostics& diagnostics_;
  RuleSet rules_;
};

}  // namespace

RuleSet read_rule_set(const std::string& name, const Node& tree, Diagnostics& diagnostics) {
  return RuleSetReader(name, tree, diagnostics).read();
}

}  // namespace heelrule
