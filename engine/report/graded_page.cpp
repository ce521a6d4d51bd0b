#include "engine/report/graded_page.hpp"

#include <fmt/format.h>

#include <string_view>

#include "engine/report/fill_template.hpp"
#include "engine/report/page_frame.hpp"
#include "engine/report/report_data.hpp"
#include "engine/report/safety_parts.hpp"

namespace heelrule {

std::string_view assessor_template();
std::string_view report_head_template();

namespace {

std::string title(const Account& account, const Inspection& inspection) {
  std::string words = account.title;
  for (const std::string* part : {&inspection.client, &inspection.date}) {
    words += part->empty() ? "" : fmt::format(" · {}", *part);
  }
  return words;
}

}  // namespace

std::string graded_page(const Program& program, const GradedRecord& record,
                        const GradedRecord* earlier, const PageWishes& wishes) {
  const std::vector<std::string> languages = fallback_order(wishes.languages, program.rules);
  const Account told = account(program, record.inspection, record.verdict, languages);
  const ReportSubject subject{program, record, earlier, told, languages};
  const PageData data = report_data(subject);
  PageFrame frame;
  frame.title = title(told, record.inspection);
  frame.running_left = record.inspection.client;
  frame.running_right = record.inspection.date;
  frame.kind = "assessor";
  frame.head = *fill_template(report_head_template(), data);
  frame.first = first_part(subject);
  frame.body = *fill_template(assessor_template(), data);
  frame.last = last_part(subject);
  frame.mark = wishes.mark;
  return framed_page(frame);
}

}  // namespace heelrule
