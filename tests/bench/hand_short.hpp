// Part of the scorer that is written by hand (see hand_writer.hpp): short lines, with what failed
// or without.
#pragma once

#include <array>
#include <string>

#include "hand_grade.hpp"
#include "hand_sentence.hpp"

namespace thirty {

class ShortWriter {
 public:
  explicit ShortWriter(Text rules_name, bool tells_failed) : tells_failed_(tells_failed) {
    opening_ = R"({"format":"heelrule verdict","version":1,"rules":{"name":)" + quoted(rules_name) +
               R"(,"title":"Thirty rules for timings","edition":""},"inspection":{"date":)";
    for (std::size_t i = 0; i < rule_count; ++i) {
      prepare(rules[i], words_[i]);
      const std::string head = R"({"rule":)" + quoted(trait_of(i).name);
      const auto spoken = [&](Text text) {
        return text.empty() ? std::string{} : head + R"(,"words":)" + quoted(text) + "},";
      };
      findings_[i] = head + R"(,"status":")";
      cautions_[i] = spoken(rules[i].caution);
      referrals_[i] = spoken(rules[i].referral);
    }
  }

  void write(const Record& record, std::string& line) {
    line_ = &line;
    judged_.judge(record, words_);
    sentences_.begin(record, line);
    about(record);
    put(R"(,"referrals":[)");
    said(referrals_);
    put(R"(],"grade":)");
    grade_.begin(judged_, line);
    grade_.grade_names();
    put(R"(,"score":)");
    grade_.points(judged_.earned, judged_.weight, judged_.open);
    if (tells_failed_) {
      put(R"(},"findings":[)");
      findings();
      put(R"(],"cautions":[)");
    } else {
      put(R"(},"cautions":[)");
    }
    said(cautions_);
    put("]}\n");
  }

 private:
  using OfRules = std::array<std::string, rule_count>;

  void put(Text text) { line_->append(text); }
  void put_text(Text text) { append_json_text(*line_, text); }

  void about(const Record& record) {
    put(opening_);
    put_text(record.date);
    put(R"(,"observer":)");
    put_text(record.observer);
    put(R"(,"client":)");
    put_text(record.client);
    put(R"(,"shoe":)");
    put_text(record.shoe);
    bool refers = false;
    for (std::size_t i = 0; i < rule_count; ++i) {
      refers = refers || (!referrals_[i].empty() && judged_.speaks(i));
    }
    put(refers ? R"(,"marked":""},"see_practitioner_first":true,"safety":[])"
               : R"(,"marked":""},"see_practitioner_first":false,"safety":[])");
  }

  // Ends a list whose entries have a comma behind each.
  void end_list(std::size_t began) {
    if (line_->size() > began) {
      line_->pop_back();
    }
  }

  void said(const OfRules& all) {
    const std::size_t began = line_->size();
    for (std::size_t i = 0; i < rule_count; ++i) {
      if (!all[i].empty() && judged_.speaks(i)) {
        put(all[i]);
      }
    }
    end_list(began);
  }

  void findings() {
    const std::size_t began = line_->size();
    for (std::size_t i = 0; i < rule_count; ++i) {
      const double credit = judged_.results[i].credit;
      if (credit == 1e6) {
        continue;
      }
      put(findings_[i]);
      if (credit < 0) {
        put(R"(not seen","words":")");
        sentences_.needs(i);
      } else {
        put(credit == 0 ? R"(fail","words":")" : R"(part","words":")");
        if (trait_of(i).levels.empty()) {
          sentences_.sentence(i);
        } else {
          levels(i);
        }
      }
      put(R"("},)");
    }
    end_list(began);
  }

  void levels(std::size_t i) {
    const Result& result = judged_.results[i];
    const auto level = [&](std::size_t side) -> Text {
      return rules[i].bands[static_cast<std::size_t>(result.bands[side])].name;
    };
    if (!trait_of(i).has_sides) {
      put(level(0));
      return;
    }
    const bool left = result.credits[0] >= 0;
    const bool right = result.credits[1] >= 0;
    if (left && right && result.bands[0] == result.bands[1]) {
      put("both ");
      put(level(0));
      return;
    }
    put(left ? "left " : "");
    put(left ? level(0) : Text{});
    put(left && right ? ", " : "");
    put(right ? "right " : "");
    put(right ? level(1) : Text{});
  }

  bool tells_failed_;
  std::string opening_;
  OfRules findings_;
  OfRules cautions_;
  OfRules referrals_;
  Words words_;
  Judged judged_;
  GradeWriter grade_;
  Sentences sentences_{judged_, words_};
  std::string* line_ = nullptr;
};

}  // namespace thirty
