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

#include "engine/reading/quoted_text.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/reading/yaml_fault.hpp"
#include "engine/reading/yaml_gate.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

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
    add(leaf(Node::Kind::nothing, place_of_nothing(mark)));
  }

  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
    diagnostics_.error(word_at(mark), "an alias stands for something written elsewhere",
                       "write the value itself, in quotes if the `*` is meant as such");
    add(leaf(Node::Kind::nothing, point(mark)));
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
    const Span where = span_of(mark, value);
    if (const auto offence = first_offence(value)) {
      // An escape can bring in what the gate has kept out of the file itself.
      diagnostics_.error(where, fmt::format("this text holds {}", offence->what),
                         "write it without, and double a backslash that is meant as such");
    }
    add(leaf(Node::Kind::text, where, value));
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
    const Span where = point(mark);
    if (text_.substr(where.begin).starts_with("---")) {
      stop(where, "a second document begins here, and all of it would be dropped",
           "put it in a file of its own");
    }
    stop(where, "from here on this belongs to nothing before it, and would be dropped",
         "check indentation, brackets and quotes up to here");
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
                         "leave it out, or put the text in quotes if the `&` is meant as such");
    }
  }

  void refuse_tag(const YAML::Mark& mark, const std::string& tag) {
    if (!tag.empty() && tag != "?" && tag != "!") {
      diagnostics_.error(word_at(mark), "a tag is not part of this language",
                         "leave it out, or put the text in quotes if the `!` is meant as such");
    }
  }

  static Node leaf(Node::Kind kind, Span where, std::string text = {}) {
    Node node;
    node.kind = kind;
    node.where = where;
    node.text = std::move(text);
    return node;
  }

  // The parser places what is missing at whatever comes next; we at the sign before it.
  Span place_of_nothing(const YAML::Mark& mark) const {
    const Span where = point(mark);
    const std::size_t before = text_.substr(0, where.begin).find_last_not_of(" \t\r\n");
    if (before == std::string_view::npos ||
        std::string_view("-,[").find(text_[before]) == std::string_view::npos) {
      return where;
    }
    const auto begin = static_cast<std::uint32_t>(before);
    return {source_, begin, begin + 1};
  }

  // The bytes of a text, where they stand in the file as they are; else all of a quoted text with
  // its quotes, or the word where it begins.
  Span span_of(const YAML::Mark& mark, const std::string& value) const {
    Span where = point(mark);
    const std::string_view rest = text_.substr(where.begin);
    const bool quoted = rest.starts_with('"') || rest.starts_with('\'');
    if (!quoted && !rest.starts_with(value)) {
      return word_at(mark);
    }
    const std::size_t length = quoted ? quoted_length(rest).value_or(rest.size()) : value.size();
    where.end += static_cast<std::uint32_t>(length);
    if (quoted && rest.substr(1, length - 2) == value) {
      ++where.begin;
      --where.end;
    }
    return where;
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
      refuse_key(point(mark));
    }
    levels_.push_back({leaf(kind, point(mark)), std::nullopt, {}});
  }

  // A bracket that is never closed also ends in a list, a map or nothing where a key is due.
  [[noreturn]] void refuse_key(Span where) {
    if (const auto open = never_closed(text_, source_)) {
      stop(open->where, open->value.message, open->value.hint);
    }
    stop(where, "a text is due before the `:`", "write `key: value`");
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
      begin_entry(level, node);
    }
  }

  void begin_entry(Level& level, const Node& key) {
    if (!key.is_text()) {
      refuse_key(key.where);
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

}  // namespace

std::optional<Node> read_yaml(const Sources& sources, std::uint32_t source,
                              Diagnostics& diagnostics) {
  const std::string_view text = sources.text(source);
  if (!passes_gate(text, source, diagnostics) || !passes_yaml_gate(text, source, diagnostics)) {
    return std::nullopt;
  }
  const std::size_t errors_before = diagnostics.error_count();
  TreeBuilder builder(text, source, diagnostics);
  std::string guarded = fmt::format("{}{}", text, sentinel);
  TextBuffer buffer(guarded);
  std::istream stream(&buffer);
  try {
    YAML::Parser parser(stream);
    parser.HandleNextDocument(builder);
    parser.HandleNextDocument(builder);  // anything it finds is a second document
  } catch (const Stop&) {
    return std::nullopt;
  } catch (const YAML::Exception& problem) {
    const std::size_t mark = builder.point(problem.mark).begin;
    const Located<Problem> fault = yaml_fault(text, source, mark, problem.msg);
    diagnostics.error(fault.where, fault.value);
    return std::nullopt;
  }
  if (diagnostics.error_count() > errors_before) {
    return std::nullopt;
  }
  Node root = builder.take_root();
  if (root.kind == Node::Kind::nothing) {
    diagnostics.error({source, 0, 0}, "the file holds nothing", "write `key: value` lines");
    return std::nullopt;
  }
  return root;
}

}  // namespace heelrule
