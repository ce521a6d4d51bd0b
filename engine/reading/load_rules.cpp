#include "engine/reading/load_rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <optional>

#include "engine/reading/join.hpp"
#include "engine/reading/map_reader.hpp"
#include "engine/reading/read_rule_set.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/reading/yaml_tree.hpp"

namespace heelrule {
namespace {

constexpr std::string_view language_version = "1";
constexpr std::size_t deepest = 32;
constexpr std::size_t most_files = 1000;
// What a rule set says of itself, and not of what builds on it.
constexpr std::array<std::string_view, 6> own_keys{"heelrule", "title",   "edition",
                                                   "about",    "extends", "drop"};

bool is_own_key(std::string_view key) {
  return std::find(own_keys.begin(), own_keys.end(), key) != own_keys.end();
}

class Loader {
 public:
  Loader(const FindFile& find, Sources& sources, Diagnostics& diagnostics)
      : find_(find), sources_(sources), diagnostics_(diagnostics) {}

  // The file with everything it builds on joined in; nothing where it could not be read.
  std::optional<Node> load(const FoundFile& file) {
    const auto known = done_.find(file.identity);
    if (known != done_.end()) {
      return known->second;
    }
    const std::uint32_t source =
        sources_.add(file.name, std::string(without_byte_order_mark(file.text)));
    open_.push_back({file.identity, file.name});
    std::optional<Node> tree = read_yaml(sources_, source, diagnostics_);
    if (tree && !tree->is_map()) {
      diagnostics_.error(
          tree->where,
          fmt::format("a rule set is a map of keys, and this is {}", in_words(tree->kind)),
          "begin with `title: …`");
      tree.reset();
    }
    if (tree) {
      check_version(*tree);
      tree = built_up(*tree, file.identity);
    } else {
      complete_ = false;
    }
    open_.pop_back();
    done_.emplace(file.identity, tree);
    return tree;
  }

  /// Whether every file that was asked for could be read.
  bool complete() const { return complete_; }

 private:
  struct Open {
    std::string identity;
    std::string name;
  };

  void check_version(const Node& tree) {
    const Node* version = tree.find("heelrule");
    if (version != nullptr && version->is_text() && version->text != language_version) {
      diagnostics_.error(
          version->where,
          fmt::format("version `{}` of the rule language is not known here", version->text),
          fmt::format("this heelrule reads version {}", language_version));
    }
  }

  Node built_up(const Node& own, const std::string& identity) {
    std::vector<Disagreement> disagreements;
    Node base;
    base.kind = Node::Kind::map;
    base.where = own.where;
    const bool in_part = !inherit(own, identity, base, disagreements);
    drop_from(base, own, in_part, disagreements);
    for (const Disagreement& disagreement : disagreements) {
      if (!decides(own, disagreement.path)) {
        report(own, disagreement);
      }
    }
    lay_over(base, own);
    if (in_part) {
      mark_in_part(base);
    }
    return base;
  }

  // Joins all that a file extends to `base`; whether all of it could be read.
  bool inherit(const Node& own, const std::string& identity, Node& base,
               std::vector<Disagreement>& disagreements) {
    bool is_whole = lists_texts(own, "extends");
    complete_ = complete_ && is_whole;
    for (const Located<std::string>& name : listed(own, "extends")) {
      const auto parent = load_parent(name, identity);
      is_whole = is_whole && parent && !parent->in_part;
      if (parent) {
        Node inherited = *parent;
        std::erase_if(inherited.entries, [](const Entry& e) { return is_own_key(e.key.value); });
        join_beside(base, inherited, disagreements);
      }
    }
    return is_whole;
  }

  // About what is dropped nobody disagrees any more.
  void drop_from(Node& base, const Node& own, bool in_part,
                 std::vector<Disagreement>& disagreements) {
    for (const Located<std::string>& path : listed(own, "drop")) {
      if (!drop(base, path.value) && !in_part) {
        diagnostics_.error(path.where, fmt::format("there is no `{}` to drop", path.value),
                           "name it with its kind: `rules.heel_pitch`, `traits.heel_height`");
      }
      std::erase_if(disagreements, [&](const Disagreement& d) {
        return d.path == path.value || d.path.starts_with(path.value + ".");
      });
    }
  }

  static void mark_in_part(Node& node) {
    node.in_part = true;
    for (Entry& entry : node.entries) {
      mark_in_part(entry.value);
    }
  }

  void report(const Node& own, const Disagreement& disagreement) {
    diagnostics_.error(
        probable_entry(own, "extends")->value.where,
        fmt::format("two of these say different things about `{}`", disagreement.path),
        "say it in this file too, which decides it, or drop it",
        {{disagreement.first, "one says this"}, {disagreement.second, "the other says this"}});
  }

  // Whether a key, if it is there, is a list of texts alone.
  static bool lists_texts(const Node& own, std::string_view key) {
    const Entry* entry = probable_entry(own, key);
    return entry == nullptr || (entry->value.is_list() &&
                                std::all_of(entry->value.items.begin(), entry->value.items.end(),
                                            [](const Node& item) { return item.is_text(); }));
  }

  std::vector<Located<std::string>> listed(const Node& own, std::string_view key) {
    std::vector<Located<std::string>> names;
    const Entry* entry = probable_entry(own, key);
    if (entry == nullptr || entry->value.kind == Node::Kind::nothing) {
      return names;  // an empty key is reported when the rule set is read
    }
    const Node* node = &entry->value;
    if (!node->is_list()) {
      diagnostics_.error(node->where,
                         fmt::format("`{}` is a list, and this is {}", key, in_words(node->kind)),
                         fmt::format("write `{}: [{}]`", key, node->is_text() ? node->text : "…"));
      return names;
    }
    for (const Node& item : node->items) {
      const Located<std::string> name = read_plain_text(item, key, diagnostics_);
      if (item.is_text()) {
        names.push_back(name);
      }
    }
    return names;
  }

  std::optional<Node> load_parent(const Located<std::string>& name, const std::string& from) {
    const auto file = find_(name.value, from);
    if (!file) {
      diagnostics_.error(name.where, file.problem());
      complete_ = false;
      return std::nullopt;
    }
    const auto circle = std::find_if(open_.begin(), open_.end(), [&](const Open& open) {
      return open.identity == file->identity;
    });
    if (circle != open_.end()) {
      std::string chain;
      for (auto at = circle; at != open_.end(); ++at) {
        chain += fmt::format("`{}` extends ", at->name);
      }
      diagnostics_.error(
          name.where, fmt::format("these rule sets run in a circle: {}`{}`", chain, circle->name),
          "take one of them out of `extends`");
      complete_ = false;
      return std::nullopt;
    }
    if (open_.size() >= deepest || done_.size() >= most_files) {
      diagnostics_.error(name.where,
                         fmt::format("this builds on more than {} files in a row or {} in all",
                                     deepest, most_files),
                         "build on fewer");
      complete_ = false;
      return std::nullopt;
    }
    return load(*file);
  }

  const FindFile& find_;
  Sources& sources_;
  Diagnostics& diagnostics_;
  std::map<std::string, std::optional<Node>, std::less<>> done_;
  std::vector<Open> open_;
  bool complete_ = true;
};

}  // namespace

LoadedRules load_rules(std::string_view name, const FindFile& find, Sources& sources) {
  LoadedRules loaded;
  const auto file = find(name, {});
  if (!file) {
    loaded.not_found = file.problem();
    return loaded;
  }
  Loader loader(find, sources, loaded.diagnostics);
  auto tree = loader.load(*file);
  if (tree) {
    loaded.rules = read_rule_set(std::string(name), *tree, loaded.diagnostics);
    loaded.complete = loader.complete();
    loaded.tree = std::move(*tree);
  }
  return loaded;
}

}  // namespace heelrule
