#include "cli/class_records.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstring>
#include <filesystem>
#include <map>
#include <utility>
#include <variant>

#include "cli/files.hpp"
#include "cli/line_input.hpp"
#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "engine/reading/csv_lines.hpp"
#include "engine/reading/json_lines.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

bool holds_many(const std::string& path) {
  return path.ends_with(".jsonl") || path.ends_with(".csv");
}

bool is_record_file(const std::string& path) {
  return path.ends_with(".yaml") || path.ends_with(".json") || holds_many(path);
}

class Collector {
 public:
  explicit Collector(const Program& program) : program_(program) {}

  void take(const std::string& path) {
    std::error_code failed;
    if (std::filesystem::is_directory(path, failed)) {
      take_folder(path);
    } else if (holds_many(path)) {
      take_lines(path);
    } else {
      take_file(path);
    }
  }

  ClassRecords finished() { return std::move(found_); }

 private:
  // With as many records as it held.
  void lose_all_of(ExitStatus status) {
    found_.is_whole = false;
    found_.status = std::max(found_.status, status);
  }
  void lose_all_of(ExitStatus status, const Problem& problem) {
    write_problem(problem);
    lose_all_of(status);
  }
  void lose_one() {
    ++found_.left_out;
    found_.status = std::max(found_.status, ExitStatus::bad_data);
  }
  void lose_one(const Problem& problem) {
    write_problem(problem);
    lose_one();
  }

  void take_folder(const std::string& path) {
    bool any = false;
    for (const std::string& name : file_names(path)) {
      const std::string file = fmt::format("{}{}{}", path, path.ends_with('/') ? "" : "/", name);
      if (is_record_file(name) && is_regular_file(file)) {
        take(file);
        any = true;
      }
    }
    if (!any) {
      lose_all_of(ExitStatus::input_missing,
                  {fmt::format("there are no records in the folder `{}`", path),
                   "records are files that end in `.yaml`, `.json`, `.jsonl` or `.csv`"});
    }
  }

  void take_file(const std::string& path) {
    const auto text = read_file(path);
    if (!text) {
      return lose_all_of(ExitStatus::input_missing, text.problem());
    }
    Sources sources;
    const std::uint32_t source = sources.add(path, std::string(without_byte_order_mark(*text)));
    auto inspection = load_inspection(sources, source, program_.rules);
    write_error(show(inspection.diagnostics(), sources));
    if (!inspection) {
      return lose_one();
    }
    fill(row_, *std::move(inspection), program_.rules.traits.size());
    add(path);
  }

  using Reader = std::variant<JsonLineReader, CsvLineReader>;

  void take_lines(const std::string& path) {
    auto input = LineInput::open(path);
    if (!input) {
      return lose_all_of(ExitStatus::input_missing, input.problem());
    }
    LineInput& lines = **input;
    if (!path.ends_with(".csv")) {
      Reader reader(JsonLineReader(program_.rules, path));
      return take_all(lines, reader);
    }
    Sources sources;
    const std::uint32_t source =
        sources.add(path, std::string(without_byte_order_mark(lines.take_line())));
    auto columns = read_csv_header(sources, source, program_.rules);
    write_error(show(columns.diagnostics(), sources));
    if (!columns) {
      return lose_all_of(ExitStatus::bad_data);
    }
    Reader reader(CsvLineReader(program_.rules, *std::move(columns), path));
    take_all(lines, reader);
  }

  void take_all(LineInput& lines, Reader& reader) {
    Chunk chunk;
    while (lines.next(chunk)) {
      std::string_view rest = chunk.lines().text;
      for (std::uint64_t number = chunk.first_line; !rest.empty(); ++number) {
        const std::size_t end = std::min(rest.find('\n'), rest.size());
        std::string_view line = rest.substr(0, end);
        rest.remove_prefix(std::min(end + 1, rest.size()));
        line.remove_suffix(line.ends_with('\r') ? 1 : 0);
        const auto fault =
            std::visit([&](auto& one) { return one.read(line, number, row_); }, reader);
        if (fault) {
          write_error(show(fault->diagnostics, fault->sources));
          lose_one();
          continue;
        }
        add(fmt::format("{}:{}", lines.name(), number));
      }
    }
    if (lines.failure() != 0) {
      lose_all_of(
          ExitStatus::io_error,
          {fmt::format("cannot read `{}`: {}", lines.name(), std::strerror(lines.failure())), ""});
    }
  }

  void add(const std::string& name) {
    ClassRecord record = class_record(program_, row_);
    if (record.observer.empty()) {
      return lose_one({fmt::format("`{}` does not say who recorded it", name),
                       "write `observer:` in its head"});
    }
    if (record.shoe.empty()) {
      return lose_one(
          {fmt::format("`{}` does not say of which shoe it is", name),
           "write `client:` or `shoe: {label: …}` in its head, the same in all records of "
           "one shoe"});
    }
    const auto [earlier, is_new] = names_.try_emplace({record.observer, record.shoe}, name);
    if (!is_new) {
      return lose_one({fmt::format("`{}` and `{}` are both of the shoe `{}` by `{}`",
                                   earlier->second, name, record.shoe, record.observer),
                       "keep one of them, or give the shoes different labels"});
    }
    found_.records.push_back(std::move(record));
  }

  const Program& program_;
  ClassRecords found_;
  InspectionRow row_;
  std::map<std::pair<std::string, std::string>, std::string> names_;
};

}  // namespace

ClassRecords class_records(const Program& program, const std::vector<std::string>& paths) {
  Collector collector(program);
  for (const std::string& path : paths) {
    collector.take(path);
  }
  return collector.finished();
}

}  // namespace heelrule
