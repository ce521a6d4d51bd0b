#include "engine/recording/place_names.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/quantity/nearest.hpp"
#include "engine/quantity/same_letters.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::string_view head_title = "The inspection";
constexpr std::string_view head_name = "inspection";

bool begins(std::string_view text, std::string_view start) {
  return same_letters(text.substr(0, start.size()), start);
}

}  // namespace

PlaceNames::PlaceNames(const RuleSet& rules, const Draft& draft, std::vector<std::string> languages)
    : rules_(rules), draft_(draft), languages_(std::move(languages)) {}

std::size_t PlaceNames::section_number(std::size_t place) const {
  return field(place).kind == Field::Kind::head ? 0 : field(place).section + 1;
}

std::string_view PlaceNames::section_title(std::size_t place) const {
  return field(place).kind == Field::Kind::head
             ? head_title
             : heading(draft_.sections()[field(place).section], rules_, languages_);
}

std::string_view PlaceNames::section_name(std::size_t place) const {
  return field(place).kind == Field::Kind::head
             ? head_name
             : short_name(draft_.sections()[field(place).section], rules_);
}

bool PlaceNames::begins_section(std::size_t place) const {
  return place == 0 || ends_section(place - 1);
}

bool PlaceNames::ends_section(std::size_t place) const {
  return place + 1 == draft_.fields().size() || section_number(place + 1) != section_number(place);
}

std::string_view PlaceNames::question(std::size_t place) const {
  return field(place).kind == Field::Kind::head
             ? question_of(field(place).item)
             : rules_.traits[field(place).trait].ask.in(languages_);
}

std::string_view PlaceNames::trait_name(std::size_t place) const {
  return field(place).kind == Field::Kind::head ? std::string_view{}
                                                : rules_.traits[field(place).trait].name;
}

bool PlaceNames::names_section(std::string_view words, std::size_t place) const {
  return begins_section(place) &&
         (section_name(place) == words || fmt::format("{}", section_number(place) + 1) == words);
}

bool PlaceNames::begins_title(std::string_view words, std::size_t place) const {
  return begins_section(place) && begins(section_title(place), words);
}

// A name goes before the start of a title, wherever each stands.
std::optional<std::size_t> PlaceNames::place_of(std::string_view words) const {
  const std::size_t places = draft_.fields().size();
  for (std::size_t place = 0; place < places; ++place) {
    if (key_of(field(place), rules_) == words || names_section(words, place) ||
        trait_name(place) == words) {
      return place;
    }
  }
  for (std::size_t place = 0; place < places; ++place) {
    if (begins_title(words, place) || begins(question(place), words)) {
      return place;
    }
  }
  return std::nullopt;
}

Parsed<PlaceRange> PlaceNames::find(std::string_view words) const {
  const auto place = words.empty() ? std::nullopt : place_of(words);
  if (!place) {
    return unknown(words);
  }
  PlaceRange range{*place, *place};
  if (names_section(words, *place) || begins_title(words, *place)) {
    while (!ends_section(range.end)) {
      ++range.end;
    }
    ++range.end;
  }
  return range;
}

Problem PlaceNames::unknown(std::string_view words) const {
  Nearest nearest(words);
  std::vector<std::string_view> sections{head_name};
  for (const BenchSection& section : draft_.sections()) {
    sections.push_back(short_name(section, rules_));
    nearest.offer(sections.back());
    for (const std::size_t trait : section.traits) {
      nearest.offer(rules_.traits[trait].name);
    }
  }
  return {fmt::format("there is no `{}` to go to", shown_safely(words)),
          nearest.found() ? nearest.question()
                          : fmt::format("the sections are `{}`", fmt::join(sections, "`, `"))};
}

}  // namespace heelrule
