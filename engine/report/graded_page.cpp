#include "engine/report/graded_page.hpp"

#include <fmt/format.h>

#include <string_view>

#include "engine/report/fill_template.hpp"
#include "engine/report/page_frame.hpp"
#include "engine/report/report_data.hpp"
#include "engine/report/safety_parts.hpp"

namespace heelrule {

std::string_view assessor_template();
std::string_view client_template();
std::string_view report_head_template();
std::string_view since_template();
std::string_view student_template();

namespace {

std::string title(const Account& account, const Inspection& inspection) {
  std::string words = account.title;
  for (const std::string* part : {&inspection.client, &inspection.date}) {
    words += part->empty() ? "" : fmt::format(" · {}", *part);
  }
  return words;
}

std::string_view template_for(ReportReader reader) {
  switch (reader) {
    case ReportReader::assessor:
      return assessor_template();
    case ReportReader::student:
      return student_template();
    case ReportReader::client:
      return client_template();
  }
  return {};
}

Parsed<std::string> school_body(const SchoolTemplate& made, const PageData& data) {
  auto filled = fill_template(made.body, data);
  if (!filled) {
    return filled;
  }
  if (Problem problem = body_problem(*filled); !problem.message.empty()) {
    return problem;
  }
  return boxed(*filled);
}

}  // namespace

Parsed<std::string> graded_page(const Program& program, const GradedRecord& record,
                                const GradedRecord* earlier, const PageWishes& wishes) {
  const std::vector<std::string> languages = fallback_order(wishes.languages, program.rules);
  const Account told = account(program, record.inspection, record.verdict, languages);
  std::optional<DoubtAccount> doubt;
  if (const Doubt* known = record.known_doubt()) {
    doubt = doubt_account(program, record.verdict, *known, told, languages);
  }
  const ReportSubject subject{program, record, earlier, told, doubt ? &*doubt : nullptr, languages};
  const PageData data = report_data(subject);
  auto body = wishes.body
                  ? school_body(*wishes.body, data)
                  : fill_template(template_for(wishes.reader), data, {{"since", since_template()}});
  if (!body) {
    return body.problem();
  }
  PageFrame frame;
  frame.title = title(told, record.inspection);
  frame.running_left = record.inspection.client;
  frame.running_right = record.inspection.date;
  frame.kind = in_words(wishes.reader);
  frame.head = *fill_template(report_head_template(), data);
  frame.first = first_part(subject);
  frame.body = *std::move(body);
  frame.last = last_part(subject);
  frame.style = wishes.body ? scoped(wishes.body->style) : "";
  frame.mark = wishes.mark;
  return framed_page(frame);
}

}  // namespace heelrule
