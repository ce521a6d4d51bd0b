#include "engine/reading/read_ratings.hpp"

#include <fast_float/fast_float.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/nearest.hpp"
#include "engine/quantity/trimmed.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/source/csv_cell.hpp"

namespace heelrule {
namespace {

constexpr double no_rating = std::numeric_limits<double>::quiet_NaN();

// What other programs write where there is nothing; taken for a word it would be a rating.
constexpr std::array<std::string_view, 9> empty_words{"NA",   "N/A",  "na",   "NaN", "nan",
                                                      "null", "None", "#N/A", "."};

// Other programs write up to 17 digits, which is more than a person's number may have.
std::optional<double> long_number(std::string_view text) {
  constexpr std::size_t most_signs = 40;
  const std::string_view digits = text.substr(text.starts_with('-') ? 1 : 0);
  const std::size_t point = std::min(digits.find('.'), digits.size());
  const bool plain = text.size() <= most_signs && point > 0 && point + 1 != digits.size() &&
                     digits.find_first_not_of("0123456789.") == std::string_view::npos &&
                     std::count(digits.begin(), digits.end(), '.') <= 1 &&
                     (digits.front() != '0' || point == 1);
  double value = 0;
  if (!plain) {
    return std::nullopt;
  }
  fast_float::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

std::optional<double> number_in(std::string_view text) {
  const auto number = parse_decimal(text);
  return number ? std::optional(scaled(*number)) : long_number(text);
}

struct Row {
  std::vector<CsvCell> cells;
  std::uint32_t begin = 0;  // in the file
};

class RatingReader {
 public:
  RatingReader(const Sources& sources, std::uint32_t source, const std::vector<std::string>& scale)
      : sources_(sources), source_(source), scale_(scale) {}

  Checked<RatingTable> read() {
    if (passes_gate(sources_.text(source_), source_, diagnostics_)) {
      split();
    }
    if (!diagnostics_.has_errors()) {
      take_header();
    }
    if (!diagnostics_.has_errors()) {
      check_size();
    }
    if (!diagnostics_.has_errors()) {
      take_ratings();
    }
    return {std::move(table_), std::move(diagnostics_)};
  }

 private:
  Span place(const Row& row, const CsvCell& cell) const {
    return {source_, row.begin + static_cast<std::uint32_t>(cell.begin),
            row.begin + static_cast<std::uint32_t>(cell.end)};
  }
  Span place(const Row& row) const {
    return {source_, row.begin, row.begin + static_cast<std::uint32_t>(row.cells.back().end)};
  }

  void split() {
    const std::string_view text = sources_.text(source_);
    for (std::size_t begin = 0; begin < text.size();) {
      const std::size_t end = std::min(text.find('\n', begin), text.size());
      std::string_view line = text.substr(begin, end - begin);
      line.remove_suffix(line.ends_with('\r') ? 1 : 0);
      CsvRow cut = split_csv_row(line);
      Row row{std::move(cut.cells), static_cast<std::uint32_t>(begin)};
      if (!cut.fault.empty()) {
        diagnostics_.error(place(row, row.cells.back()), std::string(cut.fault),
                           "double a quote that is meant as such");
      }
      for (CsvCell& cell : row.cells) {
        cell.text = trimmed(cell.text);
      }
      rows_.push_back(std::move(row));
      begin = end + 1;
    }
    if (rows_.empty()) {
      diagnostics_.error({source_, 0, 0}, "there are no ratings",
                         "begin with a line that names the observers");
    }
  }

  // Whether a cell by itself can be a rating; of names every text can.
  bool is_rating(std::string_view text) const {
    return scale_.empty() ? number_in(text).has_value() : level_of(text).has_value();
  }

  void take_header() {
    const Row& first = rows_.front();
    names_subjects_ = first.cells.front().text == "subject";
    const auto begin = first.cells.begin() + (names_subjects_ ? 1 : 0);
    const bool all_ratings =
        !names_subjects_ && std::all_of(begin, first.cells.end(), [&](const CsvCell& cell) {
          return is_empty(cell.text) || is_rating(cell.text);
        });
    std::size_t count = 0;
    bool counts_up = true;
    for (auto cell = begin; cell != first.cells.end(); ++cell) {
      counts_up = counts_up && cell->text == fmt::format("{}", ++count);
    }
    if (all_ratings && counts_up) {
      diagnostics_.error(place(first), "this line could be names of observers or ratings",
                         "begin with a line of names that are no ratings: `A,B`");
      return;
    }
    for (auto cell = begin; cell != first.cells.end(); ++cell) {
      add_observer(first, *cell, all_ratings);
    }
    first_row_ = all_ratings ? 0 : 1;
  }

  void add_observer(const Row& row, const CsvCell& cell, bool by_number) {
    std::string name = by_number ? fmt::format("{}", table_.observers.size() + 1) : cell.text;
    if (name.empty()) {
      diagnostics_.error(place(row, cell), "this column has no observer",
                         "name who made the ratings below it");
    }
    if (std::find(table_.observers.begin(), table_.observers.end(), name) !=
        table_.observers.end()) {
      diagnostics_.error(place(row, cell),
                         fmt::format("the observer `{}` comes a second time", name),
                         "give each observer one column");
    }
    table_.observers.push_back(std::move(name));
  }

  void check_size() {
    const Row& first = rows_.front();
    if (table_.observers.size() < 2) {
      diagnostics_.error(place(first), "there is one observer, and nobody to agree with",
                         "give each observer a column");
    }
    if (table_.observers.size() > RatingLimits::observers) {
      diagnostics_.error(place(first),
                         fmt::format("there are more than {} observers", RatingLimits::observers),
                         "take fewer at a time");
    }
    const std::size_t subjects = rows_.size() - first_row_;
    if (subjects == 0) {
      diagnostics_.error(place(first), "there are no ratings below the names of the observers",
                         "write a row for each subject");
    }
    if (subjects > RatingLimits::subjects) {
      diagnostics_.error(place(rows_[RatingLimits::subjects]),
                         fmt::format("there are more than {} subjects", RatingLimits::subjects),
                         "take fewer at a time");
    }
  }

  void take_ratings() {
    const std::size_t width = table_.observers.size() + (names_subjects_ ? 1 : 0);
    for (std::size_t i = first_row_; i < rows_.size(); ++i) {
      const Row& row = rows_[i];
      if (row.cells.size() != width) {
        diagnostics_.error(place(row),
                           fmt::format("this row has {} cells, and the first line has {}",
                                       row.cells.size(), width),
                           "write a cell for each observer, an empty one where there is no rating");
      }
      table_.subjects.push_back(names_subjects_ ? row.cells.front().text
                                                : fmt::format("{}", table_.subjects.size() + 1));
    }
    if (diagnostics_.has_errors()) {
      return;
    }
    choose_kind();
    for (std::size_t i = first_row_; i < rows_.size(); ++i) {
      for (std::size_t at = names_subjects_ ? 1 : 0; at < width; ++at) {
        table_.cells.push_back(rating(rows_[i], rows_[i].cells[at]));
      }
    }
    if (std::all_of(table_.cells.begin(), table_.cells.end(),
                    [](double cell) { return std::isnan(cell); })) {
      diagnostics_.error(place(rows_.front()), "no cell of this table holds a rating",
                         "leave cells empty only where an observer did not rate a subject");
    }
  }

  static bool is_empty(std::string_view text) { return text.empty() || text == "not seen"; }

  void choose_kind() {
    if (!scale_.empty()) {
      take_scale();
      return;
    }
    const std::size_t numbers = gather_ratings();
    // A slip of the pen among numbers is to be told, and not to make names of them all.
    if (2 * numbers >= table_.levels.size()) {
      table_.kind = RatingKind::numbers;
      table_.levels.clear();
      return;
    }
    std::sort(table_.levels.begin(), table_.levels.end());
    table_.levels.erase(std::unique(table_.levels.begin(), table_.levels.end()),
                        table_.levels.end());
    if (table_.levels.size() > RatingLimits::levels) {
      diagnostics_.error(place(rows_.front()),
                         fmt::format("there are more than {} different ratings that are no numbers",
                                     RatingLimits::levels),
                         "write each as a number, or as one of a few words");
    }
  }

  // The levels of a scale have numbers where all of them are some.
  void take_scale() {
    table_.kind = RatingKind::levels;
    table_.levels = scale_;
    for (const std::string& level : scale_) {
      if (const auto number = number_in(level)) {
        table_.level_numbers.push_back(*number);
      }
    }
    if (table_.level_numbers.size() != scale_.size()) {
      table_.level_numbers.clear();
    }
  }

  // Takes every rating for a level, and tells how many are numbers.
  std::size_t gather_ratings() {
    std::size_t numbers = 0;
    for (std::size_t i = first_row_; i < rows_.size(); ++i) {
      for (std::size_t at = names_subjects_ ? 1 : 0; at < rows_[i].cells.size(); ++at) {
        const std::string& text = rows_[i].cells[at].text;
        if (!is_empty(text)) {
          numbers += number_in(text) ? 1 : 0;
          table_.levels.push_back(text);
        }
      }
    }
    return numbers;
  }

  std::optional<std::size_t> level_of(std::string_view text) const {
    const std::vector<std::string>& levels = scale_.empty() ? table_.levels : scale_;
    const auto found = std::find(levels.begin(), levels.end(), text);
    if (found != levels.end()) {
      return static_cast<std::size_t>(found - levels.begin());
    }
    const auto number = number_in(text);
    for (std::size_t i = 0; number && i < levels.size(); ++i) {
      if (number_in(levels[i]) == number) {
        return i;
      }
    }
    return std::nullopt;
  }

  double fault(const Row& row, const CsvCell& cell, std::string_view what, std::string hint) {
    diagnostics_.error(place(row, cell), fmt::format("`{}` is no {}", cell.text, what),
                       std::move(hint));
    return no_rating;
  }

  double number(const Row& row, const CsvCell& cell) {
    const auto found = number_in(cell.text);
    return found ? *found
                 : fault(row, cell, "number, and most of these ratings are",
                         parse_decimal(cell.text).problem().hint);
  }

  double rating(const Row& row, const CsvCell& cell) {
    if (is_empty(cell.text)) {
      return no_rating;
    }
    const auto level = level_of(cell.text);
    const bool is_empty_word =
        std::find(empty_words.begin(), empty_words.end(), cell.text) != empty_words.end();
    if (is_empty_word && (scale_.empty() || !level)) {
      return fault(row, cell, "rating", "leave the cell empty, or write `not seen`");
    }
    if (table_.kind == RatingKind::numbers) {
      return number(row, cell);
    }
    if (!level) {
      Nearest nearest(cell.text);
      for (const std::string& known : scale_) {
        nearest.offer(known);
      }
      return fault(row, cell, "level of the scale",
                   nearest.found() ? nearest.question()
                                   : fmt::format("its levels are `{}`", fmt::join(scale_, "`, `")));
    }
    return static_cast<double>(*level);
  }

  const Sources& sources_;
  std::uint32_t source_;
  const std::vector<std::string>& scale_;
  Diagnostics diagnostics_;
  RatingTable table_;
  std::vector<Row> rows_;
  bool names_subjects_ = false;
  std::size_t first_row_ = 0;
};

}  // namespace

Parsed<std::vector<std::string>> parse_scale(std::string_view text) {
  std::vector<std::string> levels;
  for (std::size_t begin = 0; begin <= text.size();) {
    const std::size_t end = std::min(text.find(',', begin), text.size());
    std::string level(trimmed(text.substr(begin, end - begin)));
    if (level.empty()) {
      return Problem{fmt::format("a level of the scale `{}` is empty", text),
                     "write its levels in order, lowest first: `poor,fair,good`"};
    }
    if (std::find(levels.begin(), levels.end(), level) != levels.end()) {
      return Problem{fmt::format("the level `{}` comes twice in the scale", level),
                     "write each level once"};
    }
    levels.push_back(std::move(level));
    begin = end + 1;
  }
  if (levels.size() < 2) {
    return Problem{fmt::format("the scale `{}` has one level", text),
                   "write its levels in order, lowest first: `poor,fair,good`"};
  }
  if (levels.size() > RatingLimits::levels) {
    return Problem{fmt::format("the scale has more than {} levels", RatingLimits::levels),
                   "leave `--scale` out where ratings are measurements"};
  }
  return levels;
}

Checked<RatingTable> read_ratings(const Sources& sources, std::uint32_t source,
                                  const std::vector<std::string>& scale) {
  return RatingReader(sources, source, scale).read();
}

}  // namespace heelrule
