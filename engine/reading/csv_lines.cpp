#include "engine/reading/csv_lines.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/reading/json_scanner.hpp"
#include "engine/reading/make_node.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/reading/written_value.hpp"
#include "engine/source/csv_cell.hpp"

namespace heelrule {
namespace {

// A row as the tree of the record that it stands for.
class RowTree {
 public:
  RowTree(const RuleSet& rules, Span row) : rules_(rules), root_(map_node(row)) {
    add_entry(root_, "inspection", map_node(row));
    add_entry(root_, "safety", map_node(row));
    add_entry(root_, "found", map_node(row));
  }

  void put(const CsvColumn& column, std::string text, Span where) {
    switch (column.part) {
      case CsvColumn::Part::head:
        add_entry(part(0), column.key, text_node(std::move(text), where));
        return;
      case CsvColumn::Part::shoe:
        add_entry(map_below(part(0), "shoe", where), column.key, text_node(std::move(text), where));
        return;
      case CsvColumn::Part::value:
        add_entry(place(column, where), "value",
                  written_value(rules_.traits[column.trait], text, ";", where));
        return;
      case CsvColumn::Part::note:
        add_entry(place(column, where), "note", text_node(std::move(text), where));
        return;
      case CsvColumn::Part::confirmed:
        add_entry(place(column, where), "confirmed", text_node(std::move(text), where));
        return;
    }
  }

  // A note beside an empty cell is a note beside something not seen.
  const Node& finished() {
    for (const std::size_t values : {1U, 2U}) {
      for (Entry& trait : part(values).entries) {
        if (trait.value.find("left") == nullptr && trait.value.find("right") == nullptr) {
          finish(trait.value);
          continue;
        }
        for (Entry& side : trait.value.entries) {
          finish(side.value);
        }
      }
    }
    return root_;
  }

 private:
  Node& part(std::size_t index) { return root_.entries[index].value; }

  Node& place(const CsvColumn& column, Span where) {
    Node& values = part(column.trait < rules_.safety.size() ? 1 : 2);
    Node& trait = map_below(values, rules_.traits[column.trait].name, where);
    return column.side == Side::none
               ? trait
               : map_below(trait, column.side == Side::left ? "left" : "right", where);
  }

  static void finish(Node& value) {
    if (value.find("value") == nullptr) {
      add_entry(value, "value", text_node("not seen", value.where));
    }
  }

  const RuleSet& rules_;
  Node root_;
};

}  // namespace

CsvLineReader::CsvLineReader(const RuleSet& rules, std::vector<CsvColumn> columns, std::string name)
    : rules_(&rules), columns_(std::move(columns)), name_(std::move(name)), filler_(rules) {}

// Reads a row in which no cell is in quotes or guarded and every value is plain; false where one is
// not, and the row is of no use then.
bool CsvLineReader::read_plain(std::string_view line, InspectionRow& row) {
  if (!is_plainly_written(line) || line.find_first_of("\"'") != std::string_view::npos) {
    return false;
  }
  filler_.start(row);
  std::size_t begin = 0;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const bool is_last = i + 1 == columns_.size();
    const std::size_t end = std::min(line.find(',', begin), line.size());
    if (is_last != (end == line.size())) {
      return false;
    }
    const std::string_view cell = line.substr(begin, end - begin);
    if (!cell.empty() && !put_plain(columns_[i], cell, row.inspection)) {
      return false;
    }
    begin = end + 1;
  }
  return true;
}

bool CsvLineReader::put_plain(const CsvColumn& column, std::string_view cell, Inspection& head) {
  if (cell.front() == ' ' || cell.back() == ' ') {
    return false;
  }
  switch (column.part) {
    case CsvColumn::Part::head:
    case CsvColumn::Part::shoe:
      head.*column.text = cell;
      return column.text != &Inspection::date || is_date(cell);
    case CsvColumn::Part::value: {
      const bool both = column.side == Side::none && has_sides(rules_->traits[column.trait].per);
      return both ? filler_.plain_text(column.trait, Side::left, cell) &&
                        filler_.plain_text(column.trait, Side::right, cell)
                  : filler_.plain_text(column.trait, column.side, cell);
    }
    case CsvColumn::Part::note:
    case CsvColumn::Part::confirmed:
      break;
  }
  return false;
}

std::optional<LineFault> CsvLineReader::read(std::string_view line, std::uint64_t number,
                                             InspectionRow& row) {
  if (read_plain(line, row)) {
    return std::nullopt;
  }
  LineFault fault;
  const std::uint32_t source = fault.sources.add(name_, std::string(line), number);
  if (!passes_gate(line, source, fault.diagnostics)) {
    return fault;
  }
  const CsvRow split = split_csv_row(line);
  const auto span = [&](const CsvCell& cell) {
    return Span{source, static_cast<std::uint32_t>(cell.begin),
                static_cast<std::uint32_t>(cell.end)};
  };
  if (!split.fault.empty()) {
    fault.diagnostics.error(span(split.cells.back()), std::string(split.fault),
                            "double a quote that is meant as such");
    return fault;
  }
  if (split.cells.size() != columns_.size()) {
    fault.diagnostics.error(
        {source, 0, 0},
        fmt::format("this row has {} cells, and the header has {}", split.cells.size(),
                    columns_.size()),
        "write a cell for each column, an empty one where there is nothing to say");
    return fault;
  }
  RowTree tree(*rules_, {source, 0, 0});
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    if (!split.cells[i].text.empty()) {
      tree.put(columns_[i], split.cells[i].text, span(split.cells[i]));
    }
  }
  Inspection inspection = read_inspection(tree.finished(), *rules_, fault.diagnostics);
  if (fault.diagnostics.has_errors()) {
    return fault;
  }
  fill(row, std::move(inspection), rules_->traits.size());
  return std::nullopt;
}

}  // namespace heelrule
