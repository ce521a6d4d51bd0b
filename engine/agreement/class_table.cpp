#include "engine/agreement/class_table.hpp"

#include <algorithm>
#include <functional>
#include <optional>
#include <span>
#include <utility>

namespace heelrule {
namespace {

std::vector<std::string> in_order(std::vector<std::string> names) {
  std::sort(names.begin(), names.end());
  names.erase(std::unique(names.begin(), names.end()), names.end());
  return names;
}

std::size_t place_of(const std::vector<std::string>& names, const std::string& name) {
  return static_cast<std::size_t>(std::lower_bound(names.begin(), names.end(), name) -
                                  names.begin());
}

using ValueOf = std::function<double(const ClassRecord&, Side)>;

struct Cells {
  std::vector<TopicSubject> subjects;
  Ratings ratings;
};

Cells cells_of(const ClassTable& table, std::span<const Side> sides, const ValueOf& value_of) {
  const std::size_t observers = table.observers().size();
  Ratings all(table.shoes().size() * sides.size(), observers);
  std::vector<TopicSubject> subjects;
  std::vector<std::size_t> rated;
  for (std::size_t shoe = 0; shoe < table.shoes().size(); ++shoe) {
    for (std::size_t i = 0; i < sides.size(); ++i) {
      const std::size_t row = shoe * sides.size() + i;
      bool any = false;
      for (std::size_t observer = 0; observer < observers; ++observer) {
        const ClassRecord* record = table.at(shoe, observer);
        if (record != nullptr) {
          all.set(row, observer, value_of(*record, sides[i]));
          any = any || all.has(row, observer);
        }
      }
      if (any) {
        rated.push_back(row);
        subjects.push_back({shoe, sides[i]});
      }
    }
  }
  return {std::move(subjects), all.rows(rated)};
}

ScaledRatings scaled(const Program& program, std::size_t trait, Ratings ratings) {
  const Type& type = program.traits[trait].type;
  switch (type.kind) {
    case Type::Kind::yes_no:
      return level_ratings(std::move(ratings), 2, false);
    case Type::Kind::level:
      return level_ratings(std::move(ratings),
                           levels_of(program.rules.traits[type.scale].kind).size(), type.ordered);
    case Type::Kind::number:
    case Type::Kind::fibres:
    case Type::Kind::shoe_size:
    case Type::Kind::sock_range:
      return measured_ratings(std::move(ratings));
  }
  return measured_ratings(std::move(ratings));
}

}  // namespace

ClassTable::ClassTable(std::vector<ClassRecord> records) : records_(std::move(records)) {
  for (const ClassRecord& record : records_) {
    observers_.push_back(record.observer);
    shoes_.push_back(record.shoe);
  }
  observers_ = in_order(std::move(observers_));
  shoes_ = in_order(std::move(shoes_));
  cells_.assign(observers_.size() * shoes_.size(), records_.size());
  for (std::size_t i = 0; i < records_.size(); ++i) {
    const std::size_t shoe = place_of(shoes_, records_[i].shoe);
    cells_[shoe * observers_.size() + place_of(observers_, records_[i].observer)] = i;
  }
}

const ClassRecord* ClassTable::at(std::size_t shoe, std::size_t observer) const {
  const std::size_t index = cells_[shoe * observers_.size() + observer];
  return index < records_.size() ? &records_[index] : nullptr;
}

std::vector<TopicRatings> topic_ratings(const Program& program, const ClassTable& table) {
  std::vector<TopicRatings> all;
  const auto add = [&](Topic topic, Cells cells, const auto& scale) {
    if (!cells.subjects.empty()) {
      all.push_back({topic, std::move(cells.subjects), scale(std::move(cells.ratings))});
    }
  };
  for (std::size_t trait = 0; trait < program.traits.size(); ++trait) {
    add({Topic::Kind::trait, trait},
        cells_of(table, sides_of(program.traits[trait].has_sides),
                 [&](const ClassRecord& record, Side side) {
                   return record.values[number_place(trait, side)];
                 }),
        [&](Ratings ratings) { return scaled(program, trait, std::move(ratings)); });
  }
  const std::span<const Side> whole = sides_of(false);
  for (std::size_t section = 0; section < program.rules.sections.size(); ++section) {
    add({Topic::Kind::section, section},
        cells_of(table, whole,
                 [&](const ClassRecord& record, Side) { return record.sections[section]; }),
        measured_ratings);
  }
  add({Topic::Kind::score, 0},
      cells_of(table, whole, [](const ClassRecord& record, Side) { return record.score; }),
      measured_ratings);
  add({Topic::Kind::grade, 0},
      cells_of(table, whole, [](const ClassRecord& record, Side) { return record.grade; }),
      [&](Ratings ratings) {
        return level_ratings(std::move(ratings), program.rules.grades.size(), true);
      });
  return all;
}

}  // namespace heelrule
