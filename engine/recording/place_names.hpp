// What the places of a record and its sections are called, and where words lead.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/parsed.hpp"
#include "engine/recording/draft.hpp"

namespace heelrule {

/// A stretch of places: one question, or a section.
struct PlaceRange {
  std::size_t begin = 0;
  std::size_t end = 0;  ///< behind the last; of a single question `begin`

  bool operator==(const PlaceRange&) const = default;
};

/// The names of the places of a draft. A place is an index in `Draft::fields`; the head of the
/// record is its first section, and the others are those of the bench.
class PlaceNames {
 public:
  /// `rules` and `draft` must outlive this object. `languages`: first choice first.
  PlaceNames(const RuleSet& rules, const Draft& draft, std::vector<std::string> languages);

  /// The section of a place, counted from 0, and its title.
  std::size_t section_number(std::size_t place) const;
  std::string_view section_title(std::size_t place) const;
  std::size_t section_count() const { return draft_.sections().size() + 1; }

  /// Whether a place is the first of its section, or the last.
  bool begins_section(std::size_t place) const;
  bool ends_section(std::size_t place) const;

  /// What is asked at a place.
  std::string_view question(std::size_t place) const;

  /// Where words lead: the name or the number of a section, the key of a place, the name of a
  /// trait, or else the start of a title or of a question, in small or capital letters. The
  /// problem names what is near, or the sections.
  ///
  ///     find("feet")         ->  all places of that section
  ///     find("foot_length")  ->  its left side
  Parsed<PlaceRange> find(std::string_view words) const;

 private:
  const Field& field(std::size_t place) const { return draft_.fields()[place]; }
  std::string_view trait_name(std::size_t place) const;
  std::string_view section_name(std::size_t place) const;
  bool names_section(std::string_view words, std::size_t place) const;
  bool begins_title(std::string_view words, std::size_t place) const;
  std::optional<std::size_t> place_of(std::string_view words) const;
  Problem unknown(std::string_view words) const;

  const RuleSet& rules_;
  const Draft& draft_;
  std::vector<std::string> languages_;
};

}  // namespace heelrule
