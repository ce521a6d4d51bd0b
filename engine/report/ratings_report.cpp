#include "engine/report/ratings_report.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantity/decimal.hpp"
#include "engine/report/agreement_json.hpp"
#include "engine/report/agreement_names.hpp"
#include "engine/report/agreement_words.hpp"
#include "engine/report/text_page.hpp"

namespace heelrule {
namespace {

std::size_t rating_count(const RatingTable& table) {
  return static_cast<std::size_t>(std::count_if(table.cells.begin(), table.cells.end(),
                                                [](double cell) { return !std::isnan(cell); }));
}

void write_numbers(JsonWriter& json, std::string_view name, const std::vector<double>& values) {
  json.key(name).begin_array();
  for (const double value : values) {
    if (std::isfinite(value)) {
      json.number(value);
    } else {
      json.null();
    }
  }
  json.end_array();
}

class RatingsWriter {
 public:
  RatingsWriter(const RatingTable& table, const TableAgreement& agreement)
      : table_(table), agreement_(agreement) {}

  std::string write() {
    json_.begin_object();
    json_.text("format", "heelrule ratings").number("version", ratings_json_version);
    json_.number("subjects", static_cast<double>(table_.subjects.size()));
    json_.texts("observers", table_.observers);
    const std::size_t count = rating_count(table_);
    json_.number("ratings", static_cast<double>(count));
    json_.number("not_rated", static_cast<double>(table_.cells.size() - count));
    json_.text("kind", key_of(table_.kind));
    json_.number("confidence", confidence);
    said();
    json_.key("coefficients").begin_array();
    for (const Coefficient& coefficient : agreement_.coefficients) {
      write_coefficient(json_, coefficient);
    }
    json_.end_array();
    levels();
    subjects();
    pairs();
    numbers();
    json_.end_object();
    return json_.take() + "\n";
  }

 private:
  void said() {
    std::vector<std::string> lines;
    lines.reserve(agreement_.remarks.size());
    for (const Remark& remark : agreement_.remarks) {
      lines.push_back(remark_words(remark, table_.levels));
    }
    json_.texts("said", lines);
  }

  void levels() {
    json_.key("levels").begin_array();
    for (std::size_t i = 0; i < table_.levels.size(); ++i) {
      const LevelUse& use = agreement_.levels[i];
      json_.begin_object();
      json_.text("level", table_.levels[i]).number("ratings", use.count);
      json_.number("share", use.share);
      write_number(json_, "fleiss_kappa", use.kappa);
      json_.end_object();
    }
    json_.end_array();
  }

  void subjects() {
    json_.key("each_subject").begin_array();
    for (std::size_t i = 0; i < agreement_.subject_agreement.size(); ++i) {
      json_.begin_object().text("subject", table_.subjects[i]);
      write_number(json_, "agreement", agreement_.subject_agreement[i]);
      json_.end_object();
    }
    json_.end_array();
  }

  void pairs() {
    json_.key("pairs").begin_array();
    for (const PairAgreement& pair : agreement_.pairs) {
      one_pair(pair);
    }
    json_.end_array();
  }

  void one_pair(const PairAgreement& pair) {
    json_.begin_object();
    json_.text("first", table_.observers[pair.first]);
    json_.text("second", table_.observers[pair.second]);
    json_.number("subjects", pair.subjects);
    json_.key("coefficients").begin_array();
    for (const Coefficient& coefficient : pair.coefficients) {
      write_coefficient(json_, coefficient);
    }
    json_.end_array();
    cross_table_of(pair);
    write_numbers(json_, "level_agreement", pair.level_agreement);
    json_.key("two_levels");
    if (pair.two_levels) {
      json_.begin_object();
      write_number(json_, "prevalence_index", pair.two_levels->prevalence);
      write_number(json_, "bias_index", pair.two_levels->bias);
      write_number(json_, "adjusted_kappa", pair.two_levels->adjusted_kappa);
      json_.end_object();
    } else {
      json_.null();
    }
    json_.key("limits_of_agreement");
    pair.limits ? write_limits(json_, *pair.limits) : static_cast<void>(json_.null());
    json_.key("measurement_error");
    pair.error ? write_error(json_, *pair.error) : static_cast<void>(json_.null());
    json_.end_object();
  }

  void cross_table_of(const PairAgreement& pair) {
    json_.key("table");
    if (!pair.table) {
      json_.null();
      return;
    }
    json_.begin_array();
    for (std::size_t first = 0; first < pair.table->levels(); ++first) {
      json_.begin_array();
      for (std::size_t second = 0; second < pair.table->levels(); ++second) {
        json_.number(pair.table->at(first, second));
      }
      json_.end_array();
    }
    json_.end_array();
  }

  void numbers() {
    json_.key("mean_squares");
    if (agreement_.squares && agreement_.squares->is_known()) {
      const MeanSquares& squares = *agreement_.squares;
      json_.begin_object();
      json_.number("subjects", squares.subjects);
      write_number(json_, "between_subjects", squares.between_subjects);
      write_number(json_, "within_subjects", squares.within_subjects);
      write_number(json_, "between_observers", squares.between_observers);
      write_number(json_, "residual", squares.residual);
      write_number(json_, "f_one_way", squares.between_subjects / squares.within_subjects);
      write_number(json_, "f_two_way", squares.between_subjects / squares.residual);
      json_.end_object();
    } else {
      json_.null();
    }
    json_.key("measurement_error");
    agreement_.error ? write_error(json_, *agreement_.error) : static_cast<void>(json_.null());
    json_.key("internal_consistency");
    if (!agreement_.consistency) {
      json_.null();
      return;
    }
    const InternalConsistency& found = *agreement_.consistency;
    json_.begin_object();
    write_number(json_, "cronbach_alpha", found.alpha);
    write_number(json_, "standardised_alpha", found.standardised_alpha);
    write_numbers(json_, "item_variances", found.item_variances);
    write_number(json_, "total_variance", found.total_variance);
    write_number(json_, "total_error", found.total_error);
    write_numbers(json_, "alpha_without", found.alpha_without);
    json_.end_object();
  }

  const RatingTable& table_;
  const TableAgreement& agreement_;
  JsonWriter json_;
};

void add_coefficients(TextPage& page, std::string_view heading,
                      const std::vector<Coefficient>& all) {
  if (all.empty()) {
    return;
  }
  page.heading(heading);
  for (const Coefficient& coefficient : all) {
    page.item(fmt::format("{}: {}", title_of(coefficient), estimate_words(coefficient.estimate)));
    page.detail(meaning_words(coefficient));
  }
}

std::string places(double value) { return std::isnan(value) ? "–" : with_places(value, 2); }

std::string measured_words(const Estimate& estimate) {
  return estimate.interval.is_known()
             ? fmt::format("{} ({} to {})", places(estimate.value), places(estimate.interval.low),
                           places(estimate.interval.high))
             : places(estimate.value);
}

void add_limits(TextPage& page, const RatingTable& table, const TableAgreement& agreement) {
  if (!agreement.error) {
    return;
  }
  const MeasurementError& error = *agreement.error;
  page.heading("Error of measurement, in the unit of the ratings");
  page.item(fmt::format("Technical error: {}", measured_words(error.technical)));
  page.detail("How far readings of one subject scatter.");
  page.item(
      fmt::format("Standard error of measurement: {}", measured_words(error.agreement_error)));
  page.detail("The same, where any observer may read any subject.");
  page.item(fmt::format("Smallest detectable change: {}", measured_words(error.agreement_change)));
  page.detail("Two readings by two observers that differ by less may be of the same thing.");
  for (const PairAgreement& pair : agreement.pairs) {
    page.item(fmt::format("{} less {}: {}, limits of agreement {} to {}",
                          table.observers[pair.first], table.observers[pair.second],
                          measured_words(pair.limits->bias), places(pair.limits->low.value),
                          places(pair.limits->high.value)));
  }
}

}  // namespace

std::string ratings_json(const RatingTable& table, const TableAgreement& agreement) {
  return RatingsWriter(table, agreement).write();
}

std::string ratings_text(const RatingTable& table, const TableAgreement& agreement, bool colour) {
  TextPage page(colour);
  page.title("How far observers agree");
  page.line(fmt::format("{} subjects · {} observers · {} ratings, {} not made",
                        table.subjects.size(), table.observers.size(), rating_count(table),
                        table.cells.size() - rating_count(table)));
  page.line("In brackets: the interval that holds the true figure 19 times in 20.");
  if (!agreement.remarks.empty()) {
    page.heading("To be read first");
    for (const Remark& remark : agreement.remarks) {
      page.item(remark_words(remark, table.levels));
    }
  }
  add_coefficients(page, "Agreement", agreement.coefficients);
  add_limits(page, table, agreement);
  return page.take();
}

}  // namespace heelrule
