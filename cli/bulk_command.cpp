#include "cli/bulk_command.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstring>
#include <exception>
#include <thread>
#include <utility>

#include "cli/interruption.hpp"
#include "cli/line_input.hpp"
#include "cli/load_program.hpp"
#include "cli/ordered_output.hpp"
#include "cli/output.hpp"
#include "cli/progress.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

// How many faulty records are told of on standard error; all of them stand in the output.
constexpr std::size_t most_complaints = 20;

class BulkRun {
 public:
  BulkRun(const BulkOrder& order, const GradeCommand& command, const Program& program,
          std::optional<std::size_t> at_least, LineInput& input)
      : order_(order),
        command_(command),
        program_(program),
        grading_{order.stop_at_fault, at_least, most_complaints},
        input_(input),
        progress_(input.size()),
        output_([this](const GradedLines& piece) { account_for(piece); }) {}

  ExitStatus run() {
    if (order_.from == RecordKind::csv && !read_header()) {
      return ExitStatus::bad_data;
    }
    if (command_.as == ReportKind::csv) {
      const ExitStatus wrote = write_output(VerdictTable(program_, command_.languages).header());
      if (wrote != ExitStatus::done) {
        return wrote;
      }
    }
    work_together();
    progress_.wipe();
    return outcome();
  }

 private:
  bool read_header() {
    Sources sources;
    const std::string line = input_.take_line();
    const std::uint32_t source =
        sources.add(input_.name(), std::string(without_byte_order_mark(line)));
    auto columns = read_csv_header(sources, source, program_.rules);
    write_error(show(columns.diagnostics(), sources));
    if (!columns) {
      return false;
    }
    columns_ = *std::move(columns);
    return true;
  }

  LineGrader grader() const {
    LineGrader::Reader reader =
        order_.from == RecordKind::csv
            ? LineGrader::Reader(CsvLineReader(program_.rules, columns_, input_.name()))
            : LineGrader::Reader(JsonLineReader(program_.rules, input_.name()));
    LineGrader::Writer writer = command_.as == ReportKind::csv
                                    ? LineGrader::Writer(VerdictTable(program_, command_.languages))
                                    : json_lines(program_, command_.languages, order_.detail);
    return {program_, std::move(reader), std::move(writer), grading_};
  }

  void work_together() {
    std::vector<std::exception_ptr> faults(order_.threads);
    std::vector<std::thread> others;
    const auto guarded = [&](std::size_t i) {
      try {
        work();
      } catch (...) {
        faults[i] = std::current_exception();
        output_.give_up();
        input_.stop();
      }
    };
    for (std::size_t i = 1; i < order_.threads; ++i) {
      others.emplace_back(guarded, i);
    }
    guarded(0);
    for (std::thread& other : others) {
      other.join();
    }
    for (const std::exception_ptr& fault : faults) {
      if (fault) {
        std::rethrow_exception(fault);
      }
    }
  }

  void work() {
    LineGrader grader = this->grader();
    Chunk chunk;
    GradedLines graded;
    while (input_.next(chunk)) {
      grader.grade(chunk.lines(), graded);
      if (!output_.put(chunk.number, graded)) {
        input_.stop();
      }
    }
  }

  void account_for(const GradedLines& piece) {
    for (const std::string& complaint : piece.complaints) {
      if (told_ < most_complaints) {
        progress_.wipe();
        write_error(complaint);
        ++told_;
      }
    }
    lines_ += piece.lines;
    faulty_ += piece.faulty;
    falls_short_ = falls_short_ || piece.falls_short;
    progress_.add(piece.lines, piece.bytes);
  }

  ExitStatus outcome() const {
    if (faulty_ > 0) {
      write_error(fmt::format("heelrule: {} of {} records could not be read{}\n", faulty_, lines_,
                              order_.stop_at_fault ? "; stopped there" : ""));
    }
    ExitStatus status = faulty_ > 0    ? ExitStatus::bad_data
                        : falls_short_ ? ExitStatus::answer_is_no
                                       : ExitStatus::done;
    if (input_.failure() != 0) {
      write_problem({fmt::format("cannot read `{}` to its end: {}", input_.name(),
                                 std::strerror(input_.failure())),
                     ""});
      status = ExitStatus::io_error;
    }
    return std::max(status, output_.status());
  }

  const BulkOrder& order_;
  const GradeCommand& command_;
  const Program& program_;
  GradingOrder grading_;
  LineInput& input_;
  std::vector<CsvColumn> columns_;
  Progress progress_;
  OrderedOutput output_;
  std::uint64_t lines_ = 0;
  std::uint64_t faulty_ = 0;
  std::uint64_t told_ = 0;
  bool falls_short_ = false;
};

}  // namespace

ExitStatus run(const BulkOrder& order, const GradeCommand& command, const Program& program,
               std::optional<std::size_t> at_least) {
  auto input = LineInput::open(command.inspections.front());
  if (!input) {
    write_problem(input.problem());
    return ExitStatus::input_missing;
  }
  const Interruption interruption;
  const ExitStatus status = BulkRun(order, command, program, at_least, **input).run();
  Interruption::pass_on();
  return status;
}

}  // namespace heelrule
