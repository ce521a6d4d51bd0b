#include "engine/reading/yaml_fault.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <vector>

#include "engine/reading/quoted_text.hpp"

namespace heelrule {
namespace {

Located<Problem> at(std::uint32_t source, std::size_t begin, std::size_t end, Problem problem) {
  return {std::move(problem),
          {source, static_cast<std::uint32_t>(begin), static_cast<std::uint32_t>(end)}};
}

// Follows quotes, brackets, comments and block texts through a file, and nothing else.
class Follower {
 public:
  explicit Follower(std::string_view text) : text_(text) {}

  // The opening sign of what is never closed.
  std::optional<std::size_t> never_closed() {
    while (at_ < text_.size() && !found_) {
      step(text_[at_]);
    }
    return found_ || open_.empty() ? found_ : std::optional(open_.front());
  }

  // The opening quote of a text that runs over the end of its line and is closed right before
  // `place`.
  std::optional<std::size_t> long_quote_before(std::size_t place) {
    place_ = place;
    never_closed();
    return long_quote_;
  }

 private:
  void step(char c) {
    const bool after_blank = at_ == 0 || is_blank(text_[at_ - 1]);
    const bool before_blank = at_ + 1 == text_.size() || is_blank(text_[at_ + 1]);
    if (c == '#' && after_blank) {
      at_ = std::min(text_.find('\n', at_), text_.size());
    } else if ((c == '"' || c == '\'') && may_begin_) {
      quoted();
    } else if ((c == '[' || c == '{') && (may_begin_ || !open_.empty())) {
      open_.push_back(at_++);
      may_begin_ = true;
    } else if ((c == ']' || c == '}') && !open_.empty()) {
      close(c);
    } else if ((c == '|' || c == '>') && may_begin_ && open_.empty()) {
      block_text();
    } else if (c == '\n') {
      line_ = ++at_;
      may_begin_ = true;
    } else {
      const bool goes_before_a_value = (c == ':' && before_blank) || (c == ',' && !open_.empty()) ||
                                       ((c == '-' || c == '?') && before_blank && may_begin_);
      may_begin_ = goes_before_a_value || (is_blank(c) && may_begin_);
      ++at_;
    }
  }

  void quoted() {
    const std::size_t begin = at_;
    const auto length = quoted_length(text_.substr(begin));
    if (!length) {
      found_ = begin;
      return;
    }
    at_ += *length;
    may_begin_ = false;
    const bool runs_on = text_.substr(begin, *length).find('\n') != std::string_view::npos;
    if (runs_on && at_ <= place_ && place_ <= at_ + 1) {
      long_quote_ = begin;
    }
  }

  void close(char c) {
    const char opened = text_[open_.back()];
    if (opened != (c == ']' ? '[' : '{')) {
      found_ = open_.back();
    }
    open_.pop_back();
    ++at_;
    may_begin_ = false;
  }

  // Passes over the lines that are indented deeper than the one where the block text begins.
  void block_text() {
    const std::size_t indent = indentation(line_);
    do {
      line_ = std::min(text_.find('\n', at_), text_.size() - 1) + 1;
      at_ = line_;
    } while (at_ < text_.size() && (indentation(at_) > indent || text_[at_] == '\n'));
    may_begin_ = true;
  }

  std::size_t indentation(std::size_t line) const {
    return std::min(text_.find_first_not_of(' ', line), text_.size()) - line;
  }

  static bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

  std::string_view text_;
  std::size_t at_ = 0;
  std::size_t line_ = 0;           // where the current line begins
  bool may_begin_ = true;          // whether a quote or bracket here would open something
  std::vector<std::size_t> open_;  // brackets
  std::optional<std::size_t> found_;
  std::size_t place_ = 0;
  std::optional<std::size_t> long_quote_;
};

// What a parser says, and what that means. Its own words are short, some of them wrong, and some
// hold raw bytes of the file, so none of them is passed on.
struct Saying {
  std::string_view words;
  const char* message;
  const char* hint;
};

constexpr const char* backslash_hint = "write `\\\\` for a backslash in a text in double quotes";
constexpr const char* quotes_hint = "put the text that it belongs to in quotes";

constexpr std::array<Saying, 15> sayings{{
    {"escape", "this backslash sequence is not known", backslash_hint},
    {"hex number", "this backslash sequence is not known", backslash_hint},
    {"unicode", "this backslash sequence is not known", backslash_hint},
    {"map value", "a `:` stands where none is due",
     "put a text that holds `: ` in quotes, and check the indentation"},
    {"block entry", "a `-` stands where none is due",
     "begin each item on a line of its own, all indented alike"},
    {"flow", "a list or map in brackets goes wrong here",
     "check commas and closing brackets; put a text with `,` `:` or brackets in quotes"},
    {"end of map", "this does not fit what stands before it",
     "check the indentation, and put a text that holds quotes or braces in quotes as a whole"},
    {"end of sequence", "this does not fit what stands before it",
     "check the indentation, and put a text that holds quotes or braces in quotes as a whole"},
    {"unknown token", "", quotes_hint},
    {"referenced anchor", "an alias stands for something written elsewhere",
     "write the value itself, in quotes if the `*` is meant as such"},
    {"anchor", "", quotes_hint},
    {"alias", "", quotes_hint},
    {"tag", "", quotes_hint},
    {"block scalar", "a text of several lines begins wrongly",
     "write `|` or `>-` alone, and the text below it, indented"},
    {"", "this is no YAML", "check the indentation, and put texts with special signs in quotes"},
}};

// The colon of a `key:value` on the line before `line`: it makes one text of both, which runs on.
std::optional<std::size_t> tight_colon(std::string_view text, std::size_t line) {
  if (line == 0) {
    return std::nullopt;
  }
  const std::size_t before = line < 2 ? 0 : text.rfind('\n', line - 2) + 1;
  const std::size_t word = std::min(text.find_first_not_of(" -", before), line);
  const std::size_t end = text.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_", word);
  const bool tight = end != std::string_view::npos && end > word && end + 1 < line &&
                     text[end] == ':' && text[end + 1] != '\n' && text[end + 1] != ' ';
  return tight ? std::optional(end) : std::nullopt;
}

std::string quoted(std::string_view sign) {
  const bool plain = sign.size() == 1 && sign[0] > ' ' && sign[0] <= '~';
  return plain ? fmt::format("this `{}`", sign) : "this sign";
}

}  // namespace

std::optional<Located<Problem>> never_closed(std::string_view text, std::uint32_t source) {
  const auto open = Follower(text).never_closed();
  if (!open) {
    return std::nullopt;
  }
  const char c = text[*open];
  if (c == '"' || c == '\'') {
    return at(source, *open, *open + 1,
              {"this quote is never closed", "close the text with the quote it began with"});
  }
  return at(source, *open, *open + 1,
            {fmt::format("this `{}` is never closed", c),
             fmt::format("write the `{}` that belongs to it", c == '[' ? ']' : '}')});
}

Located<Problem> yaml_fault(std::string_view text, std::uint32_t source, std::size_t mark,
                            std::string_view said) {
  const std::size_t place = std::min(mark, text.size());
  const std::size_t line = place == 0 ? 0 : text.rfind('\n', place - 1) + 1;
  const std::size_t first = std::min(text.find_first_not_of(' ', line), text.size());
  if (first < text.size() && text[first] == '\t') {
    return at(source, first, first + 1, {"a line is indented with a tab", "indent with blanks"});
  }
  if (auto open = never_closed(text, source); open && open->where.begin <= place) {
    return *std::move(open);
  }
  if (const auto quote = Follower(text).long_quote_before(place)) {
    return at(source, *quote, *quote + 1,
              {"this quote is not closed on its line",
               "write the closing quote, and double a quote that is meant as such"});
  }
  if (const auto colon = tight_colon(text, line); colon && said.find("map value") < said.size()) {
    return at(source, *colon, *colon + 1,
              {"a blank is missing after this `:`", "write `key: value`"});
  }
  const auto saying = std::find_if(sayings.begin(), sayings.end(), [&](const Saying& known) {
    return said.find(known.words) != std::string_view::npos;
  });
  const std::size_t backslash = text.rfind('\\', place);
  if (saying->hint == backslash_hint && backslash != std::string_view::npos) {
    return at(source, backslash, std::max(place, backslash + 1), {saying->message, saying->hint});
  }
  if (saying->hint == quotes_hint) {
    // The parser has passed over the sign that begins an anchor, an alias or a tag.
    const bool passed =
        place > 0 && std::string_view("&*!").find(text[place - 1]) != std::string_view::npos;
    const std::size_t sign = place - (passed ? 1 : 0);
    const std::size_t end = std::min(sign + 1, text.size());
    return at(
        source, sign, end,
        {fmt::format("{} cannot stand here", quoted(text.substr(sign, end - sign))), saying->hint});
  }
  return at(source, place, place, {saying->message, saying->hint});
}

}  // namespace heelrule
