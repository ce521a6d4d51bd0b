// Which trait a key names, for records that come one after the other in much the same order.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "engine/model/rule_set.hpp"

namespace heelrule {

/// Finds the traits that a record may name. It remembers which trait followed which, so that a key
/// is mostly known before it is read.
class TraitKeys {
 public:
  /// `rules` must outlive this object.
  explicit TraitKeys(const RuleSet& rules);

  /// Begins a new record.
  void start();

  /// The trait that came next in records before; the number of traits where none did, or where this
  /// record has named it. It counts as named only when it is taken.
  std::size_t expected() const {
    const std::size_t next = next_[last_];
    return next < traits_.size() && taken_in_[next] != record_ ? next : traits_.size();
  }

  /// Takes the trait that is expected.
  void take_expected() {
    last_ = next_[last_];
    taken_in_[last_] = record_;
  }

  /// The trait of this name; nothing where there is none, where it is worked out and not recorded,
  /// or where this record has named it before.
  std::optional<std::size_t> take(std::string_view key);

 private:
  const std::vector<Trait>& traits_;
  std::unordered_map<std::string_view, std::size_t> by_name_;
  // What came after each trait, and (at the end) first of all; the number of traits where nothing
  // did.
  std::vector<std::size_t> next_;
  std::vector<std::uint64_t> taken_in_;  // of each trait: the last record that named it
  std::uint64_t record_ = 0;
  std::size_t last_ = 0;
};

}  // namespace heelrule
