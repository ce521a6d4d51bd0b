// Times the stages of a bulk run, and the scorer that is written by hand, side by side:
// bulk RULES RECORDS [options of Google Benchmark]. One iteration is one pass over all records.
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <simdjson.h>
#include <unistd.h>

#include <cstdio>

#include "engine/reading/load_rules.hpp"
#include "engine/report/grade_lines.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/scoring/fill_row.hpp"
#include "tests/bench/file_text.hpp"
#include "tests/bench/hand_short.hpp"
#include "tests/bench/hand_writer.hpp"

namespace {

using namespace heelrule;

Program compiled(const std::string& path) {
  Sources sources;
  const FindFile find = [&](std::string_view, std::string_view) {
    return Parsed<FoundFile>(FoundFile{path, path, file_text(path)});
  };
  LoadedRules loaded = load_rules(path, find, sources);
  auto program = compile(std::move(loaded.rules), std::move(loaded.diagnostics));
  if (!program) {
    std::fprintf(stderr, "bulk: %s has faults\n", path.c_str());
    std::exit(1);
  }
  return *std::move(program);
}

// What every timing works on.
struct Given {
  Program program;
  std::string text;
  std::vector<std::string_view> lines;
  std::vector<std::string_view> pieces;  // of about 64 KiB, as the command cuts them
  int nowhere = -1;                      // /dev/null

  Given(const std::string& rules, const std::string& records)
      : program(compiled(rules)), text(file_text(records)) {
    const std::size_t length = text.size();
    text.append(JsonLineReader::padding, '\0');
    std::string_view rest = std::string_view(text).substr(0, length);
    std::size_t begin = 0;
    for (std::size_t at = 0; at < length;) {
      const std::size_t end = rest.find('\n', at);
      lines.push_back(rest.substr(at, end - at));
      at = end + 1;
      if (at - begin >= 65536 || at == length) {
        pieces.push_back(rest.substr(begin, at - begin));
        begin = at;
      }
    }
    nowhere = ::open("/dev/null", O_WRONLY | O_CLOEXEC);
  }
};

void write_out(int descriptor, std::string_view text) {
  if (::write(descriptor, text.data(), text.size()) != static_cast<ssize_t>(text.size())) {
    std::fprintf(stderr, "bulk: cannot write\n");
    std::exit(1);
  }
}

void rate(benchmark::State& state, std::size_t records) {
  state.SetItemsProcessed(static_cast<std::int64_t>(records) * state.iterations());
}

void parse_only(benchmark::State& state, const Given& given) {
  simdjson::dom::parser parser;
  for (auto _ : state) {
    std::size_t objects = 0;
    for (const std::string_view line : given.lines) {
      simdjson::dom::element root;
      objects += parser.parse(line.data(), line.size(), false).get(root) == simdjson::SUCCESS;
    }
    benchmark::DoNotOptimize(objects);
  }
  rate(state, given.lines.size());
}

// Parsing, and each key and value looked at once.
void parse_and_visit(benchmark::State& state, const Given& given) {
  simdjson::dom::parser parser;
  const auto visit = [](auto self, simdjson::dom::element element) -> std::size_t {
    simdjson::dom::object object;
    std::string_view text;
    if (element.get(text) == simdjson::SUCCESS) {
      return text.size();
    }
    std::size_t bytes = 0;
    if (element.get(object) == simdjson::SUCCESS) {
      for (const simdjson::dom::key_value_pair field : object) {
        bytes += field.key.size() + self(self, field.value);
      }
    }
    return bytes;
  };
  for (auto _ : state) {
    std::size_t bytes = 0;
    for (const std::string_view line : given.lines) {
      simdjson::dom::element root;
      if (parser.parse(line.data(), line.size(), false).get(root) == simdjson::SUCCESS) {
        bytes += visit(visit, root);
      }
    }
    benchmark::DoNotOptimize(bytes);
  }
  rate(state, given.lines.size());
}

// Parsing, and each value checked and put into its place.
void read_only(benchmark::State& state, const Given& given) {
  JsonLineReader reader(given.program.rules, "records");
  InspectionRow row;
  for (auto _ : state) {
    for (const std::string_view line : given.lines) {
      if (reader.read(line, 2, row)) {
        std::exit(1);
      }
    }
    benchmark::DoNotOptimize(row.numbers.data());
  }
  rate(state, given.lines.size());
}

// Reads with the engine's own reader, and scores and writes by hand.
class ByHand {
 public:
  explicit ByHand(const Program& program, Detail detail = Detail::full)
      : detail_(detail),
        reader_(program.rules, "records"),
        writer_(program.rules.name),
        short_writer_(program.rules.name, detail == Detail::failed) {}

  const thirty::Record& read(std::string_view line) {
    if (reader_.read(line, 2, row_)) {
      std::exit(1);
    }
    thirty::take(row_, record_);
    return record_;
  }

  void grade(std::string_view line, std::string& out) {
    read(line);
    thirty::derive(record_);
    if (detail_ == Detail::full) {
      writer_.write(record_, out);
    } else {
      short_writer_.write(record_, out);
    }
  }

 private:
  Detail detail_;
  JsonLineReader reader_;
  thirty::Writer writer_;
  thirty::ShortWriter short_writer_;
  InspectionRow row_;
  thirty::Record record_;
};

void hand_written(benchmark::State& state, const Given& given, Detail detail) {
  ByHand by_hand(given.program, detail);
  std::string out;
  for (auto _ : state) {
    std::size_t in_piece = 0;
    for (const std::string_view line : given.lines) {
      by_hand.grade(line, out);
      in_piece += line.size() + 1;
      if (in_piece >= 65536) {
        write_out(given.nowhere, out);
        out.clear();
        in_piece = 0;
      }
    }
    write_out(given.nowhere, out);
    out.clear();
  }
  rate(state, given.lines.size());
}

void grade(benchmark::State& state, const Given& given, Detail detail) {
  LineGrader grader(given.program, JsonLineReader(given.program.rules, "records"),
                    json_lines(given.program, {}, detail), {false, {}, 0});
  GradedLines graded;
  for (auto _ : state) {
    for (const std::string_view piece : given.pieces) {
      grader.grade({piece, 1}, graded);
      write_out(given.nowhere, graded.text.text());
    }
  }
  rate(state, given.lines.size());
}

// Rows of numbers as the reader leaves them.
std::vector<InspectionRow> rows_of(const Given& given) {
  JsonLineReader reader(given.program.rules, "records");
  std::vector<InspectionRow> rows(std::min<std::size_t>(given.lines.size(), 4096));
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (reader.read(given.lines[i], 1, rows[i])) {
      std::exit(1);
    }
  }
  return rows;
}

// The same rules `times` times over.
Program repeated(const Program& program, std::size_t times) {
  Program longer = program;
  for (std::size_t turn = 1; turn < times; ++turn) {
    for (Judgement judgement : program.judgements) {
      judgement.credit += longer.register_count;
      longer.judgements.push_back(judgement);
    }
    for (Contribution contribution : program.contributions) {
      for (Register& credit : contribution.credits) {
        credit += credit == no_register ? 0 : longer.register_count;
      }
      longer.contributions.push_back(contribution);
    }
    longer.register_count += program.register_count;
  }
  return longer;
}

// Scoring alone, from columns in memory to sums.
void score_only(benchmark::State& state, const Given& given) {
  const Program program = repeated(given.program, static_cast<std::size_t>(state.range(0)));
  const std::vector<InspectionRow> rows = rows_of(given);
  std::vector<Block> blocks;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (i % block_rows == 0) {
      blocks.emplace_back(program);
    }
    fill_row(program, rows[i], blocks.back(), i % block_rows);
  }
  for (auto _ : state) {
    for (Block& block : blocks) {
      evaluate(program, block);
      benchmark::DoNotOptimize(block.outcome(0));
    }
  }
  rate(state, rows.size());
}

void score_by_hand(benchmark::State& state, const Given& given) {
  std::vector<thirty::Record> records(std::min<std::size_t>(given.lines.size(), 4096));
  ByHand by_hand(given.program);
  for (std::size_t i = 0; i < records.size(); ++i) {
    records[i] = by_hand.read(given.lines[i]);
  }
  for (auto _ : state) {
    for (thirty::Record& record : records) {
      double earned = 0;
      double weight = 0;
      thirty::derive(record);
      thirty::score(record.values, earned, weight);
      benchmark::DoNotOptimize(earned / weight);
    }
  }
  rate(state, records.size());
}

// Sees that both scorers write the same bytes; timings of unlike things would be worth nothing.
bool same_output(const Given& given, Detail detail) {
  LineGrader grader(given.program, JsonLineReader(given.program.rules, "records"),
                    json_lines(given.program, {}, detail), {});
  ByHand by_hand(given.program, detail);
  std::string expected;
  GradedLines graded;
  for (std::size_t i = 0, piece = 0; piece < given.pieces.size(); ++piece) {
    grader.grade({given.pieces[piece], 1}, graded);
    expected.clear();
    for (std::uint64_t k = 0; k < graded.lines; ++k, ++i) {
      by_hand.grade(given.lines[i], expected);
    }
    if (expected != graded.text.text()) {
      std::fprintf(stderr, "bulk: the two scorers differ in piece %zu\n", piece);
      return false;
    }
  }
  return true;
}

}  // namespace

int main(int count, char** arguments) {
  if (count < 3) {
    std::fprintf(stderr, "usage: bulk RULES RECORDS [options of Google Benchmark]\n");
    return 64;
  }
  static const Given given(arguments[1], arguments[2]);
  for (const Detail detail : {Detail::full, Detail::failed, Detail::brief}) {
    if (!same_output(given, detail)) {
      return 1;
    }
  }
  const auto time = [](const char* name, auto function) {
    return benchmark::RegisterBenchmark(name, function)->Unit(benchmark::kMillisecond);
  };
  time("parse", [](auto& state) { parse_only(state, given); });
  time("parse_and_visit", [](auto& state) { parse_and_visit(state, given); });
  time("read", [](auto& state) { read_only(state, given); });
  time("by_hand_full", [](auto& state) { hand_written(state, given, Detail::full); });
  time("by_hand_failed", [](auto& state) { hand_written(state, given, Detail::failed); });
  time("by_hand_brief", [](auto& state) { hand_written(state, given, Detail::brief); });
  time("full", [](auto& state) { grade(state, given, Detail::full); });
  time("failed", [](auto& state) { grade(state, given, Detail::failed); });
  time("brief", [](auto& state) { grade(state, given, Detail::brief); });
  time("score_by_hand", [](auto& state) { score_by_hand(state, given); });
  time("score", [](auto& state) { score_only(state, given); })->Arg(1)->Arg(2)->Arg(4);
  arguments[2] = arguments[0];
  int rest = count - 2;
  benchmark::Initialize(&rest, arguments + 2);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
