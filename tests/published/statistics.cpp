#include "tests/published/statistics.hpp"

#include <stdexcept>

namespace heelrule {
namespace {

simdjson::dom::array all_examples() {
  static simdjson::dom::parser parser;
  static const simdjson::dom::element document =
      parser.load(std::string(HEELRULE_TEST_DATA) + "/agreement_statistics.json");
  return document["checks"];
}

simdjson::dom::element find_example(std::string_view id) {
  for (const simdjson::dom::element example : all_examples()) {
    if (std::string_view(example["id"]) == id) {
      return example;
    }
  }
  throw std::out_of_range("there is no worked example " + std::string(id));
}

}  // namespace

WorkedExample::WorkedExample(std::string_view id) : example_(find_example(id)) {}

simdjson::dom::element WorkedExample::at(std::string_view pointer) const {
  return example_.at_pointer(pointer);
}

bool WorkedExample::has(std::string_view pointer) const {
  return example_.at_pointer(pointer).error() == simdjson::SUCCESS;
}

double WorkedExample::number(std::string_view pointer) const { return double(at(pointer)); }

std::vector<double> WorkedExample::numbers(std::string_view pointer) const {
  std::vector<double> result;
  for (const simdjson::dom::element value : simdjson::dom::array(at(pointer))) {
    result.push_back(double(value));
  }
  return result;
}

Ratings WorkedExample::ratings(std::string_view pointer, double first) const {
  const simdjson::dom::array rows = at(pointer);
  const simdjson::dom::array first_row = rows.at(0);
  Ratings result(rows.size(), first_row.size());
  std::size_t subject = 0;
  for (const simdjson::dom::array row : rows) {
    std::size_t observer = 0;
    for (const simdjson::dom::element cell : row) {
      if (!cell.is_null()) {
        result.set(subject, observer, double(cell) - first);
      }
      ++observer;
    }
    ++subject;
  }
  return result;
}

CrossTable WorkedExample::table(std::string_view pointer) const {
  const Ratings cells = ratings(pointer);
  CrossTable result(cells.subjects());
  for (std::size_t first = 0; first < cells.subjects(); ++first) {
    for (std::size_t second = 0; second < cells.observers(); ++second) {
      result.add(first, second, cells.at(first, second));
    }
  }
  return result;
}

LevelCounts WorkedExample::counts(std::string_view pointer) const {
  const Ratings cells = ratings(pointer);
  LevelCounts result(cells.subjects(), cells.observers());
  for (std::size_t subject = 0; subject < cells.subjects(); ++subject) {
    for (std::size_t level = 0; level < cells.observers(); ++level) {
      result.add(subject, level, cells.at(subject, level));
    }
  }
  return result;
}

}  // namespace heelrule
