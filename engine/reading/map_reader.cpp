#include "engine/reading/map_reader.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/nearest.hpp"

namespace heelrule {
namespace {

bool is_empty(const Node& node) {
  return node.kind == Node::Kind::nothing ||
         (node.is_text() && node.text.find_first_not_of(" \n\t") == std::string::npos);
}

}  // namespace

const Entry* probable_entry(const Node& map, std::string_view key) {
  const auto written = std::find_if(map.entries.begin(), map.entries.end(),
                                    [&](const Entry& entry) { return entry.key.value == key; });
  if (written != map.entries.end()) {
    return &*written;
  }
  const Entry* meant = nullptr;
  for (const Entry& candidate : map.entries) {
    Nearest nearest(candidate.key.value);
    nearest.offer(key);
    meant = nearest.found() && meant == nullptr ? &candidate : meant;
  }
  return meant;
}

MapReader::MapReader(const Node& node, Span where, std::string_view what, Diagnostics& diagnostics)
    : node_(&node), where_(where), what_(what), diagnostics_(diagnostics) {
  if (!node.is_map()) {
    diagnostics.error(node.kind == Node::Kind::nothing ? where : node.where,
                      fmt::format("{} is a map of keys, and this is {}", what, in_words(node.kind)),
                      "write `key: value` lines below it, indented");
  }
}

Span MapReader::where(std::string_view key) const {
  const Entry* at = entry(key);
  return at == nullptr ? where_ : at->key.where;
}

bool MapReader::has(std::string_view key) const { return entry(key) != nullptr; }

void MapReader::know(std::string_view key) {
  if (std::find(known_.begin(), known_.end(), key) == known_.end()) {
    known_.push_back(key);
  }
}

const Node* MapReader::take(std::string_view key) {
  know(key);
  const Entry* at = entry(key);
  if (at == nullptr) {
    return nullptr;
  }
  if (is_empty(at->value)) {
    if (at->key.value == key) {
      diagnostics_.error(at->key.where, fmt::format("`{}` has no value", key),
                         "write one, or leave the key out");
    }
    return nullptr;
  }
  return &at->value;
}

const Node* MapReader::require(std::string_view key, std::string_view sample) {
  if (!excuses_missing() && entry(key) == nullptr) {
    missing_.push_back({key, sample});
  }
  return take(key);
}

Located<std::string> MapReader::text(std::string_view key) {
  const Node* value = take(key);
  return value == nullptr ? Located<std::string>{{}, where_}
                          : read_plain_text(*value, key, diagnostics_);
}

Located<std::string> MapReader::required_text(std::string_view key, std::string_view sample) {
  const Node* value = require(key, sample);
  return value == nullptr ? Located<std::string>{{}, where_}
                          : read_plain_text(*value, key, diagnostics_);
}

double MapReader::number(std::string_view key, double otherwise) {
  const Located<std::string> written = text(key);
  if (written.value.empty()) {
    return otherwise;
  }
  const auto number = parse_decimal(written.value);
  if (!number) {
    diagnostics_.error(written.where, number.problem());
    return otherwise;
  }
  return scaled(*number);
}

bool MapReader::yes_or_no(std::string_view key) {
  const Located<std::string> written = text(key);
  if (!written.value.empty() && written.value != "yes" && written.value != "no") {
    diagnostics_.error(written.where, fmt::format("`{}` is neither yes nor no", written.value),
                       "write `yes` or `no`");
  }
  return written.value == "yes";
}

std::string MapReader::remark(std::string_view key) {
  know(key);
  const Entry* at = entry(key);
  return at == nullptr || is_empty(at->value) ? std::string{}
                                              : read_plain_text(at->value, key, diagnostics_).value;
}

void MapReader::finish() {
  for (const MissingKey& missing : missing_) {
    diagnostics_.error(where_, fmt::format("{} needs `{}`", what_, missing.key),
                       fmt::format("add `{}: {}`", missing.key, missing.sample));
  }
  for (const Entry& entry : node_->entries) {
    if (std::find(known_.begin(), known_.end(), entry.key.value) != known_.end()) {
      continue;
    }
    Nearest nearest(entry.key.value);
    for (const std::string_view known : known_) {
      nearest.offer(known);
    }
    const std::string& key = entry.key.value;
    std::string hint = nearest.found()
                           ? nearest.question()
                           : fmt::format("its keys are `{}`", fmt::join(known_, "`, `"));
    if (is_empty(entry.value) && key.find(':') != std::string::npos) {
      hint = "write a blank after the `:`";
    } else if (is_empty(entry.value) && key.find_first_of("0123456789") == 0) {
      hint = "a comma ends the value before it: write a decimal point";
    }
    diagnostics_.error(entry.key.where, fmt::format("`{}` is no key of {}", key, what_),
                       std::move(hint));
  }
}

Located<std::string> read_plain_text(const Node& node, std::string_view key,
                                     Diagnostics& diagnostics) {
  if (node.is_text()) {
    return {node.text, node.where};
  }
  diagnostics.error(node.where,
                    fmt::format("`{}` is a text, and this is {}", key, in_words(node.kind)),
                    "write it on one line, in quotes if it holds brackets or `: `");
  return {{}, node.where};
}

bool check_name(const Located<std::string>& name, std::string_view what, Diagnostics& diagnostics) {
  const auto fits = [](char c, bool first) {
    return (c >= 'a' && c <= 'z') || (!first && ((c >= '0' && c <= '9') || c == '_'));
  };
  bool good = !name.value.empty() && name.value.size() <= 64;
  for (std::size_t i = 0; good && i < name.value.size(); ++i) {
    good = fits(name.value[i], i == 0);
  }
  if (!good) {
    diagnostics.error(name.where, fmt::format("`{}` cannot be the name of a {}", name.value, what),
                      "use small letters, digits and `_`, beginning with a letter, 64 at most");
  }
  return good;
}

}  // namespace heelrule
