// Part of the scorer that is written by hand (see hand_writer.hpp): the grade and the scores.
#pragma once

#include <algorithm>
#include <string>

#include "hand_judge.hpp"

namespace thirty {

using heelrule::append_json_text;

inline Text name_of(int grade) { return grades[static_cast<std::size_t>(grade)].name; }

class GradeWriter {
 public:
  void begin(const Judged& judged, std::string& line) {
    judged_ = &judged;
    line_ = &line;
  }

  int lowest() const { return lowest_; }
  int highest() const { return highest_; }
  bool stands() const { return stands_; }

  void grade() {
    names(true);
    put(R"(,"certainty":")");
    certainty();
    put(R"(","caps":")");
    if (grade_ != uncapped_) {
      caps(uncapped_);
    }
    put(R"("})");
  }

  // What short lines have of it.
  void grade_names() {
    names(false);
    put("}");
  }

  void score(double earned, double weight, double open) {
    points(earned, weight, open);
    put(R"(,"weight_seen":)");
    put(weight / 1000);
    put(R"(,"weight_open":)");
    put(open / 1000);
    put("}");
  }

  // A score, up to its weights.
  void points(double earned, double weight, double open) {
    const double all = weight + open;
    const double lowest = all > 0 ? earned / all / 10'000 : 0;
    number_.clear();
    if (weight > 0) {
      append_shortest(number_, earned / weight / 10'000);
    }
    put(R"({"points":)");
    put(weight > 0 ? Text(number_) : "null");
    put(R"(,"lowest":)");
    if (open == 0 && weight > 0) {
      put(number_);
      put(R"(,"highest":)");
      put(number_);
    } else {
      put(lowest);
      put(R"(,"highest":)");
      put(all > 0 ? (earned + open * 1e6) / all / 10'000 : 100.0);
    }
  }

 private:
  void names(bool with_means) {
    uncapped_ = grade_of(judged_->earned, judged_->weight);
    grade_ = std::max(uncapped_, judged_->cap);
    const double all = judged_->weight + judged_->open;
    lowest_ = std::max(grade_of(judged_->earned, all), judged_->open_cap);
    highest_ = std::max(grade_of(judged_->earned + judged_->open * 1e6, all), judged_->cap);
    stands_ = lowest_ == highest_ && judged_->open_musts == 0;
    put(R"({"name":)");
    put_text(name_of(grade_));
    if (with_means) {
      put(R"(,"means":)");
      put_text(grades[static_cast<std::size_t>(grade_)].means);
    }
    put(stands_ ? R"(,"stands":true,"by_score_alone":)" : R"(,"stands":false,"by_score_alone":)");
    put_text(name_of(uncapped_));
    put(R"(,"worst_possible":)");
    put_text(name_of(lowest_));
    put(R"(,"best_possible":)");
    put_text(name_of(highest_));
  }

  void put(Text text) { line_->append(text); }
  void put(double number) { append_shortest(*line_, number); }
  void put_text(Text text) { append_json_text(*line_, text); }

  static int grade_of(double earned, double weight) {
    int grade = 0;
    while (earned < grades[static_cast<std::size_t>(grade)].from * 1e4 * weight) {
      ++grade;
    }
    return grade;
  }

  void certainty() {
    if (stands_) {
      put(judged_->open > 0 ? "The grade stands, whatever was not seen."
                            : "The grade stands: all that counts was seen.");
    } else if (lowest_ == highest_) {
      put("The grade is provisional: a must was not seen. Even so, it can only come out as ");
      put(name_of(lowest_));
      put(".");
    } else {
      put("The grade is provisional: with what was not seen it can still become ");
      for (int i = highest_; i <= lowest_; ++i) {
        put(i == highest_ ? "" : i == lowest_ ? " or " : ", ");
        put(name_of(i));
      }
      put(".");
    }
  }

  void caps(int uncapped) {
    put("The score alone would give ");
    put(name_of(uncapped));
    int failed = 0;
    for (std::size_t i = 0; i < rule_count; ++i) {
      failed += rules[i].cap > uncapped && judged_->results[i].credit == 0 ? 1 : 0;
    }
    put(failed == 1 ? ", but a must failed: " : ", but musts failed: ");
    Text joint;
    for (std::size_t i = 0; i < rule_count; ++i) {
      if (rules[i].cap > uncapped && judged_->results[i].credit == 0) {
        put(joint);
        joint = "; ";
        put(trait_of(i).title);
        put(" (at best ");
        put(name_of(rules[i].cap));
        put(")");
      }
    }
    put(".");
  }

  int grade_ = 0;
  int uncapped_ = 0;
  int lowest_ = 0;
  int highest_ = 0;
  bool stands_ = false;
  std::string number_;
  std::string* line_ = nullptr;
  const Judged* judged_ = nullptr;
};

}  // namespace thirty
