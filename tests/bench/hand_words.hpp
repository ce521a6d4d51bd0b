// Part of the scorer that is written by hand (see hand_writer.hpp): the words of thirty rules.
#pragma once

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/decimal.hpp"
#include "engine/report/json_writer.hpp"
#include "thirty_rules.hpp"

namespace thirty {

using heelrule::append_shortest;
using Text = std::string_view;

struct BandWords {
  std::string reading;   // from the end of the number to the limit's distance, or to the end
  std::string sentence;  // after the value, up to the distance or to the end
  std::string sentence_end;
  double limit = 0;
  int toward = 0;                   // -1: the better band lies below; 1: above; 0: none
  std::vector<std::string> pieces;  // of own words: text, slot, text, slot, …
};

struct RuleWords {
  std::string head, must, reasons;
  std::vector<BandWords> bands;
  std::string advice, caution, referral;
  std::size_t section = 0;
  std::array<std::string, 2> missing, question;
};

inline std::string quoted(Text text) { return heelrule::json_text(text); }
inline std::string shown(double number, const TraitFacts& trait) {
  std::string text;
  append_shortest(text, number / trait.per_unit);
  return text + (trait.unit == "°" ? "" : " ") + std::string(trait.unit);
}

inline BandWords band_words(const RuleFacts& rule, const TraitFacts& trait, std::size_t i) {
  const std::vector<BandFacts>& bands = rule.bands;
  BandWords words;
  std::string credit;
  append_shortest(credit, bands[i].credit / 1e6);
  if (!trait.levels.empty()) {
    words.reading = R"(","value":)" + quoted(bands[i].name) + R"(,"band":)" +
                    quoted(bands[i].name) + R"(,"credit":)" + credit + "}";
    return words;
  }
  const bool below = i > 0 && bands[i - 1].credit > bands[i].credit;
  const bool above = i + 1 < bands.size() && bands[i + 1].credit > bands[i].credit;
  words.toward = above && (!below || bands[i + 1].credit >= bands[i - 1].credit) ? 1
                 : below                                                         ? -1
                                                                                 : 0;
  words.reading = R"(,"unit":)" + quoted(trait.unit) + R"(,"band":)" + quoted(bands[i].name) +
                  R"(,"credit":)" + credit;
  const auto cut = [&](std::size_t at) { return shown(bands[at].below, trait); };
  std::string where = i == 0                  ? "below " + cut(0)
                      : i + 1 == bands.size() ? cut(i - 1) + " or more"
                                              : cut(i - 1) + " to below " + cut(i);
  words.sentence = " is " + std::string(bands[i].name) + " (" + where + ")";
  if (words.toward != 0) {
    words.limit = bands[words.toward > 0 ? i : i - 1].below;
    words.reading += R"(,"limit":)";
    append_shortest(words.reading, words.limit / trait.per_unit);
    words.reading += words.toward > 0 ? R"(,"short_by":)" : R"(,"over_by":)";
    words.sentence += ", ";
    words.sentence_end = (words.toward > 0 ? " short of " : " over ") + shown(words.limit, trait);
  }
  Text say = bands[i].say;
  while (!say.empty()) {
    const std::size_t open = std::min(say.find('{'), say.size());
    const std::size_t close = std::min(say.find('}', open), say.size());
    words.pieces.emplace_back(say.substr(0, open));
    words.pieces.emplace_back(open == say.size() ? Text{} : say.substr(open + 1, close - open - 1));
    say.remove_prefix(std::min(close + 1, say.size()));
  }
  return words;
}

inline void prepare(const RuleFacts& rule, RuleWords& words) {
  const TraitFacts& trait = traits[static_cast<std::size_t>(rule.trait)];
  const std::string start =
      R"("rule":)" + quoted(trait.name) + R"(,"title":)" + quoted(trait.title);
  words.head = "{" + start + R"(,"section":)" + quoted(rule.section) + R"(,"reads":)" +
               quoted(trait.name) + R"(,"status":")";
  words.must = std::string(R"(,"must":)") + (rule.cap > 0 ? "true" : "false") + R"(,"caps_at":)";
  words.reasons =
      R"(,"because":)" + quoted(rule.because) + R"(,"source":"common practice","notes":[)";
  const auto spoken = [&](Text text) {
    return text.empty() ? std::string{}
                        : "{" + start + R"(,"words":)" + quoted(text) + R"(,"gain":)";
  };
  words.advice = spoken(rule.advice);
  words.caution = spoken(rule.caution);
  words.referral = spoken(rule.referral);
  for (std::size_t i = 0; i < sections.size(); ++i) {
    words.section = sections[i][0] == rule.section ? i : words.section;
  }
  for (std::size_t i = 0; i < rule.bands.size(); ++i) {
    words.bands.push_back(band_words(rule, trait, i));
  }
}

}  // namespace thirty
