#include "engine/scoring/phrase.hpp"

#include <fmt/format.h>

#include <array>

#include "engine/quantity/nearest.hpp"

namespace heelrule {
namespace {

struct Placeholder {
  std::string_view name;
  Slot slot;
};

constexpr std::array<Placeholder, 6> placeholders{{{"value", Slot::value},
                                                   {"side", Slot::side},
                                                   {"limit", Slot::limit},
                                                   {"short_by", Slot::short_by},
                                                   {"over_by", Slot::over_by},
                                                   {"band", Slot::band}}};

// Why a slot cannot be filled; empty if it can.
std::string_view obstacle(Slot slot, const SlotsAllowed& allowed) {
  const auto unless = [&](bool fits, std::string_view why) {
    return fits ? std::string_view{} : allowed.no_limit.empty() ? why : allowed.no_limit;
  };
  switch (slot) {
    case Slot::side:
      return allowed.side ? "" : "the trait has no sides";
    case Slot::limit:
      return unless(allowed.limit, "no neighbouring band earns more");
    case Slot::short_by:
      return unless(allowed.short_by, "no band above this one earns more");
    case Slot::over_by:
      return unless(allowed.over_by, "no band below this one earns more");
    case Slot::none:
    case Slot::value:
    case Slot::band:
      return "";
  }
  return "";
}

class PhraseReader {
 public:
  PhraseReader(const Wording& wording, const SlotsAllowed& allowed, Diagnostics& diagnostics)
      : wording_(wording), allowed_(allowed), diagnostics_(diagnostics) {}

  std::vector<Piece> read() {
    const std::string& text = wording_.words;
    std::size_t at = 0;
    while (at < text.size()) {
      const char c = text[at];
      const bool doubled = at + 1 < text.size() && text[at + 1] == c;
      if (c == '}' && !doubled) {
        fail(at, at + 1, "this `}` closes nothing", "write `}}` for a brace that is meant as such");
        ++at;
      } else if (c == '}' || (c == '{' && doubled)) {
        literal_ += c;
        at += 2;
      } else if (c == '{') {
        at = take_placeholder(at);
      } else {
        literal_ += c;
        ++at;
      }
    }
    flush();
    return std::move(pieces_);
  }

 private:
  std::size_t take_placeholder(std::size_t open) {
    const std::string_view text = wording_.words;
    const std::size_t close = text.find('}', open);
    if (close == std::string_view::npos) {
      fail(open, text.size(), "this `{` is not closed",
           "write `{{` for a brace that is meant as such");
      return text.size();
    }
    const std::string_view name = text.substr(open + 1, close - open - 1);
    Nearest nearest(name);
    for (const Placeholder& known : placeholders) {
      if (known.name == name) {
        add(known.slot, open, close + 1);
        return close + 1;
      }
      nearest.offer(known.name);
    }
    fail(open, close + 1, fmt::format("there is no placeholder `{{{}}}`", name),
         nearest.found()
             ? fmt::format("did you mean `{{{}}}`?", nearest.name())
             : "use `{value}`, `{side}`, `{limit}`, `{short_by}`, `{over_by}` or `{band}`");
    return close + 1;
  }

  void add(Slot slot, std::size_t begin, std::size_t end) {
    const std::string_view why = obstacle(slot, allowed_);
    if (!why.empty()) {
      fail(begin, end,
           fmt::format("`{}` cannot be filled here: {}", wording_.words.substr(begin, end - begin),
                       why),
           "leave it out, or say it in the words of a band where it can");
      return;
    }
    flush();
    pieces_.push_back({slot, {}});
  }

  void flush() {
    if (!literal_.empty()) {
      pieces_.push_back({Slot::none, std::move(literal_)});
      literal_.clear();
    }
  }

  void fail(std::size_t begin, std::size_t end, std::string message, std::string hint) {
    Span where = wording_.where;
    if (where.end - where.begin == wording_.words.size()) {
      where.end = where.begin + static_cast<std::uint32_t>(end);
      where.begin += static_cast<std::uint32_t>(begin);
    }
    diagnostics_.error(where, std::move(message), std::move(hint));
  }

  const Wording& wording_;
  const SlotsAllowed& allowed_;
  Diagnostics& diagnostics_;
  std::vector<Piece> pieces_;
  std::string literal_;
};

}  // namespace

bool Phrase::is_fixed() const {
  return std::all_of(wordings.begin(), wordings.end(), [](const PhraseWording& wording) {
    return std::all_of(wording.pieces.begin(), wording.pieces.end(),
                       [](const Piece& piece) { return piece.slot == Slot::none; });
  });
}

const PhraseWording& choose(const Phrase& phrase, std::span<const std::string> languages) {
  return phrase.wordings[choose_language(phrase.wordings, languages)];
}

Phrase read_phrase(const Text& text, const SlotsAllowed& allowed, Diagnostics& diagnostics) {
  Phrase phrase;
  for (const Wording& wording : text.wordings) {
    phrase.wordings.push_back(
        {wording.language, PhraseReader(wording, allowed, diagnostics).read()});
  }
  return phrase;
}

}  // namespace heelrule
