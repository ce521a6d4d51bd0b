#include "cli/rule_files.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <climits>
#include <utility>

#include "cli/files.hpp"
#include "engine/quantity/nearest.hpp"

namespace heelrule {
namespace {

// Names that rule files may use for each other: parts of letters, digits, `_` and `-`, joined by
// `/`.
bool is_plain_name(std::string_view name) {
  bool part_is_empty = true;
  for (const char c : name) {
    const bool sign = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                      c == '_' || c == '-';
    if (c == '/' && !part_is_empty) {
      part_is_empty = true;
    } else if (sign) {
      part_is_empty = false;
    } else {
      return false;
    }
  }
  return !part_is_empty;
}

// A path as messages print it: from the current folder where it lies below.
std::string short_name(const std::string& path) {
  const std::string here = real_path(".") + "/";
  return path.starts_with(here) ? path.substr(here.size()) : path;
}

Parsed<FoundFile> found(const std::string& path, const std::string& real) {
  auto text = read_file(path);
  if (!text) {
    return text.problem();
  }
  return FoundFile{short_name(path), real, *text};
}

}  // namespace

RuleFiles::RuleFiles(std::string shipped)
    : shipped_(std::move(shipped)), shipped_real_(real_path(shipped_)) {}

Parsed<FoundFile> RuleFiles::find(std::string_view name, std::string_view from) const {
  return from.empty() ? find_for_person(name) : find_for_file(name, from);
}

Parsed<FoundFile> RuleFiles::find_for_person(std::string_view name) const {
  const std::string path(name);
  const std::string shipped = fmt::format("{}/{}.yaml", shipped_, name);
  if (is_plain_name(name) && !is_regular_file(path) && is_regular_file(shipped)) {
    return found(shipped, real_path(shipped));
  }
  const std::string real = real_path(path);
  if (real.empty()) {
    return no_rule_set(name, "give the path of a file, or the name of a rule set that ships");
  }
  return found(path, real);
}

Parsed<FoundFile> RuleFiles::find_for_file(std::string_view name, std::string_view from) const {
  if (!is_plain_name(name)) {
    return Problem{fmt::format("`{}` is no name of a rule set", name),
                   "write the name without folder and ending, or a path below this folder"};
  }
  for (const std::string& folder : {folder_of(from), shipped_}) {
    const std::string path = fmt::format("{}/{}.yaml", folder, name);
    if (!is_regular_file(path)) {
      continue;
    }
    const std::string real = real_path(path);
    if (!allowed(real, real_path(folder))) {
      return Problem{fmt::format("`{}` lies outside the folders that rule sets may be in", name),
                     "put the file itself there, not a link"};
    }
    return found(path, real);
  }
  return no_rule_set(name,
                     "rule sets are looked for in this file's folder and among those that ship");
}

Problem RuleFiles::no_rule_set(std::string_view name, std::string_view hint) const {
  if (shipped_real_.empty()) {
    return {fmt::format("there is no rule set `{}`", name),
            fmt::format("the rule sets that ship are not in `{}`; name their folder with "
                        "`--rules-folder`",
                        shipped_)};
  }
  Nearest nearest(name);
  for (const std::string& file : file_names(shipped_)) {
    if (file.ends_with(".yaml")) {
      nearest.offer(std::string_view(file).substr(0, file.size() - 5));
    }
  }
  return {fmt::format("there is no rule set `{}`", name),
          nearest.found() ? nearest.question() : std::string(hint)};
}

bool RuleFiles::allowed(const std::string& real, const std::string& folder) const {
  return real.starts_with(folder + "/") || real.starts_with(shipped_real_ + "/");
}

std::string shipped_rules_folder() {
  char path[PATH_MAX];
  const ssize_t length = ::readlink("/proc/self/exe", path, sizeof path);
  if (length > 0) {
    const std::string installed = fmt::format(
        "{}/{}", folder_of({path, static_cast<std::size_t>(length)}), HEELRULE_INSTALLED_RULES);
    if (is_regular_file(installed + "/everyday.yaml")) {
      return installed;
    }
  }
  return HEELRULE_SOURCE_RULES;
}

}  // namespace heelrule
