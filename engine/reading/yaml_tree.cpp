// The only file that knows yaml-cpp, and the only one of the engine that needs exceptions.
#include "engine/reading/yaml_tree.hpp"

#include <fmt/format.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <istream>
#include <set>
#include <streambuf>

#include "engine/reading/text_gate.hpp"

namespace heelrule {
namespace {

constexpr std::size_t longest_opener_run = 256;
// Ends the document, so that a quote left open at the end of the file cannot swallow it unnoticed.
constexpr std::string_view sentinel = "\n...\n";

// Stops the parser where going on makes no sense; what was wrong has been reported by then.
struct Stop {};

class TextBuffer : public std::streambuf {
 public:
  explicit TextBuffer(std::string& text) {
    setg(text.data(), text.data(), text.data() + text.size());
  }
};

class TreeBuilder : public YAML::EventHandler {
 public:
  TreeBuilder(std::string_view text, std::uint32_t source, Diagnostics& diagnostics)
      : text_(text), source_(source), diagnostics_(diagnostics) {}

  Node take_root() { return std::move(root_); }

  void OnDocumentStart(const YAML::Mark& mark) override {
    if (documents_++ > 0) {
      second_document(mark);
    }
  }

  void OnDocumentEnd() override {}

  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    refuse_anchor(mark, anchor);
    add({Node::Kind::nothing, point(mark), {}, {}, {}, {}});
  }

  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
    diagnostics_.error(word_at(mark), "an alias stands for something written elsewhere",
                       "write the value itself");
    add({Node::Kind::nothing, point(mark), {}, {}, {}, {}});
  }

  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    refuse_anchor(mark, anchor);
    refuse_tag(mark, tag);
    if (value.size() > TreeLimits::text_bytes) {
      stop(point(mark),
           fmt::format("this text is longer than {} KiB", TreeLimits::text_bytes >> 10U),
           "shorten it");
    }
    add({Node::Kind::text, span_of(mark, value), value, {}, {}, {}});
  }

  void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value) override {
    open(mark, tag, anchor, Node::Kind::list);
  }

  void OnSequenceEnd() override { close(); }

  void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value) override {
    open(mark, tag, anchor, Node::Kind::map);
  }

  void OnMapEnd() override { close(); }

  void second_document(const YAML::Mark& mark) {
    stop(point(mark), "a second document begins here, and everything after it would be dropped",
         "put it in a file of its own");
  }

  Span point(const YAML::Mark& mark) const {
    const auto at = static_cast<std::uint32_t>(
        std::clamp<std::ptrdiff_t>(mark.pos, 0, static_cast<std::ptrdiff_t>(text_.size())));
    return {source_, at, at};
  }

  // From a mark to the end of the word there.
  Span word_at(const YAML::Mark& mark) const {
    Span where = point(mark);
    while (where.end < text_.size() &&
           std::string_view(" \t\r\n,]}").find(text_[where.end]) == std::string_view::npos) {
      ++where.end;
    }
    return where;
  }

 private:
  // A list or map that is being read; of a map, the key that waits for its value.
  struct Level {
    Node node;
    std::optional<Located<std::string>> key;
    std::set<std::string, std::less<>> keys;
  };

  [[noreturn]] void stop(Span where, std::string message, std::string hint) {
    diagnostics_.error(where, std::move(message), std::move(hint));
    throw Stop{};
  }

  void refuse_anchor(const YAML::Mark& mark, YAML::anchor_t anchor) {
    if (anchor != 0) {
      diagnostics_.error(word_at(mark), "an anchor is not part of this language",
                         "leave the `&` and its name out");
    }
  }

  void refuse_tag(const YAML::Mark& mark, const std::string& tag) {
    if (!tag.empty() && tag != "?" && tag != "!") {
      diagnostics_.error(word_at(mark), "a tag is not part of this language",
                         "leave the `!` and its name out");
    }
  }

  // The bytes of a text, where they stand in the file as they are; else the word where it begins.
  Span span_of(const YAML::Mark& mark, const std::string& value) const {
    Span where = point(mark);
    const std::string_view rest = text_.substr(where.begin);
    const bool quoted = !rest.empty() && (rest.front() == '"' || rest.front() == '\'');
    if (quoted && rest.substr(1).starts_with(value)) {
      ++where.begin;
    }
    if (quoted || rest.starts_with(value)) {
      where.end = std::min(where.begin + static_cast<std::uint32_t>(value.size()),
                           static_cast<std::uint32_t>(text_.size()));
      return where;
    }
    return word_at(mark);
  }

  void open(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
            Node::Kind kind) {
    refuse_anchor(mark, anchor);
    refuse_tag(mark, tag);
    if (levels_.size() >= TreeLimits::depth) {
      stop(point(mark), fmt::format("this is nested more than {} deep", TreeLimits::depth),
           "no rule set or inspection needs that");
    }
    if (!levels_.empty() && levels_.back().node.is_map() && !levels_.back().key) {
      stop(point(mark), "a key must be a text", "write `key: value`");
    }
    levels_.push_back({{kind, point(mark), {}, {}, {}, {}}, std::nullopt, {}});
  }

  void close() {
    Node done = std::move(levels_.back().node);
    levels_.pop_back();
    add(std::move(done));
  }

  void add(Node node) {
    if (++values_ > TreeLimits::values) {
      stop(node.where, fmt::format("this file holds more than {} values", TreeLimits::values),
           "split it");
    }
    if (levels_.empty()) {
      root_ = std::move(node);
      return;
    }
    Level& level = levels_.back();
    if (level.node.is_list()) {
      level.node.items.push_back(std::move(node));
    } else if (level.key) {
      add_entry(level, std::move(node));
    } else {
      begin_entry(level, std::move(node));
    }
  }

  void begin_entry(Level& level, Node key) {
    if (!key.is_text()) {
      diagnostics_.error(key.where, "a key is missing before the `:`", "write `key: value`");
    }
    if (key.text == "<<") {
      diagnostics_.error(key.where, "a merge key is not part of this language",
                         "use `extends` to build on another rule set");
    }
    level.key = {key.text, key.where};
  }

  void add_entry(Level& level, Node value) {
    Located<std::string> key = std::move(*level.key);
    level.key.reset();
    if (value.kind == Node::Kind::nothing) {
      value.where = key.where;  // the parser places it at whatever comes next
    }
    if (!level.keys.insert(key.value).second) {
      const auto first = std::find_if(level.node.entries.begin(), level.node.entries.end(),
                                      [&](const Entry& e) { return e.key.value == key.value; });
      diagnostics_.error(key.where, fmt::format("the key `{}` comes a second time", key.value),
                         "keep one of the two", {{first->key.where, "the first one is here"}});
      return;
    }
    level.node.entries.push_back({std::move(key), std::move(value)});
  }

  std::string_view text_;
  std::uint32_t source_;
  Diagnostics& diagnostics_;
  Node root_;
  std::vector<Level> levels_;
  std::size_t values_ = 0;
  std::size_t documents_ = 0;
};

// The parser takes 231 bytes for every opening bracket before it says that there are too many.
bool has_opener_run(std::string_view text, Span& where) {
  std::size_t run = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const char c = text[at];
    if (c == '[' || c == '{') {
      if (++run > longest_opener_run) {
        where.begin = static_cast<std::uint32_t>(at);
        where.end = where.begin + 1;
        return true;
      }
    } else if (c != ' ' && c != ',' && c != '\n' && c != '\r' && c != '\t' && c != '-' &&
               c != '?') {
      run = 0;
    }
  }
  return false;
}

// The parser's own words are short, some of them wrong, and some hold raw bytes of the file.
Problem explained(std::string_view said, std::string_view line) {
  if (line.find_first_not_of(' ') != std::string_view::npos &&
      line[line.find_first_not_of(' ')] == '\t') {
    return {"a line is indented with a tab", "indent with blanks"};
  }
  if (said.find("document indicator") != std::string_view::npos ||
      said.find("end of file") != std::string_view::npos ||
      said.find("end of scalar") != std::string_view::npos) {
    return {"a quote is not closed before the file ends",
            "close the text with the quote it began with"};
  }
  if (said.find("escape") != std::string_view::npos) {
    return {"this backslash sequence is not known",
            "write `\\\\` for a backslash in a quoted text"};
  }
  if (said.find("end of map") != std::string_view::npos ||
      said.find("end of sequence") != std::string_view::npos ||
      said.find("flow") != std::string_view::npos) {
    return {"a list or map in brackets goes wrong here",
            "check commas and closing brackets; put a text with `,` `:` or brackets in quotes"};
  }
  if (said.find("map value") != std::string_view::npos) {
    return {"a `:` stands where none is due",
            "put a text that holds `: ` in quotes, and check the indentation"};
  }
  return {fmt::format("this is no YAML: {}", said.substr(0, 60)),
          "check the indentation, and put texts with special signs in quotes"};
}

}  // namespace

std::optional<Node> read_yaml(const Sources& sources, std::uint32_t source,
                              Diagnostics& diagnostics) {
  const std::string_view text = sources.text(source);
  if (!passes_gate(text, source, diagnostics)) {
    return std::nullopt;
  }
  Span run{source, 0, 0};
  if (has_opener_run(text, run)) {
    diagnostics.error(run, fmt::format("more than {} brackets open in a row", longest_opener_run),
                      "no rule set or inspection needs that");
    return std::nullopt;
  }
  const std::size_t errors_before = diagnostics.error_count();
  TreeBuilder builder(text, source, diagnostics);
  std::string guarded = fmt::format("{}{}", text, sentinel);
  TextBuffer buffer(guarded);
  std::istream stream(&buffer);
  try {
    YAML::Parser parser(stream);
    if (!parser.HandleNextDocument(builder)) {
      diagnostics.error({source, 0, 0}, "the file is empty", "write at least a title");
    } else {
      parser.HandleNextDocument(builder);  // anything it finds is a second document
    }
  } catch (const Stop&) {
    return std::nullopt;
  } catch (const YAML::Exception& problem) {
    const Span where = builder.point(problem.mark);
    diagnostics.error(where, explained(problem.msg, sources.line(source, where.begin)));
    return std::nullopt;
  }
  if (diagnostics.error_count() > errors_before) {
    return std::nullopt;
  }
  return builder.take_root();
}

}  // namespace heelrule
