// The limit to measure against: a scorer for the thirty rules and nothing else, written by hand,
// with the same parser and the same output.
//
// It shares with the engine the reader of records, and the writing of numbers and JSON texts; the
// rest knows its thirty traits and rules from `thirty_rules.hpp`,
// which thirty.py makes. What records.py does not make it does not know: it says so and stops.
#pragma once

#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

#include "hand_grade.hpp"
#include "hand_sentence.hpp"

namespace thirty {

// Writes verdicts.
class Writer {
 public:
  explicit Writer(Text rules_name) {
    opening_ = R"({"format":"heelrule verdict","version":1,"rules":{"name":)" + quoted(rules_name) +
               R"(,"title":"Thirty rules for timings","edition":""},)"
               R"("inspection":{"rules":"thirty","date":)";
    closing_ = R"(,"usual_cautions":[)";
    for (const Text caution : cautions) {
      closing_ += quoted(caution) + ",";
    }
    closing_ +=
        R"("This report follows house rules. Local codes and licensed practice come before them."]})"
        "\n";
    for (std::size_t i = 0; i < rule_count; ++i) {
      prepare(rules[i], words_[i]);
    }
  }

  void write(const Record& record, std::string& line) {
    line_ = &line;
    record_ = &record;
    judged_.judge(record, words_);
    sentences_.begin(record, line);
    about();
    safety_words();
    grade_.begin(judged_, line);
    grade_.grade();
    put(R"(,"score":)");
    grade_.score(judged_.earned, judged_.weight, judged_.open);
    for (std::size_t i = 0; i < sections.size(); ++i) {
      put(i == 0 ? R"(,"sections":[{"name":)" : R"(,{"name":)");
      put_text(sections[i][0]);
      put(R"(,"title":)");
      put_text(sections[i][1]);
      put(R"(,"score":)");
      grade_.score(judged_.section_earned[i], judged_.section_weight[i], judged_.section_open[i]);
      put("}");
    }
    put(R"(],"findings":[)");
    for (std::size_t i = 0; i < rule_count; ++i) {
      put(i == 0 ? "" : ",");
      finding(i);
    }
    said(R"(],"cautions":[)", [](const RuleWords& words) -> Text { return words.caution; });
    advice();
    settle();
    put(closing_);
  }

 private:
  void put(Text text) { line_->append(text); }
  void put(double number) { append_shortest(*line_, number); }
  void put_text(Text text) { append_json_text(*line_, text); }

  void about() {
    put(opening_);
    put_text(record_->date);
    put(R"(,"observer":)");
    put_text(record_->observer);
    put(R"(,"client":)");
    put_text(record_->client);
    put(R"(,"shoe":)");
    put_text(record_->shoe);
    put(R"(,"marked":"","note":""},)");
  }

  template <class Choose>
  void said(Text before, Choose choose) {
    put(before);
    Text comma;
    for (std::size_t i = 0; i < rule_count; ++i) {
      const Text words = choose(words_[i]);
      if (!words.empty() && judged_.speaks(i)) {
        put(comma);
        comma = ",";
        put(words);
        put(judged_.results[i].gain);
        put("}");
      }
    }
  }

  void safety_words() {
    bool refers = false;
    for (std::size_t i = 0; i < rule_count; ++i) {
      refers = refers || (!words_[i].referral.empty() && judged_.speaks(i));
    }
    refers_ = refers;
    put(refers ? R"("see_practitioner_first":true,"safety":[)"
               : R"("see_practitioner_first":false,"safety":[)");
    said(R"(],"referrals":[)", [](const RuleWords& words) -> Text { return words.referral; });
    put(R"(],"grade":)");
  }

  void finding(std::size_t i) {
    const Result& result = judged_.results[i];
    const RuleWords& words = words_[i];
    const TraitFacts& trait = trait_of(i);
    const int sides = trait.has_sides ? 2 : 1;
    put(words.head);
    put(result.credit < 0      ? "not seen"
        : result.credit == 0   ? "fail"
        : result.credit == 1e6 ? "pass"
                               : "part");
    put(R"(","weight":)");
    put(rules[i].weight);
    if (result.credit < 0) {
      put(R"(,"credit":null,"gain":null)");
    } else {
      put(R"(,"credit":)");
      put(result.credit / 1e6);
      put(R"(,"gain":)");
      put(result.gain);
    }
    put(words.must);
    if (result.credit == 0 && rules[i].cap > 0) {
      put_text(name_of(rules[i].cap));
    } else {
      put("null");
    }
    put(R"(,"readings":[)");
    Text comma;
    for (int side = 0; side < sides; ++side) {
      if (result.credits[static_cast<std::size_t>(side)] >= 0) {
        put(comma);
        comma = ",";
        reading(i, side);
      }
    }
    put(R"(],"missing":[)");
    const bool is_unseen = result.credit < 0;
    if (is_unseen) {
      missing(i);
    }
    put(R"(],"sentence":")");
    if (is_unseen) {
      sentences_.needs(i);
    } else if (trait.levels.empty()) {
      sentences_.sentence(i);
    }
    put(R"(")");
    put(words.reasons);
    notes(rules[i].trait);
    put("]}");
  }

  void reading(std::size_t i, int side) {
    const auto at = static_cast<std::size_t>(side);
    const TraitFacts& trait = trait_of(i);
    const BandWords& band = words_[i].bands[static_cast<std::size_t>(judged_.results[i].bands[at])];
    put(!trait.has_sides ? R"({"side":")" : side == 0 ? R"({"side":"left)" : R"({"side":"right)");
    if (!trait.levels.empty()) {
      put(band.reading);
      return;
    }
    number_.clear();
    append_shortest(number_, sentences_.value(i, side) / trait.per_unit);
    put(R"(","value":")");
    put(number_);
    sentences_.put_unit(sentences_.value(i, side), trait);
    put(R"(","number":)");
    put(number_);
    put(band.reading);
    if (band.toward != 0) {
      put(judged_.results[i].distances[at] / trait.per_unit);
    }
    put("}");
  }

  void missing(std::size_t i) {
    Text comma;
    sentences_.each_missing(i, [&](int trait, int side) {
      put(comma);
      comma = ",";
      put(R"({"trait":)");
      put_text(traits[static_cast<std::size_t>(trait)].name);
      put(side == 2 ? R"(,"side":""})" : side == 0 ? R"(,"side":"left"})" : R"(,"side":"right"})");
    });
  }

  void notes(int trait) {
    for (const auto& [noted, words] : record_->notes) {
      if (noted == trait) {
        put_text(words);
      }
    }
  }

  void advice() {
    order_.clear();
    for (std::size_t i = 0; i < rule_count; ++i) {
      if (!words_[i].advice.empty() && judged_.results[i].credit >= 0 &&
          judged_.results[i].credit < 1e6) {
        order_.push_back(i);
      }
    }
    const auto capped = [&](std::size_t i) {
      return rules[i].cap > 0 && judged_.results[i].credit == 0;
    };
    std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
      return std::pair(!capped(a), -judged_.results[a].gain) <
             std::pair(!capped(b), -judged_.results[b].gain);
    });
    put(R"(],"advice":[)");
    if (!refers_) {
      advice_list();
    }
    put(R"(],"advice_held_back":[)");
    if (refers_) {
      advice_list();
    }
  }

  void advice_list() {
    Text comma;
    for (const std::size_t i : order_) {
      put(comma);
      comma = ",";
      put(words_[i].advice);
      put(judged_.results[i].gain);
      put("}");
    }
  }

  void settle() {
    put(R"(],"would_settle":[)");
    if (!grade_.stands()) {
      order_.clear();
      for (std::size_t i = 0; i < rule_count; ++i) {
        if (judged_.results[i].credit < 0 &&
            (grade_.lowest() != grade_.highest() || rules[i].cap > 0)) {
          order_.push_back(i);
        }
      }
      std::stable_sort(order_.begin(), order_.end(), [](std::size_t a, std::size_t b) {
        return std::pair(rules[a].cap == 0, -rules[a].weight) <
               std::pair(rules[b].cap == 0, -rules[b].weight);
      });
      lacking_.clear();
      for (const std::size_t i : order_) {
        sentences_.each_missing(i, [&](int trait, int side) {
          if (std::find(lacking_.begin(), lacking_.end(), Sentences::Lacking{trait, side}) ==
              lacking_.end()) {
            lacking_.emplace_back(trait, side);
          }
        });
      }
      Text before = "\"";
      Sentences::questions(lacking_, [&](int trait, int side) {
        put(before);
        before = ",\"";
        sentences_.put_question(trait, side);
        put("\"");
      });
    }
    put("]");
  }

  std::string opening_;
  std::string closing_;
  Words words_;
  Judged judged_;
  GradeWriter grade_;
  Sentences sentences_{judged_, words_};
  bool refers_ = false;
  std::vector<std::size_t> order_;
  std::vector<Sentences::Lacking> lacking_;
  std::string number_;
  std::string* line_ = nullptr;
  const Record* record_ = nullptr;
};

}  // namespace thirty
