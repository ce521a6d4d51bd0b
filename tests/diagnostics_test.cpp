// Every kind of fault that a rule file or a record can have, with what is said of it: for each file
// below tests/diagnostics a file `.expected` holds all that is printed. `UPDATE_GOLDENS=1` writes
// them anew.
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>

#include "engine/reading/load_rules.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

namespace fs = std::filesystem;

const fs::path folder = HEELRULE_TEST_DIAGNOSTICS;

std::string content(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

bool goldens_are_updated() {
  const char* wanted = std::getenv("UPDATE_GOLDENS");
  return wanted != nullptr && std::string_view(wanted) == "1";
}

void check_golden(const fs::path& expected, const std::string& said) {
  CAPTURE(expected.string());
  if (goldens_are_updated()) {
    std::ofstream(expected, std::ios::binary) << said;
  }
  CHECK(fs::exists(expected));
  CHECK(content(expected) == said);
}

// The cases of a folder, each by its file; what was expected of files that are gone is a failure.
std::vector<fs::path> cases(const fs::path& of) {
  std::set<fs::path> files;
  std::set<fs::path> expected;
  for (const auto& entry : fs::directory_iterator(of)) {
    if (entry.path().extension() == ".expected") {
      expected.insert(entry.path());
    } else if (entry.is_regular_file() && entry.path().filename() != "judged_by.yaml") {
      files.insert(entry.path());
    }
  }
  for (const fs::path& file : files) {
    expected.erase(file.string() + ".expected");
  }
  for (const fs::path& leftover : expected) {
    FAIL_CHECK("nothing belongs to " << leftover);
  }
  return {files.begin(), files.end()};
}

// Every rule file below a folder, by the name that others give in `extends`.
class RuleFolder {
 public:
  explicit RuleFolder(const fs::path& root) {
    for (const auto& entry : fs::recursive_directory_iterator(root)) {
      if (entry.path().extension() == ".yaml") {
        const std::string name = fs::relative(entry.path(), root).replace_extension().string();
        texts_[name] = content(entry.path());
      }
    }
  }

  Parsed<FoundFile> find(std::string_view name) const {
    const auto found = texts_.find(name);
    if (found == texts_.end()) {
      return Problem{"there is no rule set `" + std::string(name) + "`",
                     "name one of those beside this file"};
    }
    return FoundFile{found->first + ".yaml", found->first, found->second};
  }

 private:
  std::map<std::string, std::string, std::less<>> texts_;
};

// All that is said of a rule set, as `proof` says it; its rules, where there was no fault.
Checked<Program> proof(std::string_view name, const RuleFolder& files, Sources& sources) {
  LoadedRules loaded = load_rules(
      name, [&](std::string_view wanted, std::string_view) { return files.find(wanted); }, sources);
  return loaded.complete ? compile(std::move(loaded.rules), std::move(loaded.diagnostics))
                         : Checked<Program>(std::move(loaded.diagnostics));
}

TEST_CASE("each fault of a rule file is said at its place, with what to do about it") {
  const RuleFolder files(folder / "rules");
  for (const fs::path& file : cases(folder / "rules")) {
    Sources sources;
    const auto program = proof(file.stem().string(), files, sources);
    check_golden(file.string() + ".expected", show(program.diagnostics(), sources));
  }
}

TEST_CASE("each fault of a record is said at its place, with what to do about it") {
  const RuleFolder files(folder / "records");
  Sources sources;
  const auto program = proof("judged_by", files, sources);
  REQUIRE(show(program.diagnostics(), sources).empty());
  for (const fs::path& file : cases(folder / "records")) {
    const std::uint32_t source = sources.add(file.filename().string(), content(file));
    const auto inspection = load_inspection(sources, source, program->rules);
    check_golden(file.string() + ".expected", show(inspection.diagnostics(), sources));
    CHECK(static_cast<bool>(inspection) == !inspection.diagnostics().has_errors());
  }
}

}  // namespace
}  // namespace heelrule
