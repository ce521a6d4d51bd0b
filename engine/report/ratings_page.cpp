#include "engine/report/ratings_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/report/agreement_forest.hpp"
#include "engine/report/agreement_names.hpp"
#include "engine/report/agreement_words.hpp"
#include "engine/report/class_words.hpp"
#include "engine/report/fill_template.hpp"
#include "engine/report/page_data.hpp"
#include "engine/report/page_frame.hpp"
#include "engine/report/page_quotes.hpp"

namespace heelrule {

std::string_view ratings_page_template();

namespace {

class RatingsPage {
 public:
  RatingsPage(const RatingTable& table, const TableAgreement& agreement)
      : table_(table), agreement_(agreement) {}

  std::string write() {
    head();
    coefficients();
    levels();
    measurement();
    pairs();
    PageFrame frame;
    frame.title = "How far observers agree";
    frame.running_left = frame.title;
    frame.running_right =
        fmt::format("{} subjects · {} observers", table_.subjects.size(), table_.observers.size());
    frame.kind = "ratings";
    frame.body = *fill_template(ratings_page_template(), data_);
    return framed_page(frame);
  }

 private:
  void head() {
    const auto open = std::count_if(table_.cells.begin(), table_.cells.end(),
                                    [](double cell) { return std::isnan(cell); });
    data_.each("head", {fmt::format("{} subjects", table_.subjects.size()),
                        fmt::format("{} observers", table_.observers.size()),
                        fmt::format("ratings not made: {}", open)});
    for (const Remark& remark : agreement_.remarks) {
      data_.add("said").words("words", page_quotes(remark_words(remark, table_.levels)));
    }
  }

  void coefficients() {
    std::vector<IntervalRow> rows;
    for (const Coefficient& coefficient : agreement_.coefficients) {
      rows.push_back(forest_row(title_of(coefficient), coefficient.estimate));
      PageData& one = data_.add("coefficients");
      one.words("title", title_of(coefficient));
      one.words("figure", estimate_words(coefficient.estimate));
      one.words("says", page_quotes(meaning_words(coefficient)));
    }
    if (!rows.empty()) {
      data_.markup("forest", draw(agreement_forest("Coefficients of agreement", std::move(rows))));
    }
  }

  void levels() {
    data_.fact("has_levels", !table_.levels.empty());
    data_.fact("has_level_kappa",
               std::any_of(agreement_.levels.begin(), agreement_.levels.end(),
                           [](const LevelUse& use) { return !std::isnan(use.kappa); }));
    for (std::size_t i = 0; i < table_.levels.size(); ++i) {
      const LevelUse& use = agreement_.levels[i];
      PageData& row = data_.add("levels");
      row.words("level", table_.levels[i]);
      row.words("ratings", fmt::format("{:.0f}", use.count));
      row.words("share", share_words(use.share));
      row.words("kappa", figure_words(use.kappa));
    }
  }

  void measurement() {
    if (!agreement_.error) {
      return;
    }
    const MeasurementError& error = *agreement_.error;
    const auto add = [&](std::string_view title, const Estimate& estimate, std::string_view says) {
      PageData& one = data_.add("errors");
      one.words("title", title);
      one.words("figure", measured_words(estimate, ""));
      one.words("says", says);
    };
    data_.fact("has_errors", true);
    add("Technical error", error.technical, "How far readings of one subject scatter.");
    add("Standard error of measurement", error.agreement_error,
        "The same, where any observer may read any subject.");
    add("Smallest detectable change", error.agreement_change,
        "Two readings by two observers that differ by less may be of the same thing.");
  }

  void pairs() {
    bool any = false;
    for (const PairAgreement& pair : agreement_.pairs) {
      if (!pair.limits) {
        continue;
      }
      any = true;
      PageData& row = data_.add("pairs");
      row.words("pair", fmt::format("{} less {}", table_.observers[pair.first],
                                    table_.observers[pair.second]));
      row.words("bias", measured_words(pair.limits->bias, ""));
      row.words("limits", fmt::format("{} to {}", measured_words(pair.limits->low.value, ""),
                                      measured_words(pair.limits->high.value, "")));
    }
    data_.fact("has_pairs", any);
  }

  const RatingTable& table_;
  const TableAgreement& agreement_;
  PageData data_;
};

}  // namespace

std::string ratings_page(const RatingTable& table, const TableAgreement& agreement) {
  return RatingsPage(table, agreement).write();
}

}  // namespace heelrule
