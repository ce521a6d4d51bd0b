// A record while it is being made.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/reading/tree.hpp"
#include "engine/recording/field.hpp"

namespace heelrule {

/// Who changes a record that was finished before, and when.
struct Amender {
  std::string by;       ///< a code: `A-02`
  std::string when;     ///< ISO 8601: `2026-11-27T10:12Z`
  std::string because;  ///< may be empty
};

/// The places of a record and what stands in them, as it will stand in the file.
class Draft {
 public:
  /// A blank one. `program` must outlive this object.
  explicit Draft(const Program& program);

  /// Becomes a draft of a record, with nothing left of what stood here. Precondition:
  /// `read_inspection` finds nothing wrong with it.
  void take_over(const Node& record);

  const std::vector<BenchSection>& sections() const { return sections_; }
  const std::vector<Field>& fields() const { return fields_; }

  /// What stands in a place; none if it is open.
  const Node* answer(std::size_t field) const {
    return places_[field].answer ? &*places_[field].answer : nullptr;
  }

  /// Puts an answer into a place. What stands there already changes nothing.
  void fill(std::size_t field, Node answer);

  /// Puts one answer into both sides, as one reading of the two (see `RecordedValue`): the record
  /// then gives it once. Precondition: `left` is the left side of a trait that has sides.
  void fill_both(std::size_t left, Node answer);

  /// Whether one answer stands for both sides of this place.
  bool is_for_both(std::size_t field) const { return places_[field].for_both; }

  /// The place that a key names, if there is one.
  std::optional<std::size_t> find(std::string_view key) const;

  /// Whether anything differs from the record that was taken over.
  bool is_changed() const;

  /// The whole record as a tree. With an amender it keeps what was there before, below `amended`.
  Node record(const std::optional<Amender>& amender) const;

 private:
  // What stands in a place; none where it is open.
  struct Place {
    std::optional<Node> answer;
    bool for_both = false;  // one answer, for this side and the other
  };

  Place place_in(const Node& record, const Field& field) const;
  bool is_safety(const Field& field) const;
  bool stands(std::size_t field, const Node& answer) const;
  Node head() const;
  Node values(bool safety) const;
  Node amendments(const Amender& amender) const;
  bool differs(std::size_t field) const;
  Node amendment(std::string answer, std::size_t field, const Amender& amender) const;

  const Program& program_;
  std::vector<BenchSection> sections_;
  std::vector<Field> fields_;
  std::vector<Place> places_;  // as `fields_`
  std::vector<Place> before_;  // the same in the record that was taken over
  Node amended_;  // what a record that was taken over already tells of earlier amendments
  std::string rules_;
};

}  // namespace heelrule
