#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

#include "engine/quantity/nearest.hpp"
#include "engine/reading/csv_lines.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/source/csv_cell.hpp"

namespace heelrule {
namespace {

struct HeadName {
  std::string_view name;
  CsvColumn::Part part = CsvColumn::Part::head;
  std::string_view key;
  std::string Inspection::* text = nullptr;
};

constexpr std::array<HeadName, 7> head_names{{
    {"client", CsvColumn::Part::head, "client", &Inspection::client},
    {"date", CsvColumn::Part::head, "date", &Inspection::date},
    {"observer", CsvColumn::Part::head, "observer", &Inspection::observer},
    {"note", CsvColumn::Part::head, "note", &Inspection::note},
    {"rules", CsvColumn::Part::head, "rules", &Inspection::rules},
    {"shoe", CsvColumn::Part::shoe, "label", &Inspection::shoe_label},
    {"marked", CsvColumn::Part::shoe, "marked", &Inspection::shoe_marked},
}};

// Takes `.word` off the end of a name.
bool take_ending(std::string_view& name, std::string_view word) {
  if (!name.ends_with(word) || name.size() <= word.size() ||
      name[name.size() - word.size() - 1] != '.') {
    return false;
  }
  name.remove_suffix(word.size() + 1);
  return true;
}

class HeaderReader {
 public:
  HeaderReader(const RuleSet& rules, std::uint32_t source) : rules_(rules), source_(source) {}

  Checked<std::vector<CsvColumn>> read(std::string_view header) {
    if (header.empty()) {
      fail({}, "there is no header", "begin the table with a line of column names");
      return Checked<std::vector<CsvColumn>>(std::move(diagnostics_));
    }
    const CsvRow row = split_csv_row(header);
    for (const CsvCell& cell : row.cells) {
      add(cell);
    }
    if (!row.fault.empty()) {
      fail(row.cells.back(), std::string(row.fault), "double a quote that is meant as such");
    }
    return {std::move(columns_), std::move(diagnostics_)};
  }

 private:
  void fail(const CsvCell& cell, std::string message, std::string hint) {
    diagnostics_.error(
        {source_, static_cast<std::uint32_t>(cell.begin), static_cast<std::uint32_t>(cell.end)},
        std::move(message), std::move(hint));
  }

  void add(const CsvCell& cell) {
    std::optional<CsvColumn> column = meant(cell);
    if (!column) {
      return;
    }
    const auto clashes = [&](const CsvColumn& other) {
      const bool both = column->side == Side::none || other.side == Side::none;
      return other.name == column->name ||
             (is_of_trait(other) && is_of_trait(*column) && other.trait == column->trait &&
              other.side != column->side && both);
    };
    const auto first = std::find_if(columns_.begin(), columns_.end(), clashes);
    if (first == columns_.end()) {
      columns_.push_back(std::move(*column));
    } else if (first->name == column->name) {
      fail(cell, fmt::format("the column `{}` comes a second time", cell.text),
           "keep one of the two");
    } else {
      fail(cell, fmt::format("`{}` and `{}` speak of the same value", first->name, cell.text),
           "write a column for each side, or one for both");
    }
  }

  static bool is_of_trait(const CsvColumn& column) {
    return column.part != CsvColumn::Part::head && column.part != CsvColumn::Part::shoe;
  }

  std::optional<CsvColumn> meant(const CsvCell& cell) {
    std::string_view name = cell.text;
    for (const HeadName& head : head_names) {
      if (head.name == name) {
        return CsvColumn{cell.text, head.part, std::string(head.key), head.text, 0, Side::none};
      }
    }
    CsvColumn column{cell.text, CsvColumn::Part::value, {}, nullptr, 0, Side::none};
    constexpr std::string_view prefix = "found.";
    name.remove_prefix(name.starts_with(prefix) ? prefix.size() : 0);
    if (take_ending(name, "note")) {
      column.part = CsvColumn::Part::note;
    } else if (take_ending(name, "confirmed")) {
      column.part = CsvColumn::Part::confirmed;
    }
    column.side = take_ending(name, "left")    ? Side::left
                  : take_ending(name, "right") ? Side::right
                                               : Side::none;
    const auto trait = rules_.find_trait(name);
    if (!trait || std::holds_alternative<DerivedKind>(rules_.traits[*trait].kind)) {
      unknown(cell, name);
      return std::nullopt;
    }
    if (column.side != Side::none && !has_sides(rules_.traits[*trait].per)) {
      fail(cell, fmt::format("`{}` has no sides", name), fmt::format("write `{}`", name));
      return std::nullopt;
    }
    column.trait = *trait;
    return column;
  }

  void unknown(const CsvCell& cell, std::string_view name) {
    Nearest nearest(name);
    for (const HeadName& head : head_names) {
      nearest.offer(head.name);
    }
    for (const Trait& trait : rules_.traits) {
      if (!std::holds_alternative<DerivedKind>(trait.kind)) {
        nearest.offer(trait.name);
      }
    }
    fail(cell,
         fmt::format("`{}` asks for nothing that a column `{}` could hold", rules_.name, cell.text),
         nearest.found() ? nearest.question()
                         : "name a trait, perhaps with `.left` or `.right`, or leave it out");
  }

  const RuleSet& rules_;
  std::uint32_t source_;
  Diagnostics diagnostics_;
  std::vector<CsvColumn> columns_;
};

}  // namespace

Checked<std::vector<CsvColumn>> read_csv_header(const Sources& sources, std::uint32_t source,
                                                const RuleSet& rules) {
  Diagnostics diagnostics;
  if (!passes_gate(sources.text(source), source, diagnostics)) {
    return Checked<std::vector<CsvColumn>>(std::move(diagnostics));
  }
  return HeaderReader(rules, source).read(sources.text(source));
}

}  // namespace heelrule
